import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedLineUp } from '../../../bench/generated-line-up.ts';
import type { LineUpProblem } from '../../../src/wardrobe/line-up/line-up-choices.ts';
import { evaluatorOf } from '../../../src/wardrobe/line-up/line-up-evaluator.ts';
import { lineUpProblemOf } from '../../../src/wardrobe/line-up/line-up-problem.ts';
import { bestSet, greedySet } from '../../../src/wardrobe/line-up/line-up-search.ts';
import { scoreOf } from '../../../src/wardrobe/line-up/line-up-worth.ts';
import type { Quotas } from '../../../src/wardrobe/words/season.ts';
import { seededRandom } from '../../../src/wardrobe/words/seeded-random.ts';
import { SLOTS } from '../../../src/wardrobe/words/slot.ts';
import { bestByTryingAll } from '../../support/best-by-trying-all.ts';

const SMALL: Quotas = { top: 3, outer: 1, bottom: 2, full: 1, legwear: 1, shoes: 1, accessory: 1 };

const choices = fc.record({
	count: fc.integer({ min: 1, max: 13 }),
	density: fc.double({ min: 0.05, max: 0.5, noNaN: true }),
	seed: fc.string(),
});
const problemOf = ({ count, density, seed }: { count: number; density: number; seed: string }) =>
	generatedLineUp(count, density, seed, SMALL);

const placesKept = ({ slots, places }: LineUpProblem, members: readonly number[]) =>
	new Set(members).size === members.length &&
	SLOTS.every((slot) => members.filter((member) => slots[member] === slot).length <= places[slot]);

describe('the search for a line-up', () => {
	it('finds the best set of small wardrobes, as trying all sets does', () => {
		fc.assert(
			fc.property(choices, (choice) => {
				const problem = problemOf(choice);
				const found = bestSet(problem);
				expect(placesKept(problem, found.members)).toBe(true);
				expect(found.objective).toBeCloseTo(bestByTryingAll(problem), 9);
			}),
			{ numRuns: 100, seed: 1 },
		);
	});

	it('never claims more than is possible: its bound is never under the best set', () => {
		fc.assert(
			fc.property(choices, (choice) => {
				const problem = problemOf(choice);
				expect(problem.bound).toBeGreaterThanOrEqual(bestByTryingAll(problem) - 1e-9);
			}),
			{ numRuns: 100, seed: 2 },
		);
	});

	it('keeps what must be kept, what is settled, and a warm coat where one is asked for', () => {
		const free = generatedLineUp(14, 0.45, 'kept', SMALL);
		const inSlot = (slot: string) => free.slots.flatMap((one, index) => (one === slot ? [index] : []));
		const [outer, tops] = [inSlot('outer'), inSlot('top')];
		expect(outer.length).toBeGreaterThan(1);
		for (const coat of outer) {
			const asked = { ...free, quotas: SMALL, fixed: [tops[0]!], settled: [tops[1]!], warmOuter: new Set([coat]) };
			const problem = lineUpProblemOf(asked);
			const { members, objective } = bestSet(problem);
			expect(members).toEqual(expect.arrayContaining([coat, tops[0], tops[1]]));
			expect(objective).toBeCloseTo(bestByTryingAll(problem), 9);
		}
	});

	it('finds the only warm coat among very many jackets that are worth more', () => {
		const free = generatedLineUp(1000, 0.1, 'many', SMALL);
		const outer = free.slots.flatMap((slot, index) => (slot === 'outer' ? [index] : []));
		expect(outer.length).toBeGreaterThan(60);
		const coat = outer.at(-1)!;
		const none = { top: 0, outer: 1, bottom: 0, full: 0, legwear: 0, shoes: 0, accessory: 0 };
		const worthLittle = (values: readonly number[]) => values.map((value, index) => (index === coat ? 0 : value));
		const problem = lineUpProblemOf({
			...free,
			quotas: none,
			settled: [],
			fit: worthLittle(free.fit),
			loved: worthLittle(free.loved),
			warmOuter: new Set([coat]),
		});
		expect(bestSet(problem, 1).members).toEqual([coat]);
	});

	it('chooses among settled pieces alone where a slot has no place for all of them', () => {
		const free = generatedLineUp(14, 0.45, 'kept', SMALL);
		const tops = free.slots.flatMap((slot, index) => (slot === 'top' ? [index] : []));
		const problem = lineUpProblemOf({ ...free, quotas: { ...SMALL, top: 1 }, settled: tops.slice(0, 2) });
		const chosen = bestSet(problem).members.filter((member) => free.slots[member] === 'top');
		expect(tops.slice(0, 2)).toEqual(expect.arrayContaining(chosen));
	});

	it('is no worse than a greedy choice, and says the same of its set as the score does', () => {
		for (const density of [0.2, 0.35]) {
			const problem = generatedLineUp(60, density, `greedy ${density}`);
			const found = bestSet(problem, 3);
			expect(found.objective).toBeGreaterThanOrEqual(greedySet(problem).objective);
			expect(found.objective).toBeLessThanOrEqual(problem.bound);
			expect(scoreOf(problem, found.members)).toEqual(found);
		}
	});

	it('searches by the same worth that it shows', () => {
		const problem = generatedLineUp(40, 0.35, 'evaluator');
		const evaluate = evaluatorOf(problem);
		const random = seededRandom('sets');
		for (let round = 0; round < 200; round++) {
			const members = problem.slots.flatMap((_, member) => (random() < 0.5 ? [member] : []));
			const score = scoreOf(problem, members);
			expect(evaluate(members).objective).toBeCloseTo(score.objective, 9);
			expect(evaluate(members).largestGap).toBeCloseTo(score.largestGap, 9);
		}
	});

	it('counts a picture only where every piece has a garment of its own', () => {
		const problem = generatedLineUp(6, 0.4, 'pictures', SMALL);
		const wearing = (pictures: LineUpProblem['pictures'], members: readonly number[]) =>
			scoreOf({ ...problem, pictures }, members).parts.pictures;
		expect(wearing([[[0], [0, 1]]], [0, 1])).toBe(1);
		expect(wearing([[[0, 1], [0]]], [0, 1])).toBe(1);
		expect(wearing([[[0], [0]]], [0, 1])).toBe(0);
		expect(wearing([[[0], [1]], [[2]]], [0, 1])).toBe(0.5);
	});
});
