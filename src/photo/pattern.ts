import { PATTERN_TYPES, type Pattern } from '../wardrobe/reading.ts';
import { clothTiles, fineTile } from './cloth-tiles.ts';
import { patternFeatures, sharedDirection, type TileLooks } from './pattern-features.ts';
import { PATTERN_WEIGHTS } from './pattern-weights.ts';
import type { Pixels } from './pixels.ts';
import type { RawSwatch } from './swatches.ts';
import { tileLines } from './tile-lines.ts';
import { type TileTexture, tileTexture } from './tile-texture.ts';

/** Share of one colour from which a cloth too small for a tile counts as plain. */
const PLAIN_FROM = 0.85;
/** A small piece says little: no more sure than this. */
const SMALL_SURE = 0.6;
/** A tile repeats itself from this likeness on. */
const REPEATS_FROM = 0.35;
/** Directions of fewer agreeing edges than this are not told. */
const DIRECTION_FROM = 0.4;

function ofSmallPiece(swatches: readonly RawSwatch[]): Pattern {
	const total = swatches.reduce((sum, { share }) => sum + share, 0) || 1;
	const largest = (swatches[0]?.share ?? total) / total;
	return { type: largest >= PLAIN_FROM ? 'plain' : 'printed', sure: SMALL_SURE };
}

const looksOf = (tiles: readonly Float32Array[], side: number): TileLooks => ({
	textures: tiles.map((tile) => tileTexture(tile, side)),
	lines: tiles.map((tile) => tileLines(tile, side)),
});

/** Probability of each pattern type, in the order of `PATTERN_TYPES`: a multinomial logistic model. */
function probabilities(features: readonly number[]): number[] {
	const scores = PATTERN_WEIGHTS.map(([bias, ...weights]) =>
		weights.reduce((sum, weight, index) => sum + weight * features[index]!, bias!),
	);
	const highest = Math.max(...scores);
	const powers = scores.map((score) => Math.exp(score - highest));
	const sum = powers.reduce((a, b) => a + b, 0);
	return powers.map((power) => power / sum);
}

/** Direction and repeat of stripes or checks, as far as the tiles agree. `scale`: pixels of the upright picture per tile pixel. */
function geometry(coarse: readonly TileTexture[], scale: number): Pick<Pattern, 'directionDegrees' | 'periodPx'> {
	const { degrees, agreement } = sharedDirection(coarse);
	const periods = coarse
		.filter(({ repeatAcross, period }) => period > 0 && repeatAcross >= REPEATS_FROM)
		.map(({ period }) => period)
		.sort((a, b) => a - b);
	const isRepeated = periods.length >= Math.max(1, coarse.length / 4);
	return {
		...(agreement >= DIRECTION_FROM ? { directionDegrees: Math.round(degrees) % 180 } : {}),
		...(isRepeated ? { periodPx: periods[Math.floor(periods.length / 2)]! * scale } : {}),
	};
}

/**
 * The pattern of one piece of clothing: the pixels whose mark is `wanted` (inside its edge). `swatches` are the same piece's, heaviest first;
 * `pictureScale` is the number of pixels of the upright picture per pixel of `pixels`. A piece too small to judge says so by a low `sure`.
 */
export function patternOf(
	pixels: Pixels,
	marks: Uint8Array,
	wanted: number,
	swatches: readonly RawSwatch[],
	pictureScale: number,
): Pattern {
	const { tiles, side, scale } = clothTiles(pixels, marks, wanted);
	if (tiles.length === 0) return ofSmallPiece(swatches);
	const coarse = looksOf(tiles, side);
	const fine = looksOf(
		tiles.map((tile) => fineTile(tile, side)),
		side,
	);
	const sure = probabilities(patternFeatures(coarse, fine, swatches));
	const best = sure.indexOf(Math.max(...sure));
	const type = PATTERN_TYPES[best]!;
	const hasLines = type === 'striped' || type === 'checked';
	return { type, sure: sure[best]!, ...(hasLines ? geometry(coarse.textures, scale * pictureScale) : {}) };
}
