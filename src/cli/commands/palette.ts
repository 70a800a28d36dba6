import { say } from '../../language/speak.ts';
import { derivePalette } from '../../wardrobe/palette/palette.ts';
import { colourWord, PALETTE_ROLES, type Palette, type PaletteColour } from '../../wardrobe/words/palette-colour.ts';
import type { Reading } from '../../wardrobe/words/reading.ts';
import { parsedWords } from '../parsed-words.ts';
import { readInOrder } from '../read-photos.ts';

/** `dyelot palette --json`: a contract, see DEVELOPERS.md. */
export const jsonOfPalette = (palette: Palette): object => ({
	colours: palette.colours.map(({ lab, weight, role, name, photos, firmness, spread }) => ({
		lab,
		weight,
		role,
		name,
		photos,
		firmness,
		spread,
	})),
});

/** How sure a colour is, in words. */
function surenessOf({ photos, firmness, origin }: PaletteColour): string {
	if (origin === 'by-hand') return say('cli.byHand');
	const seen = say('counts.inPictures', { count: photos });
	// A board of one picture cannot be resampled: nothing can be said of firmness.
	if (firmness >= 0.5 || (photos <= 1 && firmness === 0)) return seen;
	return say('cli.tentative', { seen });
}

/** One line a colour, for people. */
export function textOfPalette(palette: Palette): string {
	const width = Math.max(...PALETTE_ROLES.map((role) => say(`roles.${role}`).length));
	return palette.colours
		.map((colour) => {
			const { lab, weight, role, name } = colour;
			const shown = lab.map((n) => n.toFixed(1).padStart(6)).join('');
			return `  ${say(`roles.${role}`).padEnd(width)} ${String(Math.round(weight * 100)).padStart(3)} %  L*a*b*${shown}  ${colourWord(colour)} (${name}), ${surenessOf(colour)}`;
		})
		.join('\n');
}

/** `dyelot palette`: a season's palette from inspiration pictures. */
export async function paletteCommand(words: readonly string[]): Promise<number> {
	const { values, rest: photos } = parsedWords('palette', words);
	const readings: Reading[] = [];
	for await (const { photo, result } of readInOrder(photos, {})) {
		if (result.ok) readings.push(result.reading);
		else console.error(`${photo}: ${result.message}`);
	}
	const palette = derivePalette(readings, { seed: 1 });
	console.log(values.json ? JSON.stringify(jsonOfPalette(palette)) : textOfPalette(palette));
	return readings.length === photos.length ? 0 : 1;
}
