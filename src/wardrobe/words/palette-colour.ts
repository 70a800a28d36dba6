import type { Lab65 } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import { saidColour } from './said-colour.ts';
import type { Versioned } from './versioned.ts';

export const PALETTE_ROLES = ['base', 'main', 'accent', 'hint'] as const;

/**
 * `base` carries the set (neutrals, navy, denim, camel), `main` the rest of the weight, `accent` the light-weight vivid ones; a `hint` is seen too little
 * to ask for anything: it is shown, and vouches for nothing.
 */
export type PaletteRole = (typeof PALETTE_ROLES)[number];

/** What a colour is beside another one of the same word. */
export type ColourStep = 'lighter' | 'darker' | 'stronger' | 'greyer' | 'redder' | 'greener' | 'yellower' | 'bluer';

/** One colour that a season asks for. */
export type PaletteColour = {
	readonly id: string;
	readonly lab: Lab65;
	/** Median CIEDE2000 of its members to the centre. */
	readonly spread: number;
	/** Share of the palette, 0..1; a palette's weights sum to 1. */
	readonly weight: number;
	readonly role: PaletteRole;
	/** ISCC-NBS name. */
	readonly name: string;
	/** The user's own word for it, or ''. */
	readonly label: string;
	/** What it is beside the first of the palette's colours that share its word; told as the palette is read, never kept. Absent = its word is its own. */
	readonly apart?: ColourStep;
	/** Inspirations that hold it (a colour within CIEDE2000 10). */
	readonly photos: number;
	/** Share of resampled boards that bring it back, 0..1; under 0.5 = tentative. 1 for colours added by hand. */
	readonly firmness: number;
	/** A locked colour survives re-deriving. */
	readonly locked: boolean;
	readonly origin: 'derived' | 'by-hand' | 'merged' | 'split';
};

/** The colours of a direction, base first, hints last, heaviest first within a role. */
export type Palette = Versioned & {
	readonly colours: readonly PaletteColour[];
	/** Colours that the user took out: deriving again leaves them out. Absent = none. */
	readonly removed?: readonly Lab65[];
};

/** A season that has no colours yet. */
export const EMPTY_PALETTE: Palette = { colours: [] };

/** The colours that ask for something and vouch for cloth near them: all but hints. */
export const vouchingColours = ({ colours }: Palette): readonly PaletteColour[] =>
	colours.some(({ role }) => role === 'hint') ? colours.filter(({ role }) => role !== 'hint') : colours;

/** What each vouching colour asks for, as a share of the palette, 0..1: what hints weigh is asked of the others. */
export function askedShares(palette: Palette): number[] {
	const weightOf = (colours: readonly PaletteColour[]) => colours.reduce((sum, { weight }) => sum + weight, 0);
	const vouching = vouchingColours(palette);
	const factor = weightOf(palette.colours) / (weightOf(vouching) || 1);
	return vouching.map(({ weight }) => weight * factor);
}

/** Under this share of the resampled boards a colour may be the pictures' chance. */
const FIRM_FROM = 0.5;

/** Whether other pictures might not bring the colour back; one that somebody chose is never in doubt. */
export const isTentative = ({ firmness, origin }: Pick<PaletteColour, 'firmness' | 'origin'>): boolean =>
	origin === 'derived' && firmness < FIRM_FROM;

/** The user's own word for a palette colour, else the word most people use, in the language spoken; told apart from others of the palette with that word. */
export function colourWord({ label, lab, apart }: Pick<PaletteColour, 'label' | 'lab' | 'apart'>): string {
	if (label) return label;
	const word = saidColour(lab);
	return apart ? say(`coloursApart.${apart}`, { colour: word }) : word;
}
