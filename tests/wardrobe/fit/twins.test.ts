import { describe, expect, it } from 'vitest';
import { twinsOf } from '../../../src/wardrobe/fit/twins.ts';
import { aGarment, RUST, TEAL } from '../../support/build-wardrobe.ts';

const trust = (error: number) => ({ error, reasons: [], advice: null });
const one = aGarment({ id: 'one', lab: RUST, trust: trust(3) });

describe('twins', () => {
	it('are two of one kind and nearly one colour', () => {
		const [twin] = twinsOf([one, aGarment({ id: 'two', lab: [46, 38, 40] }), aGarment({ id: 'three', lab: TEAL })]);
		expect(twin).toMatchObject({ garmentA: 'one', garmentB: 'two', sureness: 'alike' });
		expect(twin!.sentence).toContain('nearly the same colour');
	});

	it('may be further apart the less their photos can be believed, both counted, up to 10', () => {
		const two = (error: number) => aGarment({ id: 'two', lab: [51, 38, 40], trust: trust(error) });
		expect(twinsOf([one, two(0)])).toEqual([]);
		expect(twinsOf([one, two(6)])).toMatchObject([{ sureness: 'maybe', within: Math.hypot(3, 6) }]);
		expect(twinsOf([one, aGarment({ id: 'far', lab: [70, 10, 10], trust: trust(100) })])).toEqual([]);
	});

	it('are not of different kinds, nor of clearly different patterns, but plain and mottled may be', () => {
		expect(twinsOf([one, aGarment({ id: 'two', kind: 'jumper', lab: RUST })])).toEqual([]);
		const patterned = (type: 'striped' | 'mottled', sure: number) =>
			aGarment({ id: 'two', lab: RUST, pattern: { type, sure } });
		expect(twinsOf([one, patterned('striped', 0.9)])).toEqual([]);
		expect(twinsOf([one, patterned('striped', 0.5)])).toHaveLength(1);
		expect(twinsOf([one, patterned('mottled', 0.9)])).toHaveLength(1);
	});

	it('come nearest first, each pair once, whatever the order, and none from none, one or unread garments', () => {
		const coat = aGarment({ id: 'coat', kind: 'coat', lab: RUST });
		const garments = [one, aGarment({ id: 'two', lab: [46, 38, 40] }), aGarment({ id: 'three', lab: RUST }), coat];
		const twins = twinsOf(garments);
		expect(twins.map(({ distance }) => distance)).toEqual(
			[...twins.map(({ distance }) => distance)].sort((a, b) => a - b),
		);
		expect(twins).toHaveLength(3);
		expect(twinsOf([...garments].reverse())).toEqual(twins);
		expect(twinsOf([])).toEqual([]);
		expect(twinsOf([one])).toEqual([]);
		expect(twinsOf([aGarment({ id: 'a', swatches: [] }), aGarment({ id: 'b', swatches: [] })])).toEqual([]);
	});
});
