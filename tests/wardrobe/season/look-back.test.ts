import { describe, expect, it } from 'vitest';
import { lookBack } from '../../../src/wardrobe/season/look-back.ts';
import { daysBetween } from '../../../src/wardrobe/words/days-between.ts';
import { aGarment, aPalette, INK, OAT, RUST } from '../../support/build-wardrobe.ts';

const TODAY = '2026-03-10';
const worn = (garmentId: string, ...days: string[]) => days.map((on) => ({ garmentId, on }));
const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT, price: 60 }),
	aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST, price: null }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK, price: 0 }),
	aGarment({ id: 'lime skirt', kind: 'skirt', lab: [85, -40, 75], price: 20 }),
];
const back = lookBack(
	garments,
	[
		...worn('oat shirt', '2026-03-01', '2026-02-01', '2026-03-09'),
		...worn('rust shirt', '2024-12-31'),
		...worn('ink trousers', TODAY, '2027-01-01'),
		...worn('sold long ago', '2026-01-01'),
	],
	aPalette(),
	TODAY,
);
const of = (id: string) => back.garments.find(({ garmentId }) => garmentId === id)!;

describe('the look-back', () => {
	it('holds no missing wear against tights, socks and bags where nobody notes them', () => {
		const beside = [
			aGarment({ id: 'tights', kind: 'tights', lab: INK }),
			aGarment({ id: 'bag', kind: 'bag', lab: INK }),
			aGarment({ id: 'hat', kind: 'hat', lab: INK }),
		];
		const wears = [...worn('oat shirt', '2026-03-01')];
		const told = lookBack([...garments, ...beside], wears, aPalette(), TODAY);
		expect(told.neverWorn).toEqual(['ink trousers', 'lime skirt', 'rust shirt']);
		expect(told.sentence).toContain('3 of 4 garments');
		const noted = lookBack([...garments, ...beside], [...wears, ...worn('bag', '2026-03-01')], aPalette(), TODAY);
		expect(noted.neverWorn).toContain('hat');
		expect(noted.neverWorn).not.toContain('tights');
	});

	it('counts wears, finds the last one and divides the price by them', () => {
		expect(of('oat shirt')).toMatchObject({
			wears: 3,
			wearsThisYear: 3,
			lastWorn: '2026-03-09',
			unwornDays: 1,
			costPerWear: 20,
		});
		expect(of('oat shirt').sentence).toBe('Worn 3 times, last 1 day ago; 20.00 a wear.');
	});

	it('leaves out days that have not come', () => {
		expect(of('ink trousers')).toMatchObject({ wears: 1, lastWorn: TODAY, unwornDays: 0 });
	});

	it('gives no cost where the price is not told, and says so; a gift costs nothing', () => {
		expect(of('rust shirt').costPerWear).toBeNull();
		expect(of('rust shirt').sentence).toContain('its price is not told');
		expect(of('ink trousers').costPerWear).toBe(0);
		expect(of('ink trousers').sentence).toBe('Worn once, last today; it cost nothing.');
	});

	it('names what was not worn for twelve months', () => {
		expect(back.neverWorn).toEqual(['lime skirt', 'rust shirt']);
		expect(of('lime skirt')).toMatchObject({ lastWorn: null, unwornDays: null, costPerWear: null });
		expect(back.wearsThisYear).toBe(4);
		expect(back.sentence).toBe('4 wears in the last twelve months; 2 of 4 garments were never worn.');
	});

	it('compares what is worn with what is owned, by colour and by slot', () => {
		const slots = new Map(back.bySlot.map((one) => [one.slot, one]));
		expect(slots.get('top')).toMatchObject({ owned: 0.5, worn: 0.75 });
		expect(slots.get('bottom')).toMatchObject({ owned: 0.5, worn: 0.25 });
		const colours = new Map(back.byColour.map((one) => [one.paletteColourId, one]));
		expect(colours.get('oat')!.worn).toBeCloseTo(3 / (3 + 1.1), 9);
		expect(colours.get('oat')!.owned).toBeCloseTo(1 / 4.2, 9);
		expect(colours.get(null)).toMatchObject({ worn: 0 });
		expect(colours.has('teal')).toBe(false);
		expect(sum(back.byColour.map(({ owned }) => owned))).toBeCloseTo(1, 9);
		expect(sum(back.byColour.map((one) => one.worn))).toBeCloseTo(1, 9);
	});

	it('says plainly that nothing is known where no wear is noted', () => {
		const nothing = lookBack(garments, [], aPalette(), TODAY);
		expect(nothing.sentence).toContain('nothing can be said');
		expect(nothing.bySlot.every((one) => one.worn === 0)).toBe(true);
		expect(lookBack([], [], { colours: [] }, TODAY)).toMatchObject({
			garments: [],
			byColour: [],
			bySlot: [],
			neverWorn: [],
		});
	});

	it('counts days across the change of summer time and of years', () => {
		expect(daysBetween('2026-03-28', '2026-03-30')).toBe(2);
		expect(daysBetween('2023-12-31', '2024-03-01')).toBe(61);
		expect(daysBetween('2026-03-10', '2026-03-01')).toBe(-9);
	});
});
