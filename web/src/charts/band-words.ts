import type { AskedColour, HeldColour, Thread } from '../../../src/wardrobe/gaps/bands.ts';
import { counted } from '../../../src/wardrobe/words/counted.ts';
import { colourWord, type Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { percentText } from '../parts/colour-text.ts';

const wordOf = (palette: Palette, id: string): string => {
	const colour = palette.colours.find((one) => one.id === id);
	return colour ? colourWord(colour) : 'a colour no longer in the palette';
};

/** Up to three names, then how many more. */
const listed = (names: readonly string[]): string =>
	names.length <= 3 ? names.join(', ') : `${names.slice(0, 3).join(', ')} and ${names.length - 3} more`;

const namesOf = (held: HeldColour, nameOf: (id: string) => string): string => listed(held.garmentIds.map(nameOf));

/** What an asked colour is, how much of it is covered and how much is missing. */
export function askedSentence(asked: AskedColour, palette: Palette): string {
	const word = wordOf(palette, asked.paletteColourId);
	const gap = asked.missing > 0.005 ? `${percentText(asked.missing)} hangs loose: a gap` : 'all of it is covered';
	return `Asked for: ${word}, ${percentText(asked.amount)} of the palette; ${gap}.`;
}

/** What a held colour is, which garments hold it, and how much of it answers nothing. */
export function heldSentence(held: HeldColour, nameOf: (id: string) => string): string {
	const surplus =
		held.surplus > 0.005 ? `${percentText(held.surplus)} hangs loose: a surplus` : 'all of it is asked for';
	return `Held: ${held.name}, ${percentText(held.amount)} of the cloth, in ${namesOf(held, nameOf)}; ${surplus}.`;
}

/** What covers what, by how much, through which garments. */
export function threadSentence(
	thread: Thread,
	held: HeldColour,
	palette: Palette,
	nameOf: (id: string) => string,
): string {
	const through = `${counted(held.garmentIds.length, 'garment')}: ${namesOf(held, nameOf)}`;
	return `${held.name} covers ${percentText(thread.amount)} of the palette's ${wordOf(palette, thread.paletteColourId)} (${through}).`;
}
