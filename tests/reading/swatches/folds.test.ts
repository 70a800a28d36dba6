import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { areFolds } from '../../../src/reading/swatches/folds.ts';

const half = (...labs: Lab65[]) => labs.map((lab) => ({ lab, share: 1 / labs.length }));

describe('stripes that can only be folds', () => {
	// L* of the first as read on a real magenta skirt that was called striped, its a* and b* made up; the blue and the black stripes are real garments' colours.
	it.each<[string, boolean, Lab65[]]>([
		[
			'a magenta skirt, lit and in its folds',
			true,
			[
				[44, 62, -8],
				[14, 32, -4],
			],
		],
		['one colour', false, [[44, 62, -8]]],
		[
			'navy and light blue stripes',
			false,
			[
				[52, -1, -25],
				[6, 5, -15],
			],
		],
		[
			'black and white stripes',
			false,
			[
				[78, 1, -1],
				[11, 0, 3],
			],
		],
		[
			'red and navy stripes',
			false,
			[
				[45, 55, 30],
				[20, 5, -25],
			],
		],
		[
			'grey folds or stripes: nothing tells them apart',
			false,
			[
				[60, 1, 2],
				[30, 1, 1],
			],
		],
	])('%s: %s', (_, folds, labs) => {
		expect(areFolds(half(...labs))).toBe(folds);
	});
});
