import { describe, expect, it } from 'vitest';
import { putIn, setMust, setNever, swapIn, takeOut } from '../../web/src/pages/line-up/set-changes.ts';

const choice = { seasonId: 's', garmentIds: ['a', 'b'], mustKeep: ['a'], neverUse: ['z'] };

describe('changes of a chosen set', () => {
	it.each([
		['what comes in is no longer left out for good', putIn(choice, 'z'), { garmentIds: ['a', 'b', 'z'], neverUse: [] }],
		['what goes out is no must-have', takeOut(choice, 'a'), { garmentIds: ['b'], mustKeep: [] }],
		['a must-have is no longer left out', setMust(choice, 'z', true), { mustKeep: ['a', 'z'], neverUse: [] }],
		['a must-have is freed', setMust(choice, 'a', false), { mustKeep: [], neverUse: ['z'] }],
		[
			'what is left out for good goes out',
			setNever(choice, 'a', true),
			{ garmentIds: ['b'], mustKeep: [], neverUse: ['z', 'a'] },
		],
		['what may be used again stays out', setNever(choice, 'z', false), { neverUse: [] }],
		['a swap frees the one that leaves', swapIn(choice, 'a', 'c'), { garmentIds: ['b', 'c'], mustKeep: [] }],
	])('%s', (_name, changes, expected) => expect(changes).toEqual(expected));

	it('names no garment twice', () => expect(putIn(choice, 'a').garmentIds).toEqual(['b', 'a']));
});
