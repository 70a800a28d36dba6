/** The `apart` network's answer, cell by cell, row by row: each cell covers a square of its picture. */
export type WaysToMiddles = {
	readonly widthCells: number;
	readonly heightCells: number;
	/** Score of a cell for being the middle of a garment. */
	readonly middle: Float32Array;
	/** How far from a cell the middle of its garment lies, in `WAY` cells. */
	readonly across: Float32Array;
	readonly down: Float32Array;
};

/** Cells that a way of 1 is long, as in training (`photo/networks/apart/training/apart_network.py`). */
export const WAY = 16;

/** A place in cells; the middle of the first cell is 0, 0. */
export type Place = { readonly x: number; readonly y: number };

/** What the cells around a place say of it, mixed by how near they are: the place in each plane, and the four shares. */
type Around = { readonly places: readonly number[]; readonly shares: readonly number[] };

function around({ widthCells, heightCells }: WaysToMiddles, { x, y }: Place): Around {
	const column = Math.min(widthCells - 1, Math.max(0, x));
	const row = Math.min(heightCells - 1, Math.max(0, y));
	const left = Math.floor(column);
	const top = Math.floor(row);
	const right = Math.min(widthCells - 1, left + 1);
	const bottom = Math.min(heightCells - 1, top + 1);
	const u = column - left;
	const v = row - top;
	return {
		places: [
			top * widthCells + left,
			top * widthCells + right,
			bottom * widthCells + left,
			bottom * widthCells + right,
		],
		shares: [(1 - u) * (1 - v), u * (1 - v), (1 - u) * v, u * v],
	};
}

function mixed(plane: Float32Array, { places, shares }: Around): number {
	let sum = 0;
	for (let one = 0; one < 4; one++) sum += plane[places[one]!]! * shares[one]!;
	return sum;
}

/** Which of these middles the garment has that is seen at a place: the one nearest to where the ways from there lead. At least one middle. */
export function middleOf(ways: WaysToMiddles, middles: readonly Place[], place: Place): number {
	const near = around(ways, place);
	const toX = place.x + WAY * mixed(ways.across, near);
	const toY = place.y + WAY * mixed(ways.down, near);
	let nearest = 0;
	let least = Number.POSITIVE_INFINITY;
	for (let one = 0; one < middles.length; one++) {
		const far = (middles[one]!.x - toX) ** 2 + (middles[one]!.y - toY) ** 2;
		if (far >= least) continue;
		least = far;
		nearest = one;
	}
	return nearest;
}
