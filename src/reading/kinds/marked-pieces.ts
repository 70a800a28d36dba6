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

/**
 * The pixels of the region (4 neighbours) around a pixel, as the first ones of `found`; returns how many. They are taken out of `left`.
 */
function takeRegion(left: Uint8Array, widthPx: number, start: number, found: Uint32Array): number {
	let count = 0;
	const take = (at: number) => {
		if (left[at] !== 1) return;
		left[at] = 0;
		found[count++] = at;
	};
	take(start);
	for (let next = 0; next < count; next++) {
		const at = found[next]!;
		const column = at % widthPx;
		take(at - widthPx);
		take(at + widthPx);
		if (column > 0) take(at - 1);
		if (column < widthPx - 1) take(at + 1);
	}
	return count;
}

/** The regions (4 neighbours) of the marked pixels of at least so many pixels, the largest first. One byte a pixel, 1 = marked; the marks are used up. */
export function regionsOf(marks: Uint8Array, widthPx: number, least: number): { marks: Uint8Array; area: number }[] {
	const regions: { marks: Uint8Array; area: number }[] = [];
	const found = new Uint32Array(marks.length);
	for (let start = 0; start < marks.length; start++) {
		if (marks[start] !== 1) continue;
		const area = takeRegion(marks, widthPx, start, found);
		if (area < least) continue;
		const own = new Uint8Array(marks.length);
		for (const at of found.subarray(0, area)) own[at] = 1;
		regions.push({ marks: own, area });
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
