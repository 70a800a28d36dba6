/** Up to here beyond a palette colour's spread a swatch counts in full: CIEDE2000 3, about where an untrained eye sees two colours (Mokrzycki and Tatol 2011). */
export const FULL_UP_TO = 3;

/** From here on it counts for nothing: CIEDE2000 20, the distance at which garments stop being near each other (measured for loners, see `loners.ts`). */
export const NOTHING_FROM = 20;

/**
 * A garment fits from this percentage on. One colour reaches it up to 9.3 beyond the spread: just over the mean error of uncorrected phone
 * photos of known colours (8.9, measured on 18 photos of a 24-patch chart), so a piece of exactly a palette colour is not turned away by its photo.
 */
export const FITS_FROM_PERCENT = 70;

/** Under this it is off: less than a third of it, or all of it at 13.7 or more beyond the spread. Common practice, no source. */
export const NEAR_FROM_PERCENT = 30;

/**
 * How far a swatch counts as in the palette, 0..1: 1 up to {@link FULL_UP_TO} beyond the nearest colour's spread, then half a cosine
 * wave down to 0 at {@link NOTHING_FROM}; never rises with the distance.
 */
export function fitScore(beyondSpread: number): number {
	if (beyondSpread <= FULL_UP_TO) return 1;
	if (beyondSpread >= NOTHING_FROM) return 0;
	return (1 + Math.cos((Math.PI * (beyondSpread - FULL_UP_TO)) / (NOTHING_FROM - FULL_UP_TO))) / 2;
}
