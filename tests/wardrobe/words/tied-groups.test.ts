import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tiedGroups } from '../../../src/wardrobe/words/tied-groups.ts';

const groupsOf = (values: readonly number[], step: number) => tiedGroups(values, (value) => value, step);

describe('what cannot be told apart', () => {
	it.each([
		[[10, 50, 12, 55], 5, [[55], [50], [12, 10]]],
		[
			[10, 50, 12, 54],
			5,
			[
				[54, 50],
				[12, 10],
			],
		],
		// A staircase is no one group: two steps wide at most.
		[
			[40, 36, 32, 28, 24],
			5,
			[
				[40, 36, 32],
				[28, 24],
			],
		],
		[[], 5, []],
	])('%j in steps of %d is %j', (values, step, groups) => {
		expect(groupsOf(values, step)).toEqual(groups);
	});

	it('is never more than two steps wide, and loses nothing', () => {
		fc.assert(
			fc.property(fc.array(fc.integer({ min: 0, max: 100 })), fc.integer({ min: 1, max: 20 }), (values, step) => {
				const groups = groupsOf(values, step);
				expect(groups.flat()).toEqual([...values].sort((a, b) => b - a));
				for (const group of groups) expect(group[0]! - group.at(-1)!).toBeLessThan(2 * step);
			}),
		);
	});
});
