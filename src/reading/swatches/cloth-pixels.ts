import { labFromPixels } from '../../colour/lab-pixels.ts';
import { SLOTS, type Slot } from '../../wardrobe/words/slot.ts';
import { areaByMark, isClothes, type LabelMap, type Pixels, visiblePixels } from '../pixels.ts';

/** Pixels of one slot. */
export type ClothPixels = {
	readonly slot: Slot | null;
	/** L, a, b triples of a sample of the pixels. */
	readonly labs: Float32Array;
	/** Pixels that the sample stands for. */
	readonly area: number;
};

/** Enough for stable clusters (measured: more moves no swatch by 0.3), few enough for an old phone's processor. */
const SAMPLE = 4000;

/** The clothes' pixels that tell their colour. */
export type ClothMarks = {
	/** One byte a pixel: the label of the clothes, 0 elsewhere. */
	readonly marks: Uint8Array;
	/** Pixels of each mark, 1 and up. */
	readonly areas: Uint32Array;
};

/**
 * Pixels inside the clothes, a little inside their edge: a pixel on the edge is half background. Where nothing is left inside (a thin belt),
 * the edge counts after all.
 */
export function insideClothes({ widthPx, heightPx, classes }: LabelMap): ClothMarks {
	const radius = Math.max(1, Math.round(Math.max(widthPx, heightPx) / 250));
	const marks = new Uint8Array(classes.length);
	const areas = new Uint32Array(256);
	const whole = new Uint32Array(256);
	const [up, down] = [radius * widthPx, classes.length - radius * widthPx];
	for (let row = 0; row < classes.length; row += widthPx) {
		const end = row + widthPx;
		// Run by run: within one, only pixels near its ends can have another label beside them.
		for (let at = row; at < end; ) {
			const label = classes[at]!;
			const start = at;
			while (at < end && classes[at] === label) at++;
			if (!isClothes(label)) continue;
			whole[label]! += at - start;
			for (let i = start; i < at; i++) {
				if (i < start + radius && i >= row + radius && classes[i - radius] !== label) continue;
				if (i >= at - radius && i < end - radius && classes[i + radius] !== label) continue;
				if (i >= up && classes[i - up] !== label) continue;
				if (i < down && classes[i + up] !== label) continue;
				marks[i] = label;
				areas[label]!++;
			}
		}
	}
	for (let label = 0; label < whole.length; label++) {
		if (whole[label] === 0 || areas[label]! > 0) continue;
		for (let i = 0; i < classes.length; i++) if (classes[i] === label) marks[i] = label;
		areas[label] = whole[label]!;
	}
	return { marks, areas };
}

/** Every so-many-th of the `area` pixels whose mark is the wanted one. */
function sampled({ rgb }: Pixels, marks: Uint8Array, wanted: number, area: number): Float32Array {
	const count = Math.min(area, SAMPLE);
	const step = Math.max(1, area / SAMPLE);
	const bytes = new Uint8Array(count * 3);
	for (let at = 0, seen = 0, next = 0, taken = 0; taken < count; ) {
		while (marks[at] !== wanted) at++;
		const start = at;
		while (at < marks.length && marks[at] === wanted) at++;
		for (; taken < count && next < seen + at - start; next = Math.floor(taken * step)) {
			const from = (start + next - seen) * 3;
			const to = taken++ * 3;
			bytes[to] = rgb[from]!;
			bytes[to + 1] = rgb[from + 1]!;
			bytes[to + 2] = rgb[from + 2]!;
		}
		seen += at - start;
	}
	return labFromPixels(bytes, 3);
}

/** The pixels whose mark is the wanted one, by a sample that is the same for the same picture. `marks` has one byte a pixel. */
export function sampleOf(pixels: Pixels, marks: Uint8Array, wanted: number, slot: Slot | null): ClothPixels {
	const area = areaByMark(marks)[wanted]!;
	return { slot, labs: sampled(pixels, marks, wanted, area), area };
}

/** The clothes' pixels slot by slot. */
export const clothPixels = (pixels: Pixels, { marks, areas }: ClothMarks): ClothPixels[] =>
	SLOTS.flatMap((slot, index) => {
		const area = areas[index + 1]!;
		return area > 0 ? [{ slot, labs: sampled(pixels, marks, index + 1, area), area }] : [];
	});

/** The pixels of the whole frame, for a scene; transparent ones are left out. */
export function framePixels(pixels: Pixels): ClothPixels {
	return sampleOf(pixels, visiblePixels(pixels), 1, null);
}
