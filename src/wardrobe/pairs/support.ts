import type { Palette } from '../words/palette-colour.ts';
import type { PairWord } from '../words/wear.ts';
import type { Pairing } from './pairings.ts';

/**
 * What speaks for two garments going together, strongest first; `unproven` = nothing does, which is not a no; `no` = the user refused it.
 * The order is the one measured on outfits really worn: no harmony model told worn pairs from chance, so none has a place here.
 */
export const SUPPORT_KINDS = ['approved', 'worn', 'inspired', 'palette', 'base', 'echo', 'unproven', 'no'] as const;
export type SupportKind = (typeof SUPPORT_KINDS)[number];

/** Whether a pair of this kind counts as going together: everything but `unproven` and `no`. */
export const isSupported = (kind: SupportKind): boolean => kind !== 'unproven' && kind !== 'no';

/** Why two garments go together, or that nothing says so. */
export type Support = { readonly kind: SupportKind; readonly sentence: string };

/** Two garments worn on the same day. */
export type WornTogether = { readonly garmentA: string; readonly garmentB: string; readonly days: number };

/** What is known beyond the garments themselves when pairs are judged. */
export type PairContext = {
	readonly palette: Palette;
	/** What the inspirations wear with what, see `pairingsFromReadings`. */
	readonly pairings: readonly Pairing[];
	readonly pairWords: readonly PairWord[];
	readonly wornTogether: readonly WornTogether[];
};
