import { say } from '../../../src/language/speak.ts';
import type { AskedColour, HeldColour, Thread } from '../../../src/wardrobe/gaps/bands.ts';
import { colourWord, type Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { percentText } from '../parts/colour-text.ts';

/** A share from which something is missing or too much: half a percent, which is shown as none. */
const SHOWN_FROM = 0.005;

const wordOf = (palette: Palette, id: string): string => {
	const colour = palette.colours.find((one) => one.id === id);
	return colour ? colourWord(colour) : say('bands.goneColour');
};

/** Up to three names, then how many more. */
function listed(names: readonly string[]): string {
	if (names.length <= 3) return names.join('; ');
	return say('bands.andMore', { names: names.slice(0, 3).join('; '), count: names.length - 3 });
}

const namesOf = (held: HeldColour, nameOf: (id: string) => string): string => listed(held.garmentIds.map(nameOf));

/** What an asked colour is, how much of it is covered and how much is missing. */
export const askedSentence = ({ paletteColourId, amount, missing }: AskedColour, palette: Palette): string =>
	say('bands.asked', {
		colour: wordOf(palette, paletteColourId),
		share: percentText(amount),
		rest: missing > SHOWN_FROM ? say('bands.gap', { share: percentText(missing) }) : say('bands.allCovered'),
	});

/** What a held colour is, which garments hold it, and how much of it answers nothing. */
export const heldSentence = (held: HeldColour, nameOf: (id: string) => string): string =>
	say('bands.held', {
		colour: held.name,
		share: percentText(held.amount),
		garments: namesOf(held, nameOf),
		rest:
			held.surplus > SHOWN_FROM ? say('bands.surplus', { share: percentText(held.surplus) }) : say('bands.allAsked'),
	});

/** What covers what, by how much, through which garments. */
export const threadSentence = (
	{ amount, paletteColourId }: Thread,
	held: HeldColour,
	palette: Palette,
	nameOf: (id: string) => string,
): string =>
	say('bands.thread', {
		held: held.name,
		share: percentText(amount),
		asked: wordOf(palette, paletteColourId),
		through: say('counts.garments', { count: held.garmentIds.length }),
		garments: namesOf(held, nameOf),
	});
