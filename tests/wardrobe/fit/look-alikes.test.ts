import { describe, expect, it } from 'vitest';
import { alikeCount, lookAlikes, variedWeights } from '../../../src/wardrobe/fit/look-alikes.ts';
import { aGarment, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { apartBy } from '../../support/colours-apart.ts';

const oat = aGarment({ id: 'oat', lab: OAT });
const alike = aGarment({ id: 'alike', lab: [83, 1, 12], pattern: { type: 'mottled', sure: 0.9 } });
const others = [
	aGarment({ id: 'jumper', kind: 'jumper', lab: OAT }),
	aGarment({ id: 'striped', lab: OAT, pattern: { type: 'striped', sure: 0.9 } }),
	aGarment({ id: 'teal', lab: TEAL }),
	aGarment({ id: 'rust', lab: RUST }),
	aGarment({ id: 'unread', swatches: [] }),
];

describe('garments that look alike', () => {
	it('are of one kind, one pattern and nearly one colour, all three', () => {
		expect(alikeCount(oat, [alike, ...others])).toBe(1);
		const groups = lookAlikes([oat, alike, ...others]);
		expect(groups[1]).toBe(groups[0]);
		expect(new Set(groups).size).toBe(others.length + 1);
	});

	it('may be as far apart as two photos of one cloth, and no further', () => {
		// Photos of one cloth under one lamp differ by about 5 (measured on phone photos).
		const from = (away: number) => alikeCount(oat, [aGarment({ id: 'other', lab: apartBy(OAT, away) })]);
		expect([from(5), from(7)]).toEqual([1, 0]);
	});

	it('are none for a garment without colours', () => {
		const unread = aGarment({ id: 'a', swatches: [] });
		expect(alikeCount(unread, [aGarment({ id: 'b', swatches: [] }), oat])).toBe(0);
		expect(new Set(lookAlikes([unread, aGarment({ id: 'b', swatches: [] })])).size).toBe(2);
	});

	it('count 1, 1.5, 1.75 together, shared evenly among them; whatever looks like no other counts 1', () => {
		// Sums of a geometric series of halves.
		expect(variedWeights([oat, ...others])).toEqual([1, 1, 1, 1, 1, 1]);
		expect(variedWeights([oat, alike, others[2]!])).toEqual([0.75, 0.75, 1]);
		const three = variedWeights([oat, alike, { ...oat }]);
		expect(three.reduce((sum, weight) => sum + weight, 0)).toBeCloseTo(1.75, 12);
	});
});
