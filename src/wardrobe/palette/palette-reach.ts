import type { PaletteColour } from '../words/palette-colour.ts';

/**
 * Cloth this near to a palette colour's centre is that colour (CIEDE2000): just over the mean error of uncorrected phone photos of known colours (8.9,
 * measured on 18 photos of a 24-patch chart), so that a piece of exactly a palette colour is not turned away by its photo.
 */
export const REACH = 10;

/** A wide colour reaches further, but no further than this: beyond it cloth looks like none of the colour's members (measured on 216 vivid colours). */
const WIDEST_REACH = 13;

/**
 * Farthest (CIEDE2000) from a palette colour's centre that cloth still counts as that colour: {@link REACH}, or the colour's own spread where that is wider, up
 * to 13. The one rule of every judgement. Not their sum: a wide colour would then be covered by cloth that looks like none of its members.
 */
export const reachOf = ({ spread }: Pick<PaletteColour, 'spread'>): number =>
	Math.max(REACH, Math.min(spread, WIDEST_REACH));
