import type { Frame } from '../outline/outline-picture.ts';
import { isClothes, type LabelMap } from '../pixels.ts';
import { garmentMiddles } from './garment-middles.ts';
import { middleOf, type WaysToMiddles } from './ways-to-middles.ts';

/** The cloth of a photo as marks in a network's picture of so many cells, 1 = the middle of the cell shows cloth. */
export function clothOfCells(
	{ classes, widthPx, heightPx }: LabelMap,
	frame: Frame,
	widthCells: number,
	heightCells: number,
): Uint8Array {
	const marks = new Uint8Array(widthCells * heightCells);
	for (let row = 0; row < heightCells; row++) {
		const y = Math.floor((((row + 0.5) / heightCells - frame.top) / frame.heightPx) * heightPx);
		if (y < 0 || y >= heightPx) continue;
		for (let column = 0; column < widthCells; column++) {
			const x = Math.floor((((column + 0.5) / widthCells - frame.left) / frame.widthPx) * widthPx);
			if (x >= 0 && x < widthPx && isClothes(classes[y * widthPx + x]!)) marks[row * widthCells + column] = 1;
		}
	}
	return marks;
}

/** Which garment each pixel of a photo shows: 0 none, 1 and up. All cloth is of the first where no garment has a middle. */
export function garmentMarks(labels: LabelMap, frame: Frame, ways: WaysToMiddles): Uint8Array {
	const { classes, widthPx, heightPx } = labels;
	const { widthCells, heightCells } = ways;
	const middles = garmentMiddles(ways, clothOfCells(labels, frame, widthCells, heightCells));
	if (middles.length < 2) return classes.map((label) => (isClothes(label) ? 1 : 0));
	return classes.map((label, at) => {
		if (!isClothes(label)) return 0;
		const x = (frame.left + (((at % widthPx) + 0.5) / widthPx) * frame.widthPx) * widthCells - 0.5;
		const y = (frame.top + ((Math.floor(at / widthPx) + 0.5) / heightPx) * frame.heightPx) * heightCells - 0.5;
		return middleOf(ways, middles, { x, y }) + 1;
	});
}
