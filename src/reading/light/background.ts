import type { Lab65 } from '../../colour/lab65.ts';
import { medianLab } from '../../colour/median-lab.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses } from '../pixels.ts';
import { sampleOf } from '../swatches/cloth-pixels.ts';

/** Less than this share of the frame says nothing of the place. */
const LEAST_SHARE = 0.05;

/** Median of each CIELAB coordinate over the background that is not transparent, or null where too little of it is seen. */
export function backgroundColour(pixels: Pixels, labels: LabelMap): Lab65 | null {
	const { labs, area } = sampleOf(pixels, seenClasses(pixels, labels), BACKGROUND, null);
	if (area < LEAST_SHARE * labels.classes.length) return null;
	return medianLab(labs);
}
