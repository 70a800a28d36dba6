import type { Lab65 } from '../colour/lab65.ts';
import { medianOf } from '../colour/median.ts';
import { sampleOf } from './cloth-pixels.ts';
import { BACKGROUND, type LabelMap, type Pixels, visiblePixels } from './pixels.ts';

/** Less than this share of the frame says nothing of the place. */
const LEAST_SHARE = 0.05;

/** Median of each CIELAB coordinate over the background that is not transparent, or null where too little of it is seen. */
export function backgroundColour(pixels: Pixels, labels: LabelMap): Lab65 | null {
	const visible = visiblePixels(pixels);
	const marks = labels.classes.map((label, i) => (label === BACKGROUND ? visible[i]! : 0));
	const { labs, area } = sampleOf(pixels, marks, 1, null);
	if (area < LEAST_SHARE * labels.classes.length) return null;
	const median = (axis: number) => medianOf(Array.from({ length: labs.length / 3 }, (_, i) => labs[i * 3 + axis]!));
	return [median(0), median(1), median(2)];
}
