import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { twinsOf as allTwinsOf, twinsAmong } from '../../../src/wardrobe/fit/twins.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { aGarment, RUST, TEAL } from '../../support/build-wardrobe.ts';

const trust = (error: number, untold = false) => ({ error, reasons: [], advice: null, ...(untold ? { untold } : {}) });
const one = aGarment({ id: 'one', lab: RUST, trust: trust(3) });
const twinsOf = (garments: readonly Garment[]) => allTwinsOf(garments).twins;

/** Jumpers in greys from dark to light, as phone photos see them whose light nothing tells. */
const greys = (count: number, error: number, untold: boolean) =>
	Array.from({ length: count }, (_, at) => {
		const lab: Lab65 = [22 + (60 * at) / count, (at % 3) - 1, (at % 4) - 1.5];
		return aGarment({ id: `grey ${String(at).padStart(2, '0')}`, kind: 'jumper', lab, trust: trust(error, untold) });
	});

describe('twins', () => {
	it('are two of one kind and nearly one colour', () => {
		const [twin] = twinsOf([one, aGarment({ id: 'two', lab: [46, 38, 40] }), aGarment({ id: 'three', lab: TEAL })]);
		expect(twin).toMatchObject({ garmentA: 'one', garmentB: 'two', sureness: 'alike' });
		expect(twin!.sentence).toContain('nearly the same colour');
	});

	it('may be further apart the less their photos can be believed, both counted', () => {
		const two = (error: number) => aGarment({ id: 'two', lab: [51, 38, 40], trust: trust(error) });
		expect(twinsOf([one, two(0)])).toEqual([]);
		expect(twinsOf([one, two(6)])).toMatchObject([{ sureness: 'maybe' }]);
		expect(twinsOf([one, aGarment({ id: 'far', lab: [70, 10, 10], trust: trust(100) })])).toEqual([]);
	});

	it('are told where little else is of that colour, and not in a family of greys that no photo tells apart', () => {
		const family = greys(12, 11.5, true);
		const bad = trust(11.5, true);
		const rusts = ['rust', 'rust again'].map((id, at) =>
			aGarment({ id, kind: 'shirt', lab: [45 + 5 * at, 38, 40 - 3 * at], trust: bad }),
		);
		const { twins, tooClose } = allTwinsOf([...family, ...rusts]);
		expect(twins.map(({ garmentA, garmentB, sureness }) => [garmentA, garmentB, sureness])).toEqual([
			['rust', 'rust again', 'maybe'],
		]);
		expect(new Set(tooClose.flatMap(({ garmentIds }) => garmentIds)).size).toBeGreaterThanOrEqual(9);
		expect(tooClose[0]!.sentence).toMatch(
			/^grey 00, grey 01, grey 02 and \d others are too close to tell apart by these photos\. A grey card beside each, in a new photo, tells more\.$/,
		);
		// With a card beside each the same greys, five steps of lightness apart, are told apart.
		expect(allTwinsOf(greys(12, 5, false))).toMatchObject({ twins: [], tooClose: [] });
	});

	it('of a find names at most three, by the wardrobe that it would join', () => {
		const find = aGarment({ id: 'find', kind: 'jumper', lab: [45, 0, 0], trust: trust(11.5, true) });
		expect(twinsAmong(find, greys(12, 11.5, true))).toEqual([]);
		const same = Array.from({ length: 6 }, (_, at) => aGarment({ id: `same ${at}`, kind: 'jumper', lab: [45, 0, 0] }));
		expect(twinsAmong(aGarment({ id: 'find', kind: 'jumper', lab: [45, 0, 0] }), same)).toHaveLength(3);
	});

	it('of a find are those that it has once it is owned, as likely as then', () => {
		const bad = trust(9, true);
		const rusts = [45, 50, 55, 60].map((L) =>
			aGarment({ id: `rust ${L}`, kind: 'shirt', lab: [L, 38, 38], trust: bad }),
		);
		const find = aGarment({ id: 'find', kind: 'shirt', lab: [48, 37, 40], trust: bad });
		for (let count = 1; count <= rusts.length; count++) {
			const owned = rusts.slice(0, count);
			const chances = (twins: readonly { garmentA: string; garmentB: string; chance: number }[]) =>
				Object.fromEntries(
					twins
						.filter(({ garmentA, garmentB }) => garmentA === 'find' || garmentB === 'find')
						.map(({ garmentA, garmentB, chance }) => [garmentA === 'find' ? garmentB : garmentA, chance.toFixed(9)]),
				);
			const told = chances(twinsAmong(find, owned));
			expect(told).toEqual(chances(twinsOf([...owned, find])));
			if (count === 1) expect(Object.keys(told)).toHaveLength(1);
		}
	});

	it('are nobody’s concern among socks and tights', () => {
		// Nobody minds two pairs of black socks. Common practice, no source.
		for (const kind of ['socks', 'tights'] as const)
			expect(twinsOf(['a', 'b'].map((id) => aGarment({ id, kind, lab: RUST, trust: trust(0) })))).toEqual([]);
	});

	it('are never said to be alike by photos whose light nothing tells', () => {
		const pair = (untold: boolean) =>
			twinsOf([one, aGarment({ id: 'two', lab: RUST, trust: trust(3, untold) })]).map(({ sureness }) => sureness);
		expect([pair(false), pair(true)]).toEqual([['alike'], ['maybe']]);
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
