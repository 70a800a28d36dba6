import { deltaE2000Weighted } from './delta-e.ts';
import type { Lab65 } from './lab65.ts';

/** 25^7, the chroma at which G and Rc are half grown (Sharma et al. 2005, equations 4 and 19). */
const CHROMA_25_TO_7 = 25 ** 7;
const RADIANS = Math.PI / 180;
/** The weights of T with the cosine and sine of its fixed angles, 30, 6 and 63 degrees (Sharma et al. 2005, equation 15). */
const weighted = (weight: number, degrees: number) =>
	[weight * Math.cos(degrees * RADIANS), weight * Math.sin(degrees * RADIANS)] as const;
const [T_COS_1, T_SIN_1] = weighted(0.17, 30);
const T_COS_2 = 0.24;
const [T_COS_3, T_SIN_3] = weighted(0.32, 6);
const [T_COS_4, T_SIN_4] = weighted(0.2, 63);

/** Below this length of the sum of two unit hue vectors the hues are within 0.06 degrees of opposite: the mean hue is then taken the slow way. */
const NEARLY_OPPOSITE = 1e-3;
/** Under this product of chromas the hue difference 2 sqrt(C1 C2) is under 1e-11, and dividing by it would not be safe. */
const GREY_PRODUCT = 1e-23;

/** Square root of c^7 / (c^7 + 25^7). */
function chromaTerm(c: number): number {
	const c3 = c * c * c;
	const c7 = c3 * c3 * c;
	return Math.sqrt(c7 / (c7 + CHROMA_25_TO_7));
}

/**
 * CIEDE2000 is never less than the difference in L* divided by this: its lightness divisor is largest at L* 0 and 100, there 1.747. So a
 * difference in lightness alone can rule a pair out before the formula is computed.
 */
export const MOST_LIGHTNESS_DIVISOR = 1.75;

/**
 * sin(2 dTheta) of the rotation term (Sharma et al. 2005, equation 16) for the mean hue with cosine `c` and sine `s`: 0.87 at blue (275
 * degrees), falling to nothing on both sides. From 0 to 135 degrees it is under 1e-13 and taken as 0.
 */
function hueRotation(c: number, s: number): number {
	if (s >= 0 && c >= -Math.SQRT1_2) return 0;
	const degrees = Math.atan2(s, c) / RADIANS;
	const away = ((degrees < 0 ? degrees + 360 : degrees) - 275) / 25;
	return Math.sin(60 * RADIANS * Math.exp(-away * away));
}

/**
 * CIEDE2000 of two colours given as six numbers, without making an object; `lightnessWeight` is the formula's kL. The formula of `deltaE2000` (Sharma, Wu, Dalal 2005), equal within
 * 1e-9, with each hue as a direction instead of an angle: sums and double angles replace most trigonometric calls, which keeps a report of
 * 2,000 garments a fifth quicker (bench/NOTES.md).
 */
export function deltaE2000Of(
	L1: number,
	a1: number,
	b1: number,
	L2: number,
	a2: number,
	b2: number,
	lightnessWeight = 1,
): number {
	const meanChroma = (Math.sqrt(a1 * a1 + b1 * b1) + Math.sqrt(a2 * a2 + b2 * b2)) / 2;
	const stretch = 1.5 - 0.5 * chromaTerm(meanChroma);
	const x1 = a1 * stretch;
	const x2 = a2 * stretch;
	const C1 = Math.sqrt(x1 * x1 + b1 * b1);
	const C2 = Math.sqrt(x2 * x2 + b2 * b2);
	const C = (C1 + C2) / 2;
	const fromMiddle = ((L1 + L2) / 2 - 50) ** 2;
	const root = Math.sqrt(20 + fromMiddle);
	const lightness = ((L2 - L1) * root) / ((root + 0.015 * fromMiddle) * lightnessWeight);
	const chromatic = (C2 - C1) / (1 + 0.045 * C);
	// A grey has no hue, so no hue difference: the T and rotation terms fall away.
	const product = C1 * C2;
	if (product < GREY_PRODUCT) return Math.sqrt(lightness * lightness + chromatic * chromatic);
	// Twice the mean hue direction, unnormalised: C1 C2 (u1 + u2) for the unit vectors u1, u2 of the two hues.
	const wx = C2 * x1 + C1 * x2;
	const wy = C2 * b1 + C1 * b2;
	const length = Math.sqrt(wx * wx + wy * wy);
	if (length < NEARLY_OPPOSITE * product) return deltaE2000Weighted(lightnessWeight, 1, 1)([L1, a1, b1], [L2, a2, b2]);
	// 2 sqrt(C1 C2) sin(dh / 2), the sine from sin(dh) / (2 cos(dh / 2)).
	const dH = (2 * Math.sqrt(product) * (x1 * b2 - b1 * x2)) / length;
	// Cosine and sine of the mean hue h, then of 2h, 3h, 4h.
	const c = wx / length;
	const s = wy / length;
	const c2 = c * c - s * s;
	const s2 = 2 * s * c;
	const c3 = c2 * c - s2 * s;
	const s3 = s2 * c + c2 * s;
	const c4 = c2 * c2 - s2 * s2;
	const s4 = 2 * s2 * c2;
	const T = 1 - c * T_COS_1 - s * T_SIN_1 + c2 * T_COS_2 + c3 * T_COS_3 - s3 * T_SIN_3 - c4 * T_COS_4 - s4 * T_SIN_4;
	const hue = dH / (1 + 0.015 * C * T);
	const rotated = hueRotation(c, s) * 2 * chromaTerm(C) * chromatic * hue;
	return Math.sqrt(lightness * lightness + chromatic * chromatic + hue * hue - rotated);
}

/** CIEDE2000 of two colours (weights 1); the same figure as {@link deltaE2000Of}. */
export const distanceBetween = (one: Lab65, other: Lab65): number =>
	deltaE2000Of(one[0], one[1], one[2], other[0], other[1], other[2]);

/** Whether two colours lie within `most` of each other (CIEDE2000, `most` included); the difference in lightness alone tells most that do not. */
export const liesWithin = (one: Lab65, other: Lab65, most: number, lightnessWeight = 1): boolean =>
	Math.abs(one[0] - other[0]) <= most * MOST_LIGHTNESS_DIVISOR * lightnessWeight &&
	deltaE2000Of(one[0], one[1], one[2], other[0], other[1], other[2], lightnessWeight) <= most;

/** Packed colours: L, a, b triples, the layout that the functions for many pairs take. */
export function packLabs(labs: readonly Lab65[]): Float64Array {
	const packed = new Float64Array(labs.length * 3);
	for (const [index, lab] of labs.entries()) packed.set(lab, index * 3);
	return packed;
}

/**
 * CIEDE2000 of every colour of `one` against every colour of `other`, both packed as L, a, b triples:
 * row-major, `one.length / 3` rows of `other.length / 3`. Either may be empty.
 */
export function deltaE2000Matrix(one: Float64Array, other: Float64Array): Float64Array {
	if (one.length % 3 !== 0 || other.length % 3 !== 0) throw new RangeError('Expected whole L, a, b triples.');
	const result = new Float64Array((one.length * other.length) / 9);
	for (let from = 0, at = 0; from < one.length; from += 3)
		for (let to = 0; to < other.length; to += 3)
			result[at++] = deltaE2000Of(
				one[from]!,
				one[from + 1]!,
				one[from + 2]!,
				other[to]!,
				other[to + 1]!,
				other[to + 2]!,
			);
	return result;
}
