import { beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { lightOf } from '../../../src/reading/light/light.ts';
import { trustOf } from '../../../src/reading/light/trust.ts';
import { photoQuality } from '../../../src/reading/photo-quality.ts';
import type { Correction } from '../../../src/wardrobe/words/reading.ts';
import { mainColourError } from '../../support/cloth-error.ts';
import { chartPhotos, clothPhotos, meanOf } from '../../support/known-photos.ts';

type Known = { readonly stated: number; readonly error: number };

const pointedAt = (neutral: { x: number; y: number; lab: readonly number[] }): Correction => ({
	neutrals: [{ x: neutral.x, y: neutral.y, lightness: neutral.lab[0]! }],
});

/**
 * Charts without and with a pointed neutral, cloth by itself and with a pointed neutral: stated and true error of each. Synthesised, so the
 * errors are smaller than those of real photos, for which tests/standards/real-charts.test.ts holds the stated ones to account.
 */
async function knownErrors(): Promise<Known[]> {
	const charts = [false, true].map(async (isPointed) =>
		(await chartPhotos(!isPointed)).map(({ pixels, labels, patches, neutral }) => {
			const picture = { pixels, labels, camera: 'camera' as const, cloth: [] };
			const { light, correct } = lightOf(picture, isPointed ? pointedAt(neutral) : {}, null);
			const stated = trustOf(light, photoQuality(pixels, null)).error;
			return { stated, error: meanOf(patches.map(({ seen, truth }) => deltaE2000(correct(seen), truth))) };
		}),
	);
	const cloths = (await clothPhotos()).flatMap((photo) =>
		[{}, ...(photo.neutral ? [pointedAt(photo.neutral)] : [])].map((correction) => {
			const { pixels, labels, swatches } = photo;
			const { light, correct } = lightOf({ pixels, labels, camera: 'camera', cloth: swatches }, correction, null);
			const stated = trustOf(light, photoQuality(photo.pixels, photo.labels)).error;
			return { stated, error: mainColourError(photo, correct) };
		}),
	);
	return [...(await Promise.all(charts)).flat(), ...cloths];
}

/** Ranks from 0, ties sharing their mean rank. */
function ranksOf(values: readonly number[]): number[] {
	return values.map(
		(value) =>
			values.filter((other) => other < value).length + (values.filter((other) => other === value).length - 1) / 2,
	);
}

/** Spearman's rank correlation: Pearson's of the ranks. */
function rankCorrelation(one: readonly number[], other: readonly number[]): number {
	const [a, b] = [ranksOf(one), ranksOf(other)];
	const [meanA, meanB] = [meanOf(a), meanOf(b)];
	const product = meanOf(a.map((value, i) => (value - meanA) * (b[i]! - meanB)));
	const spread = (values: number[], mean: number) => meanOf(values.map((value) => (value - mean) ** 2));
	return product / Math.sqrt(spread(a, meanA) * spread(b, meanB));
}

let known: Known[];
beforeAll(async () => {
	known = await knownErrors();
});

describe('the error that a reading states', () => {
	it('covers the true one in at least 75 % of synthesised photos', () => {
		expect(meanOf(known.map(({ stated, error }) => (error <= stated ? 1 : 0)))).toBeGreaterThanOrEqual(0.75);
	});

	it('grows with the true one', () => {
		const correlation = rankCorrelation(
			known.map(({ stated }) => stated),
			known.map(({ error }) => error),
		);
		expect(correlation).toBeGreaterThanOrEqual(0.4);
	});

	const good = { clothesShare: 0.4, clippedShare: 0, brightest: 0.9, sharpness: 0.2 };
	const found = { source: 'neutral-found', cast: null, strength: 1, reason: '', error: 8.9 } as const;
	const unknown = { source: 'none', cast: null, strength: 0, reason: '', error: 10 } as const;

	it('is larger for every spoiled photo than for a good one, and says why in words', () => {
		const { error } = trustOf(found, good);
		for (const [spoiled, word] of [
			[{ brightest: 0.35 }, 'underexposed'],
			[{ clippedShare: 0.4 }, 'burnt out'],
			[{ clothesShare: 0.01 }, 'small'],
			[{ sharpness: 0.01 }, 'blurred'],
		] as const) {
			const trust = trustOf(found, { ...good, ...spoiled });
			expect(trust.error).toBeGreaterThan(error);
			expect(trust.reasons.join('; ')).toContain(word);
		}
	});

	it('asks for white paper where nothing tells the lamp, and for nothing where all is well', () => {
		expect(trustOf(unknown, good).advice).toContain('white paper');
		expect(trustOf(found, good).advice).toBeNull();
	});
});
