import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createTurns } from '../../../src/photo/readers/turns.ts';

describe('taking turns', () => {
	it('never has more side by side than there are places, nor anything beside what runs alone, and all get their turn', async () => {
		await fc.assert(
			fc.asyncProperty(
				fc.integer({ min: 1, max: 5 }),
				fc.array(fc.record({ alone: fc.boolean(), fails: fc.boolean(), steps: fc.nat({ max: 4 }) }), { maxLength: 30 }),
				async (places, jobs) => {
					const turns = createTurns(places);
					const running = new Set<number>();
					const wrong: string[] = [];
					const begun: number[] = [];
					const work = (index: number) => async () => {
						const { alone, fails, steps } = jobs[index]!;
						begun.push(index);
						running.add(index);
						if (running.size > places) wrong.push(`${running.size} side by side`);
						const hasAlone = [...running].some((one) => jobs[one]!.alone);
						if (running.size > 1 && hasAlone) wrong.push('something beside what runs alone');
						for (let n = 0; n < steps; n++) await null;
						running.delete(index);
						if (fails) throw new RangeError(String(alone));
						return index;
					};
					const ended = await Promise.allSettled(
						jobs.map(({ alone }, index) => (alone ? turns.takeAlone(work(index)) : turns.take(work(index)))),
					);
					expect(wrong).toEqual([]);
					expect(begun).toEqual(jobs.map((_, index) => index));
					expect(ended.map(({ status }) => status === 'rejected')).toEqual(jobs.map(({ fails }) => fails));
				},
			),
		);
	});
});
