/** What one piece of cloth looks like to the touch of the eye, free of its colour. */
export type TileTexture = {
	/** Root mean square of the differences from the mean, CIELAB. */
	readonly contrast: number;
	/** The same in a* and b* alone: folds change little there. */
	readonly colourContrast: number;
	/** Share of the contrast that is finer than three pixels: melange and weave. */
	readonly fineness: number;
	/** 0..1: 1 where all edges run one way. */
	readonly oneWay: number;
	/** 0..1: 1 where all edges run two ways, square to each other (or one way). */
	readonly twoWays: number;
	/** Direction in which the edges run, degrees 0 (horizontal) .. <180, counter-clockwise. */
	readonly directionDegrees: number;
	/** How well the piece repeats itself across the edges, -1..1, and along them. */
	readonly repeatAcross: number;
	readonly repeatAlong: number;
	/** Length of the repeat across the edges, tile pixels; 0 where there is none. */
	readonly period: number;
	/** Sharpness: how much of the contrast sits in strong edges, 0..1; folds are soft. */
	readonly edginess: number;
};

/** Shortest and longest repeat looked for: under 3 pixels it is weave, over half the tile it cannot be seen twice. */
const SHORTEST = 3;

type Tensor = { readonly xx: number; readonly yy: number; readonly xy: number };

/** Colour gradient of a pixel as Di Zenzo's tensor (1986), central differences. */
function tensorAt(tile: Float32Array, side: number, at: number): Tensor {
	let [xx, yy, xy] = [0, 0, 0];
	for (let k = 0; k < 3; k++) {
		const gx = (tile[(at + 1) * 3 + k]! - tile[(at - 1) * 3 + k]!) / 2;
		const gy = (tile[(at + side) * 3 + k]! - tile[(at - side) * 3 + k]!) / 2;
		xx += gx * gx;
		yy += gy * gy;
		xy += gx * gy;
	}
	return { xx, yy, xy };
}

/** Pixel differences against the mean of 3 x 3: what is finer than three pixels. */
function fineContrast(tile: Float32Array, side: number): number {
	let squares = 0;
	for (let v = 1; v < side - 1; v++) {
		for (let u = 1; u < side - 1; u++) {
			for (let k = 0; k < 3; k++) {
				let sum = 0;
				for (let dv = -1; dv <= 1; dv++) {
					for (let du = -1; du <= 1; du++) sum += tile[((v + dv) * side + u + du) * 3 + k]!;
				}
				squares += (tile[(v * side + u) * 3 + k]! - sum / 9) ** 2;
			}
		}
	}
	return Math.sqrt(squares / ((side - 2) * (side - 2)));
}

/** Likeness of the tile to itself moved by (dx, dy): 1 the same, 0 unrelated. */
function likeness(tile: Float32Array, side: number, dx: number, dy: number): number {
	let [product, one, other] = [0, 0, 0];
	for (let v = Math.max(0, -dy); v < Math.min(side, side - dy); v++) {
		for (let u = Math.max(0, -dx); u < Math.min(side, side - dx); u++) {
			const a = (v * side + u) * 3;
			const b = ((v + dy) * side + u + dx) * 3;
			for (let k = 0; k < 3; k++) {
				product += tile[a + k]! * tile[b + k]!;
				one += tile[a + k]! ** 2;
				other += tile[b + k]! ** 2;
			}
		}
	}
	return product / (Math.sqrt(one * other) + 1e-9);
}

/** The best repeat in one direction: how alike, and after how many pixels; looked for only beyond the first dip. */
function repeatIn(
	tile: Float32Array,
	side: number,
	radians: number,
): { readonly likeness: number; readonly period: number } {
	const longest = Math.floor(side * 0.6);
	let dip = 1;
	let best = { likeness: -1, period: 0 };
	for (let lag = 1; lag <= longest; lag++) {
		const value = likeness(tile, side, Math.round(Math.cos(radians) * lag), Math.round(-Math.sin(radians) * lag));
		dip = Math.min(dip, value);
		const rise = value - dip;
		if (lag >= SHORTEST && rise > 0.15 && value > best.likeness + 0.03) best = { likeness: value, period: lag };
	}
	return best;
}

/** The texture of a square tile of CIELAB differences (L, a, b triples). An even tile has contrast 0 and no direction to speak of. */
export function tileTexture(tile: Float32Array, side: number): TileTexture {
	let [squares, colourSquares] = [0, 0];
	for (let at = 0; at < tile.length; at += 3) {
		colourSquares += tile[at + 1]! ** 2 + tile[at + 2]! ** 2;
		squares += tile[at]! ** 2;
	}
	const contrast = Math.sqrt((squares + colourSquares) / (side * side));
	let [weight, c2, s2, c4, s4] = [0, 0, 0, 0, 0];
	const strengths: number[] = [];
	for (let v = 1; v < side - 1; v++) {
		for (let u = 1; u < side - 1; u++) {
			const { xx, yy, xy } = tensorAt(tile, side, v * side + u);
			const strength = xx + yy;
			const angle = Math.atan2(2 * xy, xx - yy);
			strengths.push(strength);
			weight += strength;
			c2 += strength * Math.cos(angle);
			s2 += strength * Math.sin(angle);
			c4 += strength * Math.cos(2 * angle);
			s4 += strength * Math.sin(2 * angle);
		}
	}
	strengths.sort((a, b) => b - a);
	const strong = strengths.slice(0, Math.ceil(strengths.length / 10)).reduce((sum, value) => sum + value, 0);
	const oneWay = Math.hypot(c2, s2) / (weight + 1e-9);
	const twoWays = Math.hypot(c4, s4) / (weight + 1e-9);
	// Gradients point across the edges; rows count downwards, so that the angle turns its sign. Of two ways square to each other either will do.
	const across = oneWay > 0.25 || twoWays < 0.1 ? -Math.atan2(s2, c2) / 2 : -Math.atan2(s4, c4) / 4;
	const repeat = repeatIn(tile, side, across);
	const other = repeatIn(tile, side, across + Math.PI / 2);
	const degrees = ((across * 180) / Math.PI + 90 + 360) % 180;
	return {
		contrast,
		colourContrast: Math.sqrt(colourSquares / (side * side)),
		fineness: fineContrast(tile, side) / (contrast + 1e-9),
		oneWay,
		twoWays,
		directionDegrees: degrees,
		repeatAcross: repeat.likeness,
		repeatAlong: other.likeness,
		period: repeat.period,
		edginess: strong / (weight + 1e-9),
	};
}
