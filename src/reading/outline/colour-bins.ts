/** Side of a colour bin in CIELAB. */
const BIN = 8;

/** Colours gathered in bins: a box of bins around those that occur, with an empty one before and behind along each axis (none below L* 0). */
export type ColourBins = {
	/** Bin of each colour, in the order given. */
	readonly of: Uint16Array;
	/** The bins that occur. */
	readonly held: Uint16Array;
	/** Bins along L*, a*, b*; along b* they lie beside each other. */
	readonly sides: Sides;
};

type Sides = readonly [L: number, a: number, b: number];

/** Bins along one axis from the lowest that occurs on, the empty ones at both ends included. */
type Axis = { readonly first: number; readonly count: number };

/** Which bins occur along one axis of the triples, where `from` is that axis' least possible value. */
function axisOf(labs: Float32Array, axis: number, from: number): Axis {
	let least = Number.POSITIVE_INFINITY;
	let most = Number.NEGATIVE_INFINITY;
	for (let at = axis; at < labs.length; at += 3) {
		const value = labs[at]!;
		if (value < least) least = value;
		if (value > most) most = value;
	}
	const first = Math.max(0, Math.floor((least - from) / BIN) - 1);
	return { first, count: Math.floor((most - from) / BIN) + 2 - first };
}

/** The bins of colours: L, a, b triples of sRGB, one at least. */
export function colourBins(labs: Float32Array): ColourBins {
	// Every sRGB colour's a* and b* lie within 128 of 0.
	const [L, a, b] = [axisOf(labs, 0, 0), axisOf(labs, 1, -128), axisOf(labs, 2, -128)];
	const of = new Uint16Array(labs.length / 3);
	const isHeld = new Uint8Array(L.count * a.count * b.count);
	for (let i = 0, at = 0; i < of.length; i++, at += 3) {
		// Cutting off what follows the point rounds down: none is negative.
		const l = ((labs[at]! / BIN) | 0) - L.first;
		const red = (((labs[at + 1]! + 128) / BIN) | 0) - a.first;
		const yellow = (((labs[at + 2]! + 128) / BIN) | 0) - b.first;
		const bin = (l * a.count + red) * b.count + yellow;
		of[i] = bin;
		isHeld[bin] = 1;
	}
	const held = new Uint16Array(isHeld.length);
	let count = 0;
	for (let bin = 0; bin < isHeld.length; bin++) if (isHeld[bin] === 1) held[count++] = bin;
	return { of, held: held.subarray(0, count), sides: [L.count, a.count, b.count] };
}

/** Each bin mixed with its neighbours along one axis (1 2 1); `step` bins lie between neighbours, `size` along the axis. */
function mixed(shares: Float64Array, step: number, size: number): Float64Array {
	const into = new Float64Array(shares.length);
	for (let block = 0; block < shares.length; block += step * size) {
		for (let place = 0; place < size; place++) {
			const back = place > 0 ? step : 0;
			const on = place < size - 1 ? step : 0;
			for (let i = block + place * step, end = i + step; i < end; i++)
				into[i] = (shares[i - back]! + 2 * shares[i]! + shares[i + on]!) / 4;
		}
	}
	return into;
}

/** Counts of bins as shares of their sum, neighbouring colours mixed; all 0 where nothing was counted. Right for the bins that occur. */
export function smoothShares(counts: Float64Array, [L, a, b]: Sides): Float64Array {
	let total = 0;
	for (let i = 0; i < counts.length; i++) total += counts[i]!;
	const shares = new Float64Array(counts.length);
	if (total > 0) for (let i = 0; i < counts.length; i++) shares[i] = counts[i]! / total;
	return mixed(mixed(mixed(shares, 1, b), b, a), a * b, L);
}
