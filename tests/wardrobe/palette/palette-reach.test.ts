import { expect, it } from 'vitest';
import { reachOf } from '../../../src/wardrobe/palette/palette-reach.ts';

it.each([
	[0, 10],
	[10, 10],
	[11.5, 11.5],
	[13, 13],
	[27, 13],
])(
	'a palette colour whose members spread over %d reaches %d far: its spread, but never under 10 nor over 13',
	(spread, reach) => {
		expect(reachOf({ spread })).toBe(reach);
	},
);
