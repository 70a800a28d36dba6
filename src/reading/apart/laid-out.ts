import type { PictureBox, SplitProposal } from '../../wardrobe/words/reading.ts';
import { regionsOf } from '../kinds/marked-pieces.ts';
import { type PieceBox, pieceBox } from '../kinds/piece-box.ts';
import { areaByMark, isClothes, type LabelMap } from '../pixels.ts';

/** One garment of several in a photo without a person. */
export type LaidOut = {
	/** One byte a pixel of the picture, 1 = the garment. */
	readonly marks: Uint8Array;
	readonly box: PieceBox;
};

/** Share of the frame from which something is a garment of its own. */
const LEAST_OF_FRAME = 0.015;
/** Share of the largest region from which another is no part of it that the outline broke off. */
const LEAST_OF_LARGEST = 0.12;
/** More are a heap or a rail, where nobody would split a photo. */
const MOST_GARMENTS = 8;

/** How many regions of cloth, with ground between them, may each be a garment. */
export function clothRegions({ classes, widthPx }: LabelMap): number {
	const cloth = classes.map((label) => (isClothes(label) ? 1 : 0));
	const regions = regionsOf(cloth, widthPx, LEAST_OF_FRAME * classes.length);
	return regions.filter(({ area }) => area >= LEAST_OF_LARGEST * regions[0]!.area).length;
}

/** The garments of a photo, the largest first, by the number of each in every pixel (0 none); none where they are too many. */
export function laidOutGarments(garments: Uint8Array, widthPx: number): LaidOut[] {
	const areas = areaByMark(garments);
	const told = Array.from(areas.keys()).filter((one) => one > 0 && areas[one]! >= LEAST_OF_FRAME * garments.length);
	if (told.length > MOST_GARMENTS) return [];
	return told
		.sort((one, other) => areas[other]! - areas[one]!)
		.map((one) => {
			const marks = garments.map((mark) => (mark === one ? 1 : 0));
			return { marks, box: pieceBox(marks, widthPx, 1, 1)! };
		});
}

const around = (boxes: readonly PictureBox[]): PictureBox => ({
	left: Math.min(...boxes.map(({ left }) => left)),
	top: Math.min(...boxes.map(({ top }) => top)),
	right: Math.max(...boxes.map(({ right }) => right)),
	bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
});

const overlap = (one: PictureBox, other: PictureBox): number =>
	Math.max(0, Math.min(one.right, other.right) - Math.max(one.left, other.left)) *
	Math.max(0, Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top));

/** Part of the picture that a proposed box leaves around what lies in it. */
const MARGIN = 0.02;

const withMargin = ({ left, top, right, bottom }: PictureBox): PictureBox => ({
	left: Math.max(0, left - MARGIN),
	top: Math.max(0, top - MARGIN),
	right: Math.min(1, right + MARGIN),
	bottom: Math.min(1, bottom + MARGIN),
});

/** How a photo of garments in these boxes, two or more, is best cut in two: into the halves, by columns or by rows, that overlap least. */
export function splitProposal(boxes: readonly PictureBox[]): SplitProposal {
	const middles: readonly ((box: PictureBox) => number)[] = [
		({ left, right }) => left + right,
		({ top, bottom }) => top + bottom,
	];
	const cuts = middles.flatMap((middle) => {
		const inOrder = [...boxes].sort((one, other) => middle(one) - middle(other));
		return inOrder.slice(1).map((_, at) => {
			const parts = [around(inOrder.slice(0, at + 1)), around(inOrder.slice(at + 1))] as const;
			return { parts, shared: overlap(...parts) };
		});
	});
	const best = cuts.reduce((least, cut) => (cut.shared < least.shared ? cut : least));
	return { pieces: boxes.length, boxes: [withMargin(best.parts[0]), withMargin(best.parts[1])] };
}
