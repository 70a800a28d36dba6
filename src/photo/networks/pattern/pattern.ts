import { areaByMark, type Pixels } from '../../../reading/pixels.ts';
import { clothPicture } from '../../../reading/swatches/cloth-picture.ts';
import { clothRepeat } from '../../../reading/swatches/cloth-repeat.ts';
import { areFolds } from '../../../reading/swatches/folds.ts';
import { patternByShare } from '../../../reading/swatches/pattern-by-share.ts';
import { PATTERN_TYPES, type Pattern, type Swatch } from '../../../wardrobe/words/reading.ts';
import { softmax } from '../softmax.ts';
import { patternScores } from './pattern-network.ts';

/** The cloth's longer side, pixels, as the network was trained. */
export const CLOTH_SIDE = 256;
/** Cloth of fewer pixels than this is too small to see a pattern on. */
const LEAST_PIXELS = 1500;
/** What the network took for stripes and the colours say are folds: no surer than what colours alone tell. */
const SURE_OF_FOLDS = 0.6;

/**
 * The pattern of one piece of clothing: the pixels whose mark is `wanted` (inside its edge). `swatches` are the same piece's, heaviest first;
 * `pictureScale` is the number of pixels of the upright picture per pixel of `pixels`. A piece too small to judge says so by a low `sure`.
 */
export async function patternOf(
	pixels: Pixels,
	marks: Uint8Array,
	wanted: number,
	swatches: readonly Pick<Swatch, 'lab' | 'share'>[],
	pictureScale: number,
): Promise<Pattern> {
	const cloth = clothPicture(pixels, marks, wanted, CLOTH_SIDE);
	if (!cloth || areaByMark(cloth.inside)[1]! < LEAST_PIXELS) return patternByShare(swatches);
	const sure = softmax(await patternScores(cloth));
	const best = sure.indexOf(Math.max(...sure));
	const type = PATTERN_TYPES[best]!;
	if (type === 'striped' && areFolds(swatches)) return { type: 'plain', sure: SURE_OF_FOLDS };
	if (type !== 'striped' && type !== 'checked') return { type, sure: sure[best]! };
	const { directionDegrees, period } = clothRepeat(cloth);
	return {
		type,
		sure: sure[best]!,
		...(directionDegrees === undefined ? {} : { directionDegrees }),
		...(period === undefined ? {} : { periodPx: period * cloth.scale * pictureScale }),
	};
}
