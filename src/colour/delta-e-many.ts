import { deltaE2000 } from './delta-e.ts';
import { hueRotation } from './hue-rotation.ts';
import { chroma, type Lab65 } from './lab65.ts';

/** 25^7, the chroma at which G and Rc are half grown (Sharma et al. 2005, equations 4 and 19). */
const CHROMA_25_TO_7 = 25 ** 7;
/** cos and sin of the fixed angles in T (Sharma et al. 2005, equation 15): 30, 6 and 63 degrees. */
const [COS_30, SIN_30] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
const [COS_6, SIN_6] = [Math.cos(Math.PI / 30), Math.sin(Math.PI / 30)];
const [COS_63, SIN_63] = [Math.cos((63 * Math.PI) / 180), Math.sin((63 * Math.PI) / 180)];
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

/** The formula for two colours with their CIELAB chromas `K1` and `K2`, which many pairs share. */
function difference(
	L1: number,
	a1: number,
	b1: number,
	K1: number,
	L2: number,
	a2: number,
	b2: number,
	K2: number,
): number {
	const stretch = 1.5 - 0.5 * chromaTerm((K1 + K2) / 2);
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
	if (product < GREY_PRODUCT) return Math.sqrt(lightness * lightness + chromatic * chromatic);

	// Twice the mean hue direction, unnormalised: C1 C2 (u1 + u2) for the unit vectors u1, u2 of the two hues.
	const wx = C2 * x1 + C1 * x2;
	const wy = C2 * b1 + C1 * b2;
	const length = Math.sqrt(wx * wx + wy * wy);
	if (length < NEARLY_OPPOSITE * product) return deltaE2000([L1, a1, b1], [L2, a2, b2]);
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
	const T =
		1 -
		0.17 * (c * COS_30 + s * SIN_30) +
		0.24 * c2 +
		0.32 * (c3 * COS_6 - s3 * SIN_6) -
		0.2 * (c4 * COS_63 + s4 * SIN_63);
	const hue = dH / (1 + 0.015 * Cm * T);

	const rotation = hueRotation(c, s);
	let squared = lightness * lightness + chromatic * chromatic + hue * hue;
	if (rotation !== 0) squared -= rotation * 2 * chromaTerm(Cm) * chromatic * hue;
	return Math.sqrt(squared);
}

/**
 * CIEDE2000 of two colours given as six numbers, without making an object. The same formula as `deltaE2000` (Sharma, Wu, Dalal
 * 2005), equal within 1e-9, but with the hue as a direction instead of an angle: sums, double
 * angles and one table replace the trigonometric calls.
 */
export const deltaE2000Of = (L1: number, a1: number, b1: number, L2: number, a2: number, b2: number): number =>
	difference(L1, a1, b1, Math.sqrt(a1 * a1 + b1 * b1), L2, a2, b2, Math.sqrt(a2 * a2 + b2 * b2));

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
	for (let row = 0, at = 0; row < one.length; row += 3) {
		const L = one[row]!;
		const a = one[row + 1]!;
		const b = one[row + 2]!;
		const K = Math.sqrt(a * a + b * b);
		for (let column = 0, i = 0; i < columns; column += 3, i++, at++) {
			result[at] = difference(L, a, b, K, other[column]!, other[column + 1]!, other[column + 2]!, chromas[i]!);
		}
	}
	return result;
}
