import type { Lab65 } from '../colour/lab65.ts';
import { medianOf } from '../colour/median.ts';
import { sampleOf } from './cloth-pixels.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses } from './pixels.ts';

/** Less than this share of the frame says nothing of the place. */
const LEAST_SHARE = 0.05;

/** Median of each CIELAB coordinate over the background that is not transparent, or null where too little of it is seen. */
export function backgroundColour(pixels: Pixels, labels: LabelMap): Lab65 | null {
	const { labs, area } = sampleOf(pixels, seenClasses(pixels, labels), BACKGROUND, null);
	if (area < LEAST_SHARE * labels.classes.length) return null;
	const median = (axis: number) => {
		const values = new Float32Array(labs.length / 3);
		for (let i = 0; i < values.length; i++) values[i] = labs[i * 3 + axis]!;
		return medianOf(values);
	};
	return [median(0), median(1), median(2)];
}
