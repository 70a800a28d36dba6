import { middleOf, type Place, type WaysToMiddles } from './ways-to-middles.ts';

/** A middle is the likeliest within so many cells each way, and at least so likely. */
const WITHIN = 4;
const SURE_FROM = 0.3;
/** The middle of a garment with a hole may lie so many cells beside its cloth. */
const BESIDE = 2;
/** A garment of fewer cells, or of less of the largest, is a part of its neighbour. */
const LEAST_CELLS = 60;
const LEAST_OF_LARGEST = 0.08;

/** Cells at most `by` steps (up, down, left, right) from one that is marked. */
function spread(marks: Uint8Array, widthCells: number, by: number): Uint8Array {
	let out = marks;
	for (let step = 0; step < by; step++) {
		const from = out;
		out = from.map((mark, at) => {
			const column = at % widthCells;
			const besides =
				(column > 0 ? from[at - 1]! : 0) |
				(column < widthCells - 1 ? from[at + 1]! : 0) |
				(from[at - widthCells] ?? 0) |
				(from[at + widthCells] ?? 0);
			return mark | besides;
		});
	}
	return out;
}

/** The cells that are likelier middles than all around them. */
function peaks({ widthCells, heightCells, middle }: WaysToMiddles, near: Uint8Array): Place[] {
	const scores = middle.map((score, at) => (near[at] ? score : Number.NEGATIVE_INFINITY));
	const least = Math.log(SURE_FROM / (1 - SURE_FROM));
	const isHighest = (at: number, x: number, y: number) => {
		for (let row = Math.max(0, y - WITHIN); row <= Math.min(heightCells - 1, y + WITHIN); row++)
			for (let column = Math.max(0, x - WITHIN); column <= Math.min(widthCells - 1, x + WITHIN); column++)
				if (scores[row * widthCells + column]! > scores[at]!) return false;
		return true;
	};
	const found: Place[] = [];
	for (const [at, score] of scores.entries()) {
		const [x, y] = [at % widthCells, Math.floor(at / widthCells)];
		if (score >= least && isHighest(at, x, y)) found.push({ x, y });
	}
	return found;
}

/** Cells of cloth by the middle that they belong to. */
function cellCounts(ways: WaysToMiddles, cloth: Uint8Array, middles: readonly Place[]): number[] {
	const counts = middles.map(() => 0);
	for (const [at, mark] of cloth.entries()) {
		if (mark === 0) continue;
		counts[middleOf(ways, middles, { x: at % ways.widthCells, y: Math.floor(at / ways.widthCells) })]!++;
	}
	return counts;
}

/**
 * The middles of the garments that the cloth is of, in cells; none where no cell is likely enough. `cloth`: one byte a cell, 1 = cloth. What too little
 * of the cloth belongs to is left out, the smallest first.
 */
export function garmentMiddles(ways: WaysToMiddles, cloth: Uint8Array): readonly Place[] {
	let middles = peaks(ways, spread(cloth, ways.widthCells, BESIDE));
	while (middles.length > 1) {
		const counts = cellCounts(ways, cloth, middles);
		const least = Math.min(...counts);
		if (least >= Math.max(LEAST_CELLS, LEAST_OF_LARGEST * Math.max(...counts))) break;
		const smallest = counts.indexOf(least);
		middles = middles.filter((_, at) => at !== smallest);
	}
	return middles;
}
