import { describe, expect, it } from 'vitest';
import { daysOfSeason } from '../../../src/wardrobe/days/usual-days.ts';
import { likelyVerdict } from '../../../src/wardrobe/fit/fit.ts';
import { buildLineUp } from '../../../src/wardrobe/line-up/line-up.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import type { Swatch } from '../../../src/wardrobe/words/reading.ts';
import type { Quotas, SeasonDays } from '../../../src/wardrobe/words/season.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, aPalette, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

// Twelve wardrobes, each with something planted for which a person who plans would choose without thinking. Common practice, no source.

const NOTHING: Quotas = { top: 0, outer: 0, bottom: 0, full: 0, legwear: 0, shoes: 0, accessory: 0 };
const ORANGE = [68, 45, 70] as const;
const GREY = [55, 0, 0] as const;

type Asked = {
	readonly garments: readonly Garment[];
	readonly quotas: Partial<Quotas>;
	readonly wears?: Readonly<Record<string, number>>;
	readonly days?: Partial<SeasonDays>;
	readonly winter?: boolean;
	readonly summer?: boolean;
	/** What each picture of the board wears. */
	readonly pictures?: readonly (readonly Swatch[])[];
	readonly mustKeep?: readonly string[];
	readonly neverUse?: readonly string[];
};

function lineUpOf({
	garments,
	quotas,
	wears = {},
	days = {},
	winter = false,
	summer = false,
	pictures = [],
	mustKeep = [],
	neverUse = [],
}: Asked) {
	const input = aSeasonInput({
		garments,
		inspirations: pictures.map((swatches, index) => ({
			inspiration: {
				id: `picture ${index}`,
				seasonId: 'spring',
				photoId: `photo ${index}`,
				title: '',
				group: '',
				addedAt: '',
			},
			reading: aReading(swatches),
		})),
		wears: Object.entries(wears).flatMap(([garmentId, count]) =>
			Array.from({ length: count }, (_, index) => ({
				garmentId,
				on: new Date(Date.UTC(2025, 5, 1 + 5 * index)).toISOString().slice(0, 10),
			})),
		),
	});
	const dates = winter
		? ({ startsOn: '2026-12-01', endsOn: '2027-02-28', yearPart: 'winter' } as const)
		: summer
			? ({ startsOn: '2026-06-01', endsOn: '2026-08-31', yearPart: 'summer' } as const)
			: {};
	const season = { ...input.season, ...dates };
	const all = { ...NOTHING, ...quotas };
	return buildLineUp(
		{ ...input, season: { ...season, days: { ...daysOfSeason(season), ...days } } },
		{ quotas: all, targetCount: Object.values(all).reduce((sum, one) => sum + one, 0), mustKeep, neverUse },
	);
}

const shirt = (id: string, lab: Garment['swatches'][number]['lab'], changes: Partial<Garment> = {}) =>
	aGarment({ id, kind: 'shirt', lab, ...changes });
const inkTrousers = (id: string, changes: Partial<Garment> = {}) =>
	aGarment({ id, kind: 'trousers', lab: INK, ...changes });

describe('the set that a person would choose', () => {
	it('is not six black shirts where other shirts are at hand', () => {
		const black = Array.from({ length: 6 }, (_, index) => shirt(`black ${index}`, [18 + index / 4, 0, -3]));
		const others = [shirt('oat', OAT), shirt('rust', RUST), shirt('teal', TEAL)];
		const { garmentIds } = lineUpOf({
			garments: [...black, ...others, inkTrousers('trousers')],
			quotas: { top: 5, bottom: 1 },
		});
		expect(garmentIds).toEqual(expect.arrayContaining(['oat', 'rust', 'teal']));
		expect(garmentIds.filter((id) => id.startsWith('black'))).toHaveLength(2);
	});

	it('holds the coat worn forty times, whatever its colour', () => {
		const coats = [
			aGarment({ id: 'old green', kind: 'jacket', lab: [50, -30, 35] }),
			aGarment({ id: 'oat', kind: 'jacket', lab: OAT }),
		];
		expect(lineUpOf({ garments: coats, quotas: { outer: 1 }, wears: { 'old green': 40 } }).garmentIds).toEqual([
			'old green',
		]);
	});

	it('does not take for liked what is worn much and not loved, as work clothes may be', () => {
		const jackets = (loved: 0 | null) => [
			aGarment({ id: 'worn', kind: 'jacket', lab: OAT, loved, boughtOn: '2024-01-01' }),
			aGarment({ id: 'other', kind: 'jacket', lab: OAT, boughtOn: '2020-01-01' }),
		];
		const chosen = (loved: 0 | null, times: number) =>
			lineUpOf({ garments: jackets(loved), quotas: { outer: 1 }, wears: { worn: times } }).garmentIds;
		expect([chosen(null, 40), chosen(0, 40)]).toEqual([['worn'], ['other']]);
	});

	it('holds the basics, and what is loved dearly, before what fits better', () => {
		const basic = aGarment({ id: 'grey T-shirt', kind: 't-shirt', lab: GREY, basic: true, loved: 3 });
		const loved = shirt('orange', ORANGE, { loved: 3 });
		const { garmentIds } = lineUpOf({
			garments: [basic, loved, shirt('oat', OAT), shirt('rust', RUST)],
			quotas: { top: 3 },
		});
		expect(garmentIds).toEqual(expect.arrayContaining(['grey T-shirt', 'orange']));
	});

	it('has no shorts and sandals in winter, though their places stay open', () => {
		const summer = [
			aGarment({ id: 'shorts', kind: 'shorts', lab: INK }),
			aGarment({ id: 'sandals', kind: 'sandals', lab: OAT }),
		];
		const told = shirt('linen', OAT, { yearParts: ['summer'] });
		const { garmentIds, openBySlot, sentence } = lineUpOf({
			garments: [...summer, told, shirt('rust', RUST), inkTrousers('trousers')],
			quotas: { top: 2, bottom: 2, shoes: 1 },
			winter: true,
		});
		expect([...garmentIds].sort()).toEqual(['rust', 'trousers']);
		expect(openBySlot).toMatchObject({ top: 1, bottom: 1, shoes: 1 });
		expect(sentence).toContain('3 places stay open: nothing else you own is worth one. Make each a wish');
	});

	it('has one jumper in summer for the cool evenings, and no boots, tights or scarf', () => {
		const jumpers = [OAT, RUST, INK].map((lab, at) => aGarment({ id: `jumper ${at}`, kind: 'jumper', lab }));
		const shirts = [OAT, RUST, TEAL, INK].map((lab, at) => shirt(`shirt ${at}`, lab));
		const wintry = (['boots', 'tights', 'scarf'] as const).map((kind) => aGarment({ id: kind, kind, lab: INK }));
		const asked = {
			garments: [...jumpers, ...shirts, ...wintry, inkTrousers('trousers')],
			quotas: { top: 5, bottom: 1, shoes: 1, legwear: 1, accessory: 1 },
		};
		const { garmentIds } = lineUpOf({ ...asked, summer: true });
		expect(garmentIds.filter((id) => id.startsWith('jumper'))).toHaveLength(1);
		expect(garmentIds).not.toEqual(expect.arrayContaining(['boots']));
		expect(garmentIds.filter((id) => id === 'tights' || id === 'scarf')).toEqual([]);
		// The one liked best is the one that stays.
		for (const best of jumpers) {
			const liked = asked.garments.map((garment) => (garment === best ? { ...garment, loved: 2 as const } : garment));
			const chosen = lineUpOf({ ...asked, garments: liked, summer: true }).garmentIds;
			expect(chosen.filter((id) => id.startsWith('jumper'))).toEqual([best.id]);
		}
		// What must be kept, and what is loved dearly, stays; and without shirts jumpers dress the days.
		expect(lineUpOf({ ...asked, summer: true, mustKeep: ['jumper 0', 'jumper 1'] }).garmentIds).toEqual(
			expect.arrayContaining(['jumper 0', 'jumper 1']),
		);
		const without = { ...asked, garments: [...jumpers, inkTrousers('trousers')], summer: true };
		expect(lineUpOf(without).garmentIds.filter((id) => id.startsWith('jumper'))).toHaveLength(3);
	});

	it('has as many jumpers as it likes in an autumn with cold days, however warm its first week', () => {
		const jumpers = [OAT, RUST, INK].map((lab, at) => aGarment({ id: `jumper ${at}`, kind: 'jumper', lab }));
		const asked = { garments: [...jumpers, shirt('oat', OAT), inkTrousers('trousers')], quotas: { top: 4, bottom: 1 } };
		expect(lineUpOf({ ...asked, days: { coldDay: 6, warmDay: 20 } }).garmentIds).toHaveLength(5);
	});

	it('fills a place with grey, navy or camel that is not of the palette rather than leave it open', () => {
		const basics = { grey: GREY, navy: [30, 4, -30], camel: [58, 8, 27] } as const;
		for (const [id, lab] of Object.entries(basics)) {
			const basic = shirt(id, lab);
			expect(likelyVerdict(basic, aPalette())).toBe('off');
			const asked = { garments: [shirt('oat', OAT), basic, inkTrousers('trousers')], quotas: { top: 2, bottom: 1 } };
			expect([...lineUpOf(asked).garmentIds].sort()).toEqual([id, 'oat', 'trousers'].sort());
		}
		const garments = [
			shirt('oat', OAT),
			shirt('white', [96, 0, 1]),
			inkTrousers('trousers'),
			aGarment({ id: 'tights', kind: 'tights', lab: [10, 0, 0] }),
			aGarment({ id: 'lime tights', kind: 'tights', lab: [85, -40, 75] }),
		];
		const { garmentIds, openBySlot } = lineUpOf({ garments, quotas: { top: 2, bottom: 1, legwear: 2 } });
		expect([...garmentIds].sort()).toEqual(['oat', 'tights', 'trousers', 'white']);
		expect(openBySlot).toMatchObject({ legwear: 1 });
	});

	it('keeps no place for a dress in the wardrobe of somebody who wears none', () => {
		const bottoms = Array.from({ length: 8 }, (_, at) => inkTrousers(`trousers ${at}`));
		const asked = { garments: [...bottoms, shirt('oat', OAT)], quotas: { top: 1, bottom: 2, full: 1 } };
		expect(lineUpOf(asked)).toMatchObject({ openBySlot: { full: 0 }, problems: [] });
		const dress = aGarment({ id: 'dress', kind: 'dress', lab: INK, yearParts: ['winter'] });
		expect(lineUpOf({ ...asked, garments: [...asked.garments, dress] })).toMatchObject({ openBySlot: { full: 1 } });
	});

	it('rather leaves a place open than fills it with an orange coat that goes with nothing', () => {
		const garments = [
			aGarment({ id: 'orange coat', kind: 'jacket', lab: ORANGE }),
			shirt('oat', OAT),
			inkTrousers('trousers'),
		];
		const asked = { garments, quotas: { top: 1, bottom: 1, outer: 1 } };
		expect(lineUpOf(asked)).toMatchObject({ openBySlot: { outer: 1 } });
		expect(lineUpOf({ ...asked, mustKeep: ['orange coat'] }).garmentIds).toContain('orange coat');
		// Worn with the trousers once, it goes with something.
		expect(lineUpOf({ ...asked, wears: { 'orange coat': 1, trousers: 1 } }).garmentIds).toContain('orange coat');
	});

	it('holds the orange coat all the same where it is winter and no other is warm enough, and says so', () => {
		const coat = (id: string, lab: Garment['swatches'][number]['lab']) => aGarment({ id, kind: 'coat', lab });
		const asked = { quotas: { top: 1, outer: 1 }, winter: true };
		const only = lineUpOf({ ...asked, garments: [coat('orange coat', ORANGE), shirt('oat', OAT)] });
		expect(only.garmentIds).toContain('orange coat');
		expect(only.problems.join(' ')).toContain('orange coat is off the palette, but nothing else is warm enough');
		const both = lineUpOf({
			...asked,
			garments: [coat('orange coat', ORANGE), coat('ink coat', INK), shirt('oat', OAT)],
		});
		expect(both.garmentIds).toContain('ink coat');
		expect(both.garmentIds).not.toContain('orange coat');
	});

	it('takes one pair of three black trousers where a skirt and another colour are at hand', () => {
		const black = [1, 2, 3].map((index) => inkTrousers(`black ${index}`));
		const others = [
			aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST }),
			aGarment({ id: 'teal', kind: 'trousers', lab: TEAL }),
		];
		const { garmentIds } = lineUpOf({
			garments: [...black, ...others, shirt('oat', OAT)],
			quotas: { top: 1, bottom: 3 },
		});
		expect(garmentIds).toEqual(expect.arrayContaining(['rust skirt', 'teal']));
		expect(garmentIds.filter((id) => id.startsWith('black'))).toHaveLength(1);
	});

	it('leaves out what is worn out', () => {
		for (const said of [{}, { loved: 3 }, { basic: true }] as const) {
			const garments = [shirt('worn out', RUST, { condition: 'worn-out', ...said }), shirt('oat', OAT)];
			expect(lineUpOf({ garments, quotas: { top: 2 } }).garmentIds).toEqual(['oat']);
		}
	});

	it('brings a stored winter coat back where nothing on the rail is warm enough', () => {
		const coats = [
			aGarment({ id: 'jacket', kind: 'jacket', lab: OAT, loved: 2 }),
			aGarment({ id: 'stored coat', kind: 'coat', lab: INK, place: 'stored' }),
		];
		expect(lineUpOf({ garments: coats, quotas: { outer: 1 }, winter: true, days: { coldDay: -2 } }).garmentIds).toEqual(
			['stored coat'],
		);
	});

	it('takes the shirt that a picture wears before one that fits as well', () => {
		const garments = [shirt('oat', OAT), shirt('rust', RUST), inkTrousers('trousers')];
		for (const [name, lab] of [
			['oat', OAT],
			['rust', RUST],
		] as const)
			expect(
				lineUpOf({
					garments,
					quotas: { top: 1, bottom: 1 },
					pictures: [[aSwatch(lab, 0.5, 'top'), aSwatch(INK, 0.5, 'bottom')]],
				}).garmentIds,
			).toEqual([name, 'trousers']);
	});

	it('takes what is only near the palette where the days would else not be dressed', () => {
		const fitting = [shirt('oat', OAT), shirt('rust', RUST), shirt('teal', TEAL)];
		const near = Array.from({ length: 5 }, (_, index) => shirt(`near ${index}`, [68 - index, 1, 11]));
		const { garmentIds } = lineUpOf({
			garments: [...fitting, ...near, inkTrousers('1'), inkTrousers('2')],
			quotas: { top: 7, bottom: 2 },
		});
		expect(garmentIds).toHaveLength(9);
		expect(garmentIds).toEqual(expect.arrayContaining(['oat', 'rust', 'teal']));
	});

	it('never takes what the user does not want, however loved', () => {
		const garments = [shirt('loved', OAT, { loved: 3 }), shirt('rust', RUST)];
		expect(lineUpOf({ garments, quotas: { top: 1 }, neverUse: ['loved'] }).garmentIds).toEqual(['rust']);
	});

	it('dresses hikes with T-shirts where the days are hikes, and the office with shirts', () => {
		const garments = ['oat', 'rust', 'ink', 'teal'].flatMap((name, index) => {
			const lab = [OAT, RUST, INK, TEAL][index]!;
			return [shirt(`${name} shirt`, lab), aGarment({ id: `${name} T-shirt`, kind: 't-shirt', lab })];
		});
		const bottoms = [inkTrousers('trousers')];
		const asked = (name: string, like: 'work' | 'outdoors') =>
			lineUpOf({
				garments: [
					...garments.map((one) => (one.kind === 't-shirt' ? { ...one, occasions: ['hikes'] } : one)),
					...bottoms,
				],
				quotas: { top: 4, bottom: 1 },
				days: { occasions: [{ name, like, daysAWeek: 4 }] },
			}).garmentIds;
		expect(asked('hikes', 'outdoors').filter((id) => id.endsWith('T-shirt'))).toHaveLength(4);
		expect(asked('office', 'work').filter((id) => id.endsWith(' shirt'))).toHaveLength(4);
	});

	it('breaks a tie by the largest gap, never by the id', () => {
		for (const [oat, teal] of [
			['a', 'b'],
			['b', 'a'],
		] as const) {
			const garments = [shirt('held', OAT), shirt(oat, OAT), shirt(teal, TEAL)];
			expect(lineUpOf({ garments, quotas: { top: 2 }, mustKeep: ['held'] }).garmentIds).toContain(teal);
		}
		const twins = (first: string, second: string) => [
			shirt(first, OAT, { name: 'one', boughtOn: '2020-01-01' }),
			shirt(second, OAT, { name: 'two', boughtOn: '2024-01-01' }),
		];
		expect(lineUpOf({ garments: twins('a', 'b'), quotas: { top: 1 } }).garmentIds).toEqual(['a']);
		expect(lineUpOf({ garments: twins('z', 'b'), quotas: { top: 1 } }).garmentIds).toEqual(['z']);
	});
});
