import { xyzFromLab } from './lab65.ts';

/** CIE XYZ under a stated white, Y of a perfect white = 1. */
export type Xyz = readonly [X: number, Y: number, Z: number];

/** A 3 x 3 matrix, rows one after the other. */
export type Matrix3 = readonly [number, number, number, number, number, number, number, number, number];

/** The white point D65 as the CIELAB type has it, Y = 1. */
export const WHITE_D65: Xyz = xyzFromLab([100, 0, 0]) as Xyz;

/** XYZ to sharpened cone responses (Lam 1985, "Bradford"; the figures of the ICC specification, Annex E). */
const BRADFORD: Matrix3 = [0.8951, 0.2664, -0.1614, -0.7502, 1.7135, 0.0367, 0.0389, -0.0685, 1.0296];

/** The product of a matrix and a column vector. */
export const applyMatrix = (m: Matrix3, [x, y, z]: Xyz): Xyz => [
	m[0] * x + m[1] * y + m[2] * z,
	m[3] * x + m[4] * y + m[5] * z,
	m[6] * x + m[7] * y + m[8] * z,
];

/** The matrix that does `first`, then `second`. */
export function afterMatrix(second: Matrix3, first: Matrix3): Matrix3 {
	const columns = [0, 1, 2].map((column) =>
		applyMatrix(second, [first[column]!, first[column + 3]!, first[column + 6]!]),
	);
	const [a, b, c] = columns as [Xyz, Xyz, Xyz];
	return [a[0], b[0], c[0], a[1], b[1], c[1], a[2], b[2], c[2]];
}

/** The inverse; throws `RangeError` for a singular matrix. */
export function inverseMatrix([a, b, c, d, e, f, g, h, i]: Matrix3): Matrix3 {
	const determinant = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g);
	if (determinant === 0) throw new RangeError('Expected a matrix that can be inverted.');
	const s = 1 / determinant;
	return [
		(e * i - f * h) * s,
		(c * h - b * i) * s,
		(b * f - c * e) * s,
		(f * g - d * i) * s,
		(a * i - c * g) * s,
		(c * d - a * f) * s,
		(d * h - e * g) * s,
		(b * g - a * h) * s,
		(a * e - b * d) * s,
	];
}

const BRADFORD_INVERSE = inverseMatrix(BRADFORD);

/**
 * The linear Bradford transform of XYZ from one white to another (ICC.1:2022, Annex E): `from` itself maps to `to`.
 * `degree` 0..1 is how far the adaptation goes; 0 changes nothing. Throws `RangeError` for a white without light.
 */
export function bradfordMatrix(from: Xyz, to: Xyz, degree = 1): Matrix3 {
	const source = applyMatrix(BRADFORD, from);
	const target = applyMatrix(BRADFORD, to);
	const gains = source.map((cone, index) => degree * (target[index]! / cone) + 1 - degree);
	if (!gains.every(Number.isFinite)) throw new RangeError('Expected a white with light in all three cones.');
	const [l, m, s] = gains as [number, number, number];
	return afterMatrix(BRADFORD_INVERSE, afterMatrix([l, 0, 0, 0, m, 0, 0, 0, s], BRADFORD));
}

/**
 * The white, Y = 1, from which the Bradford transform to `to` gives a surface seen as `seen` the chromaticity of `wanted`: the light of a photo in
 * which a surface of known colour is seen. `degree` 0..1: how much of that light is taken out, 0 = nothing. Null where a cone sees nothing of one of the two.
 */
export function whiteOfSurface(seen: Xyz, wanted: Xyz, to: Xyz, degree = 1): Xyz | null {
	const [cones, asked, target] = [seen, wanted, to].map((colour) => applyMatrix(BRADFORD, colour)) as [Xyz, Xyz, Xyz];
	if ([...cones, ...asked].some((cone) => cone <= 0)) return null;
	const [X, Y, Z] = applyMatrix(
		BRADFORD_INVERSE,
		target.map((cone, index) => cone * (cones[index]! / asked[index]!) ** degree) as unknown as Xyz,
	);
	return [X / Y, 1, Z / Y];
}
