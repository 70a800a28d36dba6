import type { PaletteColour } from '../words/palette-colour.ts';
import { REACH } from './palette-pool.ts';

/**
 * Farthest (CIEDE2000) from a palette colour's centre that cloth still counts as that colour: the distance at which a picture holds it, or
 * the colour's own spread where that is wider. Not their sum: a wide colour would then be covered by cloth that looks like none of its members.
 */
export const reachOf = ({ spread }: Pick<PaletteColour, 'spread'>): number => Math.max(REACH, spread);
