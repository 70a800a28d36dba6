/** Up to here from a palette colour a swatch counts in full (CIEDE2000): two photos of one cloth under one lamp differ by about as much (measured on phone photos). */
export const FULL_UP_TO = 5;

/** From here on it counts for nothing: CIEDE2000 20, the distance at which garments stop being near each other (measured for loners, see `loners.ts`). */
export const NOTHING_FROM = 20;

/** A garment fits from this percentage on: what a swatch at the palette's reach, a distance of 10, scores. */
export const FITS_FROM_PERCENT = 75;

/** Under this it is off: what a swatch at {@link OFF_FROM} scores. */
export const NEAR_FROM_PERCENT = 25;

/** Cloth this far from every palette colour is off, whatever the rest of the piece does (CIEDE2000; half as far again as the reach). */
export const OFF_FROM = 15;

/** A part of a piece from this share on that is off keeps the piece from fitting: as much as a contrasting yoke or sleeve. Common practice, no source. */
export const ODD_FROM_SHARE = 0.2;

/**
 * How far a swatch counts as in the palette, 0..1: 1 up to {@link FULL_UP_TO}, then half a cosine wave down to 0 at {@link NOTHING_FROM}; never rises with
 * the distance. `distance` is what lies between the swatch and the palette colour, less what that colour reaches beyond the usual.
 */
export function fitScore(distance: number): number {
	if (distance <= FULL_UP_TO) return 1;
	if (distance >= NOTHING_FROM) return 0;
	return (1 + Math.cos((Math.PI * (distance - FULL_UP_TO)) / (NOTHING_FROM - FULL_UP_TO))) / 2;
}
