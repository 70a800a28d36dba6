import { chroma, hexFromLab, hueDegrees } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { Palette } from '../../wardrobe/words/palette-colour.ts';

/** Characters that XML 1.0 (section 2.2) allows in no form, not even escaped. */
// biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that must go
const NOT_XML = /[\u0000-\u0008\u000b\u000c\u000e-\u001f\ufffe\uffff]/g;

const escaped = (text: string): string =>
	text.replace(NOT_XML, '').replace(/[&<>"']/g, (character) => `&#${character.codePointAt(0)};`);

const ROW_PX = 72;
const WIDTH_PX = 640;
/** Mid-grey ground (L* 50), as viewing standards such as ISO 3664 ask. */
const GROUND = '#777777';

/** The palette as a card: each colour on mid-grey with its word, systematic name and numbers. */
export function paletteSvg(palette: Palette, title: string): string {
	const height = 96 + Math.max(1, palette.colours.length) * ROW_PX;
	const rows = palette.colours.map((colour, index) => {
		const { lab, label, name, role, weight } = colour;
		const y = 64 + index * ROW_PX;
		const numbers = `L* ${lab[0].toFixed(0)}  C* ${chroma(lab).toFixed(0)}  h ${hueDegrees(lab).toFixed(0)}°`;
		return [
			`<rect x="24" y="${y}" width="120" height="${ROW_PX - 12}" fill="${hexFromLab(lab)}"/>`,
			`<text x="164" y="${y + 26}" font-size="18">${escaped(label || name)}</text>`,
			`<text x="164" y="${y + 48}" font-size="14">${escaped(`${role}, ${Math.round(weight * 100)} %, ${name}; ${numbers}`)}</text>`,
		].join('\n');
	});
	return `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH_PX}" height="${height}" viewBox="0 0 ${WIDTH_PX} ${height}" font-family="sans-serif" fill="#000000">
<rect width="${WIDTH_PX}" height="${height}" fill="${GROUND}"/>
<text x="24" y="42" font-size="22">${escaped(title)}</text>
${rows.join('\n')}
<text x="24" y="${height - 12}" font-size="12">${say('colours.printed')}</text>
</svg>
`;
}
