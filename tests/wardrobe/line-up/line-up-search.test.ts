import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedLineUp } from '../../../bench/generated-line-up.ts';
import type { LineUpChoices, LineUpProblem } from '../../../src/wardrobe/line-up/line-up-choices.ts';
import { lineUpProblemOf } from '../../../src/wardrobe/line-up/line-up-problem.ts';
import { bestSet, greedySet, scoreOf } from '../../../src/wardrobe/line-up/line-up-search.ts';
import { seededRandom } from '../../../src/wardrobe/words/seeded-random.ts';
import { SLOTS, type Slot } from '../../../src/wardrobe/words/slot.ts';
import { bestByTryingAll } from '../../support/best-by-trying-all.ts';

const OUTFIT_SLOTS: readonly Slot[] = ['top', 'top', 'bottom', 'full', 'shoes', 'outer'];

/** A small choice with shoes always among the pieces. */
function aChoice(count: number, density: number, seed: string): LineUpChoices {
	const random = seededRandom(seed);
	const slots = Array.from(
		{ length: count },
		(_, index): Slot => (index === 0 ? 'shoes' : OUTFIT_SLOTS[Math.floor(random() * OUTFIT_SLOTS.length)]!),
	);
	const together = new Uint8Array(count * count);
	for (let one = 0; one < count; one++) {
		for (let other = one + 1; other < count; other++) {
			const goes = random() < density ? 1 : 0;
			together[one * count + other] = goes;
			together[other * count + one] = goes;
		}
	}
	return {
		slots,
		together,
		fit: slots.map(() => random()),
		loved: slots.map(() => random()),
		weights: { outfits: 1, fit: 0.3, loved: 0.15 },
		quotas: { top: 3, outer: 1, bottom: 2, full: 1, legwear: 0, shoes: 1, accessory: 0 },
		fixed: [],
		warmOuter: new Set(),
	};
}

const choices = fc.record({
	count: fc.integer({ min: 1, max: 14 }),
	density: fc.double({ min: 0.1, max: 1, noNaN: true }),
	seed: fc.string(),
});

/** The pieces `order` of a choice, in that order. */
function reordered(choice: LineUpChoices, order: readonly number[]): LineUpChoices {
	const count = order.length;
	const together = new Uint8Array(count * count);
	for (const [one, wasOne] of order.entries())
		for (const [other, wasOther] of order.entries())
			together[one * count + other] = choice.together[wasOne * choice.slots.length + wasOther]!;
	const moved = <T>(values: readonly T[]) => order.map((was) => values[was]!);
	return { ...choice, slots: moved(choice.slots), fit: moved(choice.fit), loved: moved(choice.loved), together };
}

/** The choice without its last piece. */
const withoutLast = (choice: LineUpChoices): LineUpChoices =>
	reordered(
		choice,
		choice.slots.slice(1).map((_, index) => index),
	);

const placesKept = ({ slots, places }: LineUpProblem, members: readonly number[]) =>
	SLOTS.every((slot) => members.filter((member) => slots[member] === slot).length === places[slot]);

describe('the search for a line-up', () => {
	it('finds the best set of small wardrobes, as trying all sets does', () => {
		fc.assert(
			fc.property(choices, ({ count, density, seed }) => {
				const problem = lineUpProblemOf(aChoice(count, density, seed));
				const found = bestSet(problem);
				expect(placesKept(problem, found.members)).toBe(true);
				expect(found.objective).toBeCloseTo(bestByTryingAll(problem), 9);
			}),
			{ numRuns: 150, seed: 1 },
		);
	});

	it('never claims more than is possible, and its bound is never under the best set', () => {
		fc.assert(
			fc.property(choices, ({ count, density, seed }) => {
				const problem = lineUpProblemOf(aChoice(count, density, seed));
				expect(problem.bound).toBeGreaterThanOrEqual(bestByTryingAll(problem) - 1e-9);
			}),
			{ numRuns: 150, seed: 2 },
		);
	});

	it('never finds less after a garment is added', () => {
		fc.assert(
			fc.property(choices, ({ count, density, seed }) => {
				const choice = aChoice(count + 1, density, seed);
				const more = bestByTryingAll(lineUpProblemOf(choice));
				const fewer = bestByTryingAll(lineUpProblemOf(withoutLast(choice)));
				expect(more).toBeGreaterThanOrEqual(fewer - 1e-9);
			}),
			{ numRuns: 150, seed: 3 },
		);
	});

	it('is worth the same whatever the order of the garments', () => {
		fc.assert(
			fc.property(choices, fc.integer(), ({ count, density, seed }, turn) => {
				const choice = aChoice(count, density, seed);
				const random = seededRandom(`order ${turn}`);
				const order = choice.slots
					.map((_, index) => ({ index, key: random() }))
					.sort((a, b) => a.key - b.key)
					.map(({ index }) => index);
				const [one, other] = [choice, reordered(choice, order)].map((each) => bestSet(lineUpProblemOf(each)));
				expect(one!.objective).toBeCloseTo(other!.objective, 9);
			}),
			{ numRuns: 100, seed: 4 },
		);
	});

	it('keeps what must be kept and a warm coat where one is asked for', () => {
		const choice = aChoice(14, 0.6, 'kept');
		const outer = choice.slots.flatMap((slot, index) => (slot === 'outer' ? [index] : []));
		const tops = choice.slots.flatMap((slot, index) => (slot === 'top' ? [index] : []));
		expect(outer.length).toBeGreaterThan(1);
		for (const coat of outer) {
			const problem = lineUpProblemOf({ ...choice, fixed: [tops[0]!], warmOuter: new Set([coat]) });
			const { members, objective } = bestSet(problem);
			expect(members).toContain(coat);
			expect(members).toContain(tops[0]);
			expect(objective).toBeCloseTo(bestByTryingAll(problem), 9);
		}
	});

	it('does not miss what a greedy choice misses', () => {
		const problem = generatedLineUp(120, 0.35, 'greedy');
		const found = bestSet(problem);
		expect(found.objective).toBeGreaterThan(1.05 * greedySet(problem).objective);
		expect(found.objective).toBeLessThanOrEqual(problem.bound);
		expect(scoreOf(problem, found.members)).toEqual(found);
	});
});
