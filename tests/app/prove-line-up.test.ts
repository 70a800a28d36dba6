import { describe, expect, it } from 'vitest';
import { generatedWardrobe } from '../../bench/generated-wardrobe.ts';
import { proveLineUp } from '../../src/app/prove-line-up.ts';
import { buildLineUp } from '../../src/wardrobe/line-up/line-up.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { aSeasonInput } from '../support/build-season.ts';

// The user refused half of the pairs: too few go together for the bound to be reached without the solver.
const random = seededRandom('refused');
const garments = generatedWardrobe(40, 'proof');
const pairWords = garments.flatMap(({ id }, index) =>
	garments
		.slice(index + 1)
		.filter(() => random() < 0.5)
		.map((other) => ({ garmentA: id, garmentB: other.id, word: 'refused' as const })),
);
const input = aSeasonInput({ garments, pairWords });
const request = { quotas: input.season.quotas, targetCount: 33, mustKeep: [], neverUse: [] };

describe('proving a line-up', () => {
	it('turns "within" or "best found" into "best possible", with a set that is no worse', async () => {
		const found = buildLineUp(input, request);
		expect(found.proof.kind).not.toBe('best-possible');
		const proven = await proveLineUp(input, request);
		const best = proven.better ?? proven;
		expect(best.proof).toEqual({ kind: 'best-possible' });
		expect(best.objective).toBeGreaterThanOrEqual(found.objective - 1e-9);
		expect(proven.problems).toEqual(found.problems);
	});

	it('proves the set as it stands and offers a better one beside it, without changing it', async () => {
		const { garmentIds } = buildLineUp(input, request);
		const worse = garmentIds.slice(2);
		const proven = await proveLineUp(input, request, { garmentIds: worse });
		expect([...proven.garmentIds].sort()).toEqual([...worse].sort());
		expect(proven.proof.kind).not.toBe('best-possible');
		expect(proven.better!.objective).toBeGreaterThan(proven.objective);
		const again = await proveLineUp(input, request, { garmentIds: proven.better!.garmentIds });
		expect(again.better).toBeNull();
	});

	it('answers for an empty wardrobe', async () => {
		const nothing = await proveLineUp(aSeasonInput(), request);
		expect(nothing.garmentIds).toEqual([]);
		expect(nothing.sentence).toContain('nothing to choose from');
	});

	it('stops when nobody waits for it any more', async () => {
		const stop = new AbortController();
		stop.abort();
		await expect(proveLineUp(input, request, { signal: stop.signal })).rejects.toThrow(/abort/i);
	});
});
