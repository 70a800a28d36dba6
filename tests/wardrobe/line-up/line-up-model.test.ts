import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedLineUp } from '../../../bench/generated-line-up.ts';
import solve from '../../../src/app/prove-worker.ts';
import type { LineUpProblem } from '../../../src/wardrobe/line-up/line-up-choices.ts';
import { columnOf, lineUpModel } from '../../../src/wardrobe/line-up/line-up-model.ts';
import { lineUpProblemOf } from '../../../src/wardrobe/line-up/line-up-problem.ts';
import { bestSet } from '../../../src/wardrobe/line-up/line-up-search.ts';
import { scoreOf } from '../../../src/wardrobe/line-up/line-up-worth.ts';
import type { Quotas } from '../../../src/wardrobe/words/season.ts';
import { bestByTryingAll } from '../../support/best-by-trying-all.ts';

const SMALL: Quotas = { top: 2, outer: 1, bottom: 2, full: 1, legwear: 1, shoes: 1, accessory: 1 };

const membersIn = ({ slots }: LineUpProblem, chosen: readonly string[] | null) =>
	slots.flatMap((_, member) => (chosen?.includes(columnOf(member)) ? [member] : []));
const solved = async (problem: LineUpProblem) => {
	const answer = await solve({
		model: lineUpModel(problem),
		start: [],
		columns: problem.slots.map((_, member) => columnOf(member)),
		seconds: 30,
	});
	return { ...answer, worth: scoreOf(problem, membersIn(problem, answer.chosen)).objective };
};

// HiGHS (npm `highs`) is a general-purpose solver: a second opinion that knows nothing of outfits but the model's rows.
describe('the model of a line-up', () => {
	it('has the optimum that trying all sets finds', async () => {
		await fc.assert(
			fc.asyncProperty(
				fc.integer({ min: 1, max: 12 }),
				fc.double({ min: 0.05, max: 0.5, noNaN: true }),
				fc.string(),
				async (count, density, seed) => {
					const problem = generatedLineUp(count, density, seed, SMALL);
					const { bound, worth } = await solved(problem);
					expect(worth).toBeCloseTo(bestByTryingAll(problem), 6);
					expect(bound).toBeCloseTo(worth, 6);
				},
			),
			{ numRuns: 25, seed: 1 },
		);
	});

	it('keeps what must be kept and a warm coat', async () => {
		const free = generatedLineUp(14, 0.45, 'kept', SMALL);
		const coats = free.slots.flatMap((slot, index) => (slot === 'outer' ? [index] : []));
		expect(coats.length).toBeGreaterThan(1);
		for (const coat of coats) {
			const problem = lineUpProblemOf({ ...free, quotas: SMALL, fixed: [0], settled: [], warmOuter: new Set([coat]) });
			const { worth, chosen } = await solved(problem);
			expect(membersIn(problem, chosen)).toEqual(expect.arrayContaining([0, coat]));
			expect(worth).toBeCloseTo(bestByTryingAll(problem), 6);
		}
	});

	it('proves what the search finds in wardrobes of 40 garments', async () => {
		for (const density of [0.2, 0.3, 0.4]) {
			const problem = generatedLineUp(40, density, `proof ${density}`);
			const { bound, worth } = await solved(problem);
			expect(bestSet(problem).objective).toBeCloseTo(worth, 6);
			expect(bound).toBeCloseTo(worth, 6);
			expect(problem.bound).toBeGreaterThanOrEqual(bound - 1e-6);
		}
	});
});
