import { isClothes } from '../../../src/reading/pixels.ts';

/** The outline of the clothes while it is being corrected: one byte a pixel, 255 = clothes, and what it was before each step. */
export type MaskEdit = {
	readonly width: number;
	readonly height: number;
	readonly mask: Uint8Array;
	/** Earlier outlines, newest last. */
	readonly before: readonly Uint8Array[];
};

/** Steps that can be taken back: 40 outlines of half a megapixel are 10 MB at most. */
const STEPS_KEPT = 40;

/** The mask that a map of labels stands for. */
export const maskFromLabels = (labels: Uint8Array): Uint8Array => labels.map((label) => (isClothes(label) ? 255 : 0));

const step = (edit: MaskEdit, mask: Uint8Array): MaskEdit => ({
	...edit,
	mask,
	before: [...edit.before, edit.mask].slice(-STEPS_KEPT),
});

/** Takes a region into the clothes, or drops it. `region`: 255 = belongs to it. */
export function withRegion(edit: MaskEdit, region: Uint8Array, take: boolean): MaskEdit {
	const value = take ? 255 : 0;
	return step(
		edit,
		edit.mask.map((old, index) => (region[index] ? value : old)),
	);
}

/** Paints a disc of `radius` pixels around a point on the mask itself, in place: a stroke is many discs and one step. */
export function paintDisc(
	mask: Uint8Array,
	size: { width: number; height: number },
	x: number,
	y: number,
	radius: number,
	take: boolean,
): void {
	const value = take ? 255 : 0;
	for (let row = Math.max(0, Math.ceil(y - radius)); row <= Math.min(size.height - 1, Math.floor(y + radius)); row++) {
		const half = Math.sqrt(Math.max(0, radius * radius - (row - y) * (row - y)));
		const from = Math.max(0, Math.ceil(x - half));
		const to = Math.min(size.width - 1, Math.floor(x + half));
		mask.fill(value, row * size.width + from, row * size.width + to + 1);
	}
}

/** A stroke from one point to another: discs close enough to leave no gap. */
export function paintStroke(
	mask: Uint8Array,
	size: { width: number; height: number },
	from: { x: number; y: number },
	to: { x: number; y: number },
	radius: number,
	take: boolean,
): void {
	const steps = Math.max(1, Math.ceil(Math.hypot(to.x - from.x, to.y - from.y) / Math.max(1, radius / 2)));
	for (let at = 0; at <= steps; at++) {
		const share = at / steps;
		paintDisc(mask, size, from.x + share * (to.x - from.x), from.y + share * (to.y - from.y), radius, take);
	}
}

/** The outline after a finished stroke. */
export const withStroke = (edit: MaskEdit, mask: Uint8Array): MaskEdit => step(edit, mask);

/** One step back; the same when there is none. */
export function undone(edit: MaskEdit): MaskEdit {
	const last = edit.before.at(-1);
	return last ? { ...edit, mask: last, before: edit.before.slice(0, -1) } : edit;
}

/** Share of the picture taken as clothes, 0..1. */
export const clothesShare = ({ mask }: MaskEdit): number =>
	mask.reduce((sum, value) => sum + (value ? 1 : 0), 0) / mask.length;
