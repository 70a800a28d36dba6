import { SLOTS, type Slot } from '../../wardrobe/words/slot.ts';
import { areaByMark, type LabelMap } from '../pixels.ts';

/** One worn piece, marked. */
export type MarkedPiece = {
	/** The slot that the outline takes it for. */
	readonly slot: Slot;
	/** Whether somebody told the slot, so that no other is weighed. */
	readonly slotTold?: boolean;
	/** One byte a pixel of the picture, 1 = the piece. */
	readonly marks: Uint8Array;
	/** Pixels marked. */
	readonly area: number;
};

/** Share of the frame from which a piece counts. */
export const LEAST_PIECE = 0.01;
const ACCESSORY = SLOTS.indexOf('accessory') + 1;

/** Marks of the region (4 neighbours) of one label around a pixel; its pixels are taken out of `left`. */
function region(left: Uint8Array, widthPx: number, start: number): { marks: Uint8Array; area: number } {
	const marks = new Uint8Array(left.length);
	const open = [start];
	let area = 0;
	left[start] = 0;
	while (open.length > 0) {
		const at = open.pop()!;
		marks[at] = 1;
		area++;
		const column = at % widthPx;
		const neighbours = [at - widthPx, at + widthPx, column > 0 ? at - 1 : -1, column < widthPx - 1 ? at + 1 : -1];
		for (const next of neighbours) {
			if (next < 0 || next >= left.length || left[next] === 0) continue;
			left[next] = 0;
			open.push(next);
		}
	}
	return { marks, area };
}

/** The regions (4 neighbours) of the marked pixels of at least so many pixels, the largest first. One byte a pixel, 1 = marked; the marks are used up. */
export function regionsOf(marks: Uint8Array, widthPx: number, least: number): { marks: Uint8Array; area: number }[] {
	const regions: { marks: Uint8Array; area: number }[] = [];
	for (let at = 0; at < marks.length; at++) {
		if (marks[at] === 0) continue;
		const one = region(marks, widthPx, at);
		if (one.area >= least) regions.push(one);
	}
	return regions.sort((one, other) => other.area - one.area);
}

/**
 * Pieces that the labels of a photo hold: one a slot, of accessories each region on its own (a bag and a scarf are two), each of `LEAST_PIECE` of the
 * frame or more, in the order of the slots, the largest region first.
 */
export function markedPieces({ classes, widthPx }: LabelMap): MarkedPiece[] {
	const areas = areaByMark(classes);
	const least = LEAST_PIECE * classes.length;
	const pieces: MarkedPiece[] = [];
	for (const [index, slot] of SLOTS.entries()) {
		const label = index + 1;
		if (areas[label]! < least) continue;
		const marks = classes.map((one) => (one === label ? 1 : 0));
		if (label !== ACCESSORY) {
			pieces.push({ slot, marks, area: areas[label]! });
			continue;
		}
		pieces.push(...regionsOf(marks, widthPx, least).map((one) => ({ slot, ...one })));
	}
	return pieces;
}
