import type { PaletteColour } from './palette-colour.ts';

/** CIEDE2000 at which a picture counts as holding a palette colour (the distance that the board's support was measured with). */
const HOLDS_WITHIN = 10;

/**
 * Farthest (CIEDE2000) from a palette colour's centre that cloth still counts as that colour: 10, or the colour's own spread where that is
 * wider. Not their sum: a wide colour would then be covered by cloth that looks like none of its members.
 */
export const reachOf = ({ spread }: Pick<PaletteColour, 'spread'>): number => Math.max(HOLDS_WITHIN, spread);
