import { BACKGROUND, isClothes, type LabelMap, type Pixels } from '../pixels.ts';

/** Most that the light at the clothes is thought to differ from that at the neutral, in stops. */
const LARGEST_FALL = 0.8;
/** Least share of the frame that must be background, and clothes, for a fall of light to be told from them. */
const LEAST_SHARE = 0.05;
/** Pixels of the background this like the neutral's (byte steps of each channel) and this near (picture widths) are the sheet itself, no floor. */
const NEUTRAL_STEPS = 24;
const NEUTRAL_REACH = 0.25;
/** Every so-many-th pixel in both directions is enough for a plane. */
const STEP = 3;

/**
 * How much more light falls on the clothes than on the point (x, y), in stops: a lamp at the side lights one end of a floor better than the
 * other. Told by a plane through the logarithm of the background's green, least squares; 0 where there is no clothing or too little
 * background. A floor whose own colour changes from end to end misleads it, hence the limit of 0.8.
 */
export function lightFallStops(
	{ widthPx, heightPx, rgb }: Pixels,
	{ classes }: LabelMap,
	x: number,
	y: number,
): number {
	const middle = Math.min(heightPx - 1, Math.round(y)) * widthPx + Math.min(widthPx - 1, Math.round(x));
	const isNeutral = (column: number, row: number): boolean =>
		Math.hypot(column - x, row - y) < NEUTRAL_REACH * widthPx &&
		[0, 1, 2].every((k) => Math.abs(rgb[(row * widthPx + column) * 3 + k]! - rgb[middle * 3 + k]!) < NEUTRAL_STEPS);
	let [clothX, clothY, clothes, n] = [0, 0, 0, 0];
	let [sx, sy, sv, sxx, syy, sxy, sxv, syv] = [0, 0, 0, 0, 0, 0, 0, 0];
	for (let row = 0; row < heightPx; row += STEP) {
		for (let column = 0; column < widthPx; column += STEP) {
			const label = classes[row * widthPx + column]!;
			const [u, v] = [column / widthPx, row / widthPx];
			if (isClothes(label)) {
				clothX += u;
				clothY += v;
				clothes++;
			} else if (label === BACKGROUND && !isNeutral(column, row)) {
				// 2.2 stands for the encoding of sRGB: near enough for a ratio.
				const stops = 2.2 * Math.log2(Math.max(1, rgb[(row * widthPx + column) * 3 + 1]!));
				n++;
				sx += u;
				sy += v;
				sv += stops;
				sxx += u * u;
				syy += v * v;
				sxy += u * v;
				sxv += u * stops;
				syv += v * stops;
			}
		}
	}
	const least = (LEAST_SHARE * classes.length) / (STEP * STEP);
	if (clothes < least || n < least) return 0;
	const [xx, yy, xy] = [sxx - (sx * sx) / n, syy - (sy * sy) / n, sxy - (sx * sy) / n];
	const [xv, yv] = [sxv - (sx * sv) / n, syv - (sy * sv) / n];
	const determinant = xx * yy - xy * xy;
	if (determinant <= 1e-9) return 0;
	const [slopeX, slopeY] = [(xv * yy - yv * xy) / determinant, (yv * xx - xv * xy) / determinant];
	const fall = slopeX * (clothX / clothes - x / widthPx) + slopeY * (clothY / clothes - y / widthPx);
	return Math.min(LARGEST_FALL, Math.max(-LARGEST_FALL, fall));
}
