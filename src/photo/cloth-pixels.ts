import { labFromPixels } from '../colour/lab-pixels.ts';
import { SLOTS, type Slot } from '../wardrobe/slot.ts';
import { isClothes, type LabelMap, type Pixels } from './pixels.ts';

/** Pixels of one slot. */
export type ClothPixels = {
	readonly slot: Slot | null;
	/** L, a, b triples of a sample of the pixels. */
	readonly labs: Float32Array;
	/** Pixel index of each triple. */
	readonly indices: Uint32Array;
	/** Pixels that the sample stands for. */
	readonly area: number;
};

/** Enough for stable clusters (measured: more moves no swatch by 0.3), few enough for an old phone's processor. */
const SAMPLE = 4000;

/**
 * Pixels inside the clothes, a little inside their edge: a pixel on the edge is half background. Where nothing is left inside (a thin belt),
 * the edge counts after all.
 */
export function insideClothes({ widthPx, heightPx, classes }: LabelMap): Uint8Array {
	const radius = Math.max(1, Math.round(Math.max(widthPx, heightPx) / 250));
	const inside = new Uint8Array(classes.length);
	for (let y = 0; y < heightPx; y++) {
		for (let x = 0; x < widthPx; x++) {
			const at = y * widthPx + x;
			const label = classes[at]!;
			if (!isClothes(label)) continue;
			const same = (dx: number, dy: number) => {
				const [nx, ny] = [x + dx, y + dy];
				return nx < 0 || ny < 0 || nx >= widthPx || ny >= heightPx || classes[ny * widthPx + nx] === label;
			};
			if (same(radius, 0) && same(-radius, 0) && same(0, radius) && same(0, -radius)) inside[at] = label;
		}
	}
	const remaining = new Set(inside);
	for (let i = 0; i < classes.length; i++) {
		const label = classes[i]!;
		if (isClothes(label) && !remaining.has(label)) inside[i] = label;
	}
	return inside;
}

/** Every so-many-th of the chosen pixels, so that the same picture always gives the same sample. */
export function sampleOf(
	pixels: Pixels,
	chosen: (index: number) => boolean,
	slot: Slot | null,
	most = SAMPLE,
): ClothPixels {
	const all: number[] = [];
	const total = pixels.widthPx * pixels.heightPx;
	for (let i = 0; i < total; i++) if (chosen(i)) all.push(i);
	const step = Math.max(1, all.length / most);
	const indices = Uint32Array.from({ length: Math.min(all.length, most) }, (_, n) => all[Math.floor(n * step)]!);
	const rgb = new Uint8Array(indices.length * 3);
	for (const [n, index] of indices.entries()) rgb.set(pixels.rgb.subarray(index * 3, index * 3 + 3), n * 3);
	return { slot, labs: labFromPixels(rgb, 3), indices, area: all.length };
}

/** The clothes' pixels slot by slot. */
export function clothPixels(pixels: Pixels, labels: LabelMap): ClothPixels[] {
	const inside = insideClothes(labels);
	return SLOTS.map((slot, index) => sampleOf(pixels, (i) => inside[i] === index + 1, slot)).filter(
		({ area }) => area > 0,
	);
}
