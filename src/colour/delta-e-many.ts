import { deltaE2000 } from './delta-e.ts';
import { hueRotation } from './hue-rotation.ts';
import { chroma, type Lab65 } from './lab65.ts';

/** 25^7, the chroma at which G and Rc are half grown (Sharma et al. 2005, equations 4 and 19). */
const CHROMA_25_TO_7 = 25 ** 7;
/** The weights of T with the cosine and sine of its fixed angles, 30, 6 and 63 degrees (Sharma et al. 2005, equation 15). */
const weighted = (weight: number, degrees: number) =>
	[weight * Math.cos((degrees * Math.PI) / 180), weight * Math.sin((degrees * Math.PI) / 180)] as const;
const [T_COS_1, T_SIN_1] = weighted(0.17, 30);
const T_COS_2 = 0.24;
const [T_COS_3, T_SIN_3] = weighted(0.32, 6);
const [T_COS_4, T_SIN_4] = weighted(0.2, 63);

/** Below this length of the sum of two unit hue vectors the hues are within 0.06 degrees of opposite: the mean hue is then taken the slow way. */
const NEARLY_OPPOSITE = 1e-3;

/** Under this product of chromas the hue difference 2 sqrt(C1 C2) is under 1e-11, and dividing by it would not be safe. */
const GREY_PRODUCT = 1e-23;

/** c^7 / (c^7 + 25^7), square root, without `Math.pow`. */
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
 * CIEDE2000 of the colour at `from` in `one` against every colour of `other` (with its CIELAB chromas), written from `at` on. Everything
 * passes through typed arrays, because numbers handed from function to function are put on the heap one by one, which costs more than
 * the formula.
 */
function writeRow(
	one: Float64Array,
	from: number,
	other: Float64Array,
	chromas: Float64Array,
	into: Float64Array,
	start: number,
): void {
	const L1 = one[from]!;
	const a1 = one[from + 1]!;
	const b1 = one[from + 2]!;
	const K1 = Math.sqrt(a1 * a1 + b1 * b1);
	for (let i = 0, column = 0, at = start; i < chromas.length; i++, column += 3, at++) {
		const L2 = other[column]!;
		const a2 = other[column + 1]!;
		const b2 = other[column + 2]!;
		const stretch = 1.5 - 0.5 * chromaTerm((K1 + chromas[i]!) / 2);
		const x1 = a1 * stretch;
		const x2 = a2 * stretch;
		const C1 = Math.sqrt(x1 * x1 + b1 * b1);
		const C2 = Math.sqrt(x2 * x2 + b2 * b2);
		const dL = L2 - L1;
		const dC = C2 - C1;
		const Cm = (C1 + C2) / 2;
		const Lm50 = (L1 + L2) / 2 - 50;
		const Lm50Squared = Lm50 * Lm50;
		const root = Math.sqrt(20 + Lm50Squared);
		const lightness = (dL * root) / (root + 0.015 * Lm50Squared);
		const chromatic = dC / (1 + 0.045 * Cm);
		// A grey has no hue, so no hue difference: the T and rotation terms fall away.
		const product = C1 * C2;
		if (product < GREY_PRODUCT) {
			into[at] = Math.sqrt(lightness * lightness + chromatic * chromatic);
			continue;
		}

		// Twice the mean hue direction, unnormalised: C1 C2 (u1 + u2) for the unit vectors u1, u2 of the two hues.
		const wx = C2 * x1 + C1 * x2;
		const wy = C2 * b1 + C1 * b2;
		const length = Math.sqrt(wx * wx + wy * wy);
		if (length < NEARLY_OPPOSITE * product) {
			into[at] = deltaE2000([L1, a1, b1], [L2, a2, b2]);
			continue;
		}
		const inverse = 1 / length;
		// 2 sqrt(C1 C2) sin(dh / 2), the sine from sin(dh) / (2 cos(dh / 2)).
		const dH = 2 * Math.sqrt(product) * (x1 * b2 - b1 * x2) * inverse;

		// cos and sin of the mean hue h, then of 2h, 3h, 4h.
		const c = wx * inverse;
		const s = wy * inverse;
		const c2 = c * c - s * s;
		const s2 = 2 * s * c;
		const c3 = c2 * c - s2 * s;
		const s3 = s2 * c + c2 * s;
		const c4 = c2 * c2 - s2 * s2;
		const s4 = 2 * s2 * c2;
		const T = 1 - c * T_COS_1 - s * T_SIN_1 + c2 * T_COS_2 + c3 * T_COS_3 - s3 * T_SIN_3 - c4 * T_COS_4 - s4 * T_SIN_4;
		const hue = dH / (1 + 0.015 * Cm * T);

		const rotation = hueRotation(c, s);
		let squared = lightness * lightness + chromatic * chromatic + hue * hue;
		if (rotation !== 0) squared -= rotation * 2 * chromaTerm(Cm) * chromatic * hue;
		into[at] = Math.sqrt(squared);
	}
}

/** The two colours and the result of a single pair, reused from call to call. */
const single = {
	one: new Float64Array(3),
	other: new Float64Array(3),
	chroma: new Float64Array(1),
	result: new Float64Array(1),
};

/**
 * CIEDE2000 of two colours given as six numbers, without making an object. The same formula as `deltaE2000` (Sharma, Wu, Dalal
 * 2005), equal within 1e-9, but with the hue as a direction instead of an angle: sums, double
 * angles and one table replace the trigonometric calls.
 */
export function deltaE2000Of(L1: number, a1: number, b1: number, L2: number, a2: number, b2: number): number {
	const { one, other, chroma: chromas, result } = single;
	one[0] = L1;
	one[1] = a1;
	one[2] = b1;
	other[0] = L2;
	other[1] = a2;
	other[2] = b2;
	chromas[0] = Math.sqrt(a2 * a2 + b2 * b2);
	writeRow(one, 0, other, chromas, result, 0);
	return result[0]!;
}

/** Whether two colours lie within `most` of each other (CIEDE2000, `most` included); the difference in lightness alone tells most that do not. */
export const liesWithin = (one: Lab65, other: Lab65, most: number): boolean =>
	Math.abs(one[0] - other[0]) <= most * MOST_LIGHTNESS_DIVISOR &&
	deltaE2000Of(one[0], one[1], one[2], other[0], other[1], other[2]) <= most;

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
	const rows = one.length / 3;
	const columns = other.length / 3;
	if (!Number.isInteger(rows) || !Number.isInteger(columns)) throw new RangeError('Expected whole L, a, b triples.');
	const result = new Float64Array(rows * columns);
	const chromas = Float64Array.from({ length: columns }, (_, i) => chroma([0, other[i * 3 + 1]!, other[i * 3 + 2]!]));
	for (let row = 0; row < rows; row++) writeRow(one, row * 3, other, chromas, result, row * columns);
	return result;
}

/** CIEDE2000 of two colours (weights 1); the same figure as {@link deltaE2000Of}. */
export const distanceBetween = (one: Lab65, other: Lab65): number =>
	deltaE2000Of(one[0], one[1], one[2], other[0], other[1], other[2]);
