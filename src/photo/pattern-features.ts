import { deltaE2000 } from '../colour/delta-e.ts';
import type { RawSwatch } from './swatches.ts';
import type { TileLines } from './tile-lines.ts';
import type { TileTexture } from './tile-texture.ts';

/** The value below which `share` of the values lie; 0 for none. */
function quantile(values: readonly number[], share: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.min(sorted.length - 1, Math.floor(share * sorted.length))] ?? 0;
}

/** Contrasts count by their ratio; the offset is the noise of a good photo. */
const ratio = (contrast: number): number => Math.log(contrast + 0.3);

/** The direction that the tiles' edges share, weighted by how strong and how straight they are; `agreement` 0..1. */
export function sharedDirection(tiles: readonly TileTexture[]): {
	readonly degrees: number;
	readonly agreement: number;
} {
	let [c, s, weight] = [0, 0, 0];
	for (const { contrast, oneWay, directionDegrees } of tiles) {
		const strength = contrast ** 2 * oneWay;
		const doubled = (directionDegrees * Math.PI) / 90;
		c += strength * Math.cos(doubled);
		s += strength * Math.sin(doubled);
		weight += strength;
	}
	return { degrees: ((Math.atan2(s, c) * 90) / Math.PI + 180) % 180, agreement: Math.hypot(c, s) / (weight + 1e-9) };
}

/** One scale of tiles: their textures and the lines in them. */
export type TileLooks = { readonly textures: readonly TileTexture[]; readonly lines: readonly TileLines[] };

const lineFeatures = (lines: readonly TileLines[]): number[] => {
	const of = (key: keyof TileLines, share: number) =>
		quantile(
			lines.map((tile) => tile[key]),
			share,
		);
	return [of('oneWay', 0.5), of('twoWays', 0.5), of('twoWays', 0.8), of('weaker', 0.5), of('weaker', 0.8)];
};

/** What the pattern is told by: textures of the tiles as they are and without folds, and how the colours share the cloth. */
export function patternFeatures(
	{ textures: coarse, lines: coarseLines }: TileLooks,
	{ textures: fine, lines: fineLines }: TileLooks,
	swatches: readonly RawSwatch[],
): number[] {
	const of = (tiles: readonly TileTexture[], key: keyof TileTexture, share = 0.5): number =>
		quantile(
			tiles.map((tile) => tile[key]),
			share,
		);
	const main = swatches[0];
	const apart = (swatch: RawSwatch) => (main ? Math.min(40, deltaE2000(swatch.lab, main.lab)) : 0);
	const whole = swatches.reduce((sum, { share }) => sum + share, 0) || 1;
	return [
		ratio(of(fine, 'contrast')),
		ratio(of(fine, 'colourContrast')),
		ratio(of(fine, 'contrast', 0.85)),
		of(fine, 'oneWay'),
		of(fine, 'oneWay', 0.8),
		of(fine, 'twoWays'),
		of(fine, 'twoWays', 0.8),
		of(fine, 'repeatAcross'),
		of(fine, 'repeatAcross', 0.8),
		of(fine, 'repeatAlong'),
		of(fine, 'edginess'),
		of(fine, 'fineness'),
		sharedDirection(fine).agreement,
		of(fine, 'oneWay') * of(fine, 'repeatAcross'),
		of(fine, 'twoWays') * of(fine, 'repeatAlong'),
		ratio(of(coarse, 'contrast', 0.2)),
		ratio(of(coarse, 'contrast')),
		ratio(of(coarse, 'contrast', 0.85)),
		ratio(of(coarse, 'colourContrast')),
		ratio(of(coarse, 'colourContrast', 0.85)),
		of(coarse, 'fineness'),
		of(coarse, 'oneWay'),
		of(coarse, 'oneWay', 0.8),
		of(coarse, 'twoWays'),
		of(coarse, 'twoWays', 0.8),
		of(coarse, 'repeatAcross'),
		of(coarse, 'repeatAlong'),
		of(coarse, 'edginess'),
		sharedDirection(coarse).agreement,
		(main?.share ?? whole) / whole,
		(swatches[1]?.share ?? 0) / whole,
		swatches.slice(1).reduce((sum, swatch) => sum + (swatch.share / whole) * apart(swatch), 0) / 10,
		(main?.lab[0] ?? 50) / 50,
		ratio(of(coarse, 'contrast') * of(coarse, 'fineness')),
		of(coarse, 'oneWay') * of(coarse, 'repeatAcross'),
		of(coarse, 'twoWays') * of(coarse, 'repeatAlong'),
		...lineFeatures(coarseLines),
		...lineFeatures(fineLines),
	];
}
