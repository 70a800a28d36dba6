import type { PhotoQuality } from '../wardrobe/words/reading.ts';
import { isClothes, type LabelMap, type Pixels } from './pixels.ts';

/** Bytes from here up are as good as clipped (JPEG rounds). */
const BURNT = 253;

/** Every so-many-th row is looked at: shares and levels stay the same within a thousandth. */
const ROW_STEP = 2;

/** Measures the clothes' pixels (all pixels where `labels` is null, for a scene). */
export function photoQuality({ widthPx, heightPx, rgb }: Pixels, labels: LabelMap | null): PhotoQuality {
	const brightness = new Uint32Array(256);
	const steps = new Uint32Array(256);
	let [count, clothes, clipped] = [0, 0, 0];
	for (let row = 0; row < heightPx; row += ROW_STEP) {
		let before = rgb[row * widthPx * 3 + 1]!;
		for (let at = row * widthPx, end = at + widthPx; at < end; at++) {
			const r = rgb[at * 3]!;
			const g = rgb[at * 3 + 1]!;
			const b = rgb[at * 3 + 2]!;
			// In ten-thousandths, rounded: whole numbers take half the time.
			brightness[((2126 * r + 7152 * g + 722 * b + 5000) / 10000) | 0]!++;
			steps[Math.abs(g - before)]!++;
			before = g;
			if (labels !== null && !isClothes(labels.classes[at]!)) continue;
			clothes++;
			if (r >= BURNT || g >= BURNT || b >= BURNT) clipped++;
		}
		count += widthPx;
	}
	return {
		clothesShare: clothes / count,
		clippedShare: clothes === 0 ? 0 : clipped / clothes,
		brightest: levelOf(brightness, count / 100) / 255,
		sharpness: levelOf(steps, count / 200) / 255,
	};
}

/** The highest level that `wanted` counts reach, counted from above. */
function levelOf(counts: Uint32Array, wanted: number): number {
	let level = 255;
	let above = counts[level]!;
	while (level > 0 && above < wanted) above += counts[--level]!;
	return level;
}
