import { areaByMark, HAIR, type LabelMap } from '../pixels.ts';
import { type PieceBox, pieceBox } from './piece-box.ts';

/** Numbers that go with a piece's crop. */
export const NUMBER_COUNT = 15;
const SLOT_COUNT = 7;

const within = (value: number): number => Math.min(3, Math.max(-2, value));

/**
 * Where a piece lies and how large it is, in the order of training: its box within the person's (left, top, right, bottom), the logarithm of width
 * over height, the square roots of its shares of the frame and of the person, how much of its box it fills, and the share of each slot in the clothes.
 */
export function pieceNumbers(box: PieceBox, labels: LabelMap): Float32Array {
	const { classes, widthPx, heightPx } = labels;
	const person = pieceBox(classes, widthPx, 1, HAIR) ?? { left: 0, top: 0, right: widthPx, bottom: heightPx, area: 1 };
	const personWidth = person.right - person.left;
	const personHeight = person.bottom - person.top;
	const width = box.right - box.left;
	const height = box.bottom - box.top;
	const areas = areaByMark(classes);
	let clothes = 0;
	for (let label = 1; label <= SLOT_COUNT; label++) clothes += areas[label]!;
	const numbers = [
		(box.left - person.left) / personWidth,
		(box.top - person.top) / personHeight,
		(box.right - person.left) / personWidth,
		(box.bottom - person.top) / personHeight,
		Math.log(width / height),
		Math.sqrt(box.area / classes.length),
		Math.sqrt(box.area / person.area),
		box.area / (width * height),
	];
	for (let label = 1; label <= SLOT_COUNT; label++) numbers.push(areas[label]! / Math.max(1, clothes));
	return Float32Array.from(numbers, within);
}
