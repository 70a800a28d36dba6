import type { PictureBox, SplitProposal } from '../../wardrobe/words/reading.ts';
import { isClothes, type LabelMap } from '../pixels.ts';
import { regionsOf } from './marked-pieces.ts';
import { type PieceBox, pieceBox } from './piece-box.ts';

/** One garment that lies apart from others. */
export type LaidOut = {
	/** One byte a pixel of the picture, 1 = the garment. */
	readonly marks: Uint8Array;
	readonly box: PieceBox;
};

/** Share of the frame from which a region may be a garment of its own. */
const LEAST_OF_FRAME = 0.015;
/** Share of the largest region from which another is no part of it that the outline broke off. */
const LEAST_OF_LARGEST = 0.12;
/** More are a heap or a rail, where nobody would split a photo. */
const MOST_GARMENTS = 8;

/** The regions of cloth in a photo without a person that may each be a garment, the largest first; none where they are too many. */
export function laidOutGarments({ classes, widthPx }: LabelMap): LaidOut[] {
	const cloth = classes.map((label) => (isClothes(label) ? 1 : 0));
	const regions = regionsOf(cloth, widthPx, LEAST_OF_FRAME * classes.length);
	const large = regions.filter(({ area }) => area >= LEAST_OF_LARGEST * regions[0]!.area);
	if (large.length > MOST_GARMENTS) return [];
	return large.map(({ marks }) => ({ marks, box: pieceBox(marks, widthPx, 1, 1)! }));
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
