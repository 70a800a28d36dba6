import type { PaletteColour } from '../../wardrobe/words/palette-colour.ts';

/** A name for a colour that is safe in CSS and JSON paths, and the same for the same colour: role, word, id where the word has no letters. */
export function tokenName({ role, label, name, id }: PaletteColour): string {
	const word = (label || name)
		.normalize('NFKD')
		.toLowerCase()
		.replace(/[^a-z0-9]+/g, '-')
		.replace(/^-|-$/g, '');
	const safeId = id.replace(/[^a-zA-Z0-9]+/g, '-');
	return word ? `${role}-${word}-${safeId}` : `${role}-${safeId}`;
}
