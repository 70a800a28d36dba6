import { deltaE2000 } from '../../src/colour/delta-e.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import type { ClothPhoto } from './known-photos.ts';

/** Colours this near the largest share can each be the heaviest swatch: a stripe of 50:50 has no main colour. */
const NEARLY_LARGEST = 0.12;

/** CIEDE2000 of the heaviest swatch, corrected by `correct`, from the cloth's main colour. */
export function mainColourError({ swatches, colours }: ClothPhoto, correct: (lab: Lab65) => Lab65): number {
	const largest = Math.max(...colours.map(({ share }) => share));
	const mains = colours.filter(({ share }) => share >= largest - NEARLY_LARGEST);
	const seen = correct(swatches[0]!.lab);
	return Math.min(...mains.map(({ lab }) => deltaE2000(seen, lab)));
}
