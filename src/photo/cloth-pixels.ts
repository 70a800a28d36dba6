import { labFromPixels } from '../colour/lab-pixels.ts';
import { SLOTS, type Slot } from '../wardrobe/slot.ts';
import { areaByMark, isClothes, type LabelMap, type Pixels, visiblePixels } from './pixels.ts';

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

/**
 * Pixels inside the clothes, a little inside their edge: a pixel on the edge is half background. Where nothing is left inside (a thin belt),
 * the edge counts after all.
 */
export function insideClothes({ widthPx, heightPx, classes }: LabelMap): Uint8Array {
	const radius = Math.max(1, Math.round(Math.max(widthPx, heightPx) / 250));
	const inside = new Uint8Array(classes.length);
	const [up, down] = [radius * widthPx, classes.length - radius * widthPx];
	for (let row = 0; row < classes.length; row += widthPx) {
		const last = row + widthPx - 1;
		for (let at = row; at <= last; at++) {
			const label = classes[at]!;
			if (!isClothes(label)) continue;
			if (at >= row + radius && classes[at - radius] !== label) continue;
			if (at <= last - radius && classes[at + radius] !== label) continue;
			if (at >= up && classes[at - up] !== label) continue;
			if (at < down && classes[at + up] !== label) continue;
			inside[at] = label;
		}
	}
	const [areas, remaining] = [areaByMark(classes), areaByMark(inside)];
	const isLost = areas.map((area, label) => (isClothes(label) && area > 0 && remaining[label] === 0 ? 1 : 0));
	if (isLost.includes(1))
		for (let i = 0; i < classes.length; i++) if (isLost[classes[i]!] === 1) inside[i] = classes[i]!;
	return inside;
}

/** Every so-many-th of the `area` pixels whose mark is the wanted one. */
function sampled({ rgb }: Pixels, marks: Uint8Array, wanted: number, area: number): Float32Array {
	const count = Math.min(area, SAMPLE);
	const step = Math.max(1, area / SAMPLE);
	const bytes = new Uint8Array(count * 3);
	for (let i = 0, seen = 0, next = 0, taken = 0; taken < count; i++) {
		if (marks[i] !== wanted || seen++ < next) continue;
		bytes[taken * 3] = rgb[i * 3]!;
		bytes[taken * 3 + 1] = rgb[i * 3 + 1]!;
		bytes[taken * 3 + 2] = rgb[i * 3 + 2]!;
		next = Math.floor(++taken * step);
	}
	return labFromPixels(bytes, 3);
}

/** The pixels whose mark is the wanted one, by a sample that is the same for the same picture. `marks` has one byte a pixel. */
export function sampleOf(pixels: Pixels, marks: Uint8Array, wanted: number, slot: Slot | null): ClothPixels {
	const area = areaByMark(marks)[wanted]!;
	return { slot, labs: sampled(pixels, marks, wanted, area), area };
}

/** The clothes' pixels slot by slot; `inside` is what `insideClothes` marks. */
export function clothPixels(pixels: Pixels, inside: Uint8Array): ClothPixels[] {
	const areas = areaByMark(inside);
	return SLOTS.flatMap((slot, index) => {
		const area = areas[index + 1]!;
		return area > 0 ? [{ slot, labs: sampled(pixels, inside, index + 1, area), area }] : [];
	});
}

/** The pixels of the whole frame, for a scene; transparent ones are left out. */
export function framePixels(pixels: Pixels): ClothPixels {
	return sampleOf(pixels, visiblePixels(pixels), 1, null);
}
