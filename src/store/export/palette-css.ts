import { hexFromLab } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { Palette } from '../../wardrobe/words/palette-colour.ts';
import { tokenName } from './token-name.ts';

/** The palette as CSS custom properties: hex for any browser, and CIELAB beside it in a comment, since hex rounds. */
export function paletteCss(palette: Palette, title: string): string {
	const safe = title.replaceAll('*/', '* /');
	const lines = palette.colours.map((colour) => {
		const [L, a, b] = colour.lab.map((value) => value.toFixed(1));
		return `\t--${tokenName(colour)}: ${hexFromLab(colour.lab)}; /* ${colour.role}, CIELAB D65 ${L} ${a} ${b} */`;
	});
	return `/* ${safe}. ${say('colours.screen')} */\n:root {\n${lines.join('\n')}\n}\n`;
}
