/** How far a tile of cloth is made of straight lines. */
export type TileLines = {
	/** Share of the tile's variance that lines of one direction explain, 0..1: near 1 for stripes. */
	readonly oneWay: number;
	/** The same for lines of two directions square to each other: near 1 for stripes and checks, low for prints. */
	readonly twoWays: number;
	/** What the weaker of the two directions explains: 0 for stripes. */
	readonly weaker: number;
};

/** Directions tried, degrees apart. */
const STEP_DEGREES = 7.5;

/** Share of the variance of `tile` (L, a, b triples, `side` squared, mean near 0) that means along lines of one direction explain. */
function explained(tile: Float32Array, side: number, radians: number, total: number): number {
	const [c, s] = [Math.cos(radians), Math.sin(radians)];
	const lines = Math.ceil(side * 1.5);
	const sums = new Float64Array(lines * 3);
	const counts = new Uint32Array(lines);
	const middle = (side - 1) / 2;
	for (let v = 0; v < side; v++) {
		for (let u = 0; u < side; u++) {
			const line = Math.round((u - middle) * c + (v - middle) * s + lines / 2 - 0.5);
			const at = (v * side + u) * 3;
			counts[line]!++;
			for (let k = 0; k < 3; k++) sums[line * 3 + k]! += tile[at + k]!;
		}
	}
	let between = 0;
	for (let line = 0; line < lines; line++) {
		if (counts[line] === 0) continue;
		for (let k = 0; k < 3; k++) between += sums[line * 3 + k]! ** 2 / counts[line]!;
	}
	return between / total;
}

/**
 * Looks for the directions in which a tile is most nearly made of lines: the analysis of variance of its colours by line. A stripe is one
 * set of lines and a check the sum of two; a print is neither. The differences of the tile must be taken from its mean.
 */
export function tileLines(tile: Float32Array, side: number): TileLines {
	const total = tile.reduce((sum, value) => sum + value * value, 1e-6);
	const half = Math.round(90 / STEP_DEGREES);
	const shares = Array.from({ length: 2 * half }, (_, i) =>
		explained(tile, side, (i * STEP_DEGREES * Math.PI) / 180, total),
	);
	let best: TileLines = { oneWay: 0, twoWays: 0, weaker: 0 };
	for (let i = 0; i < half; i++) {
		const [one, other] = [shares[i]!, shares[i + half]!];
		if (one + other > best.twoWays) best = { ...best, twoWays: one + other, weaker: Math.min(one, other) };
	}
	return { ...best, oneWay: Math.max(...shares) };
}
