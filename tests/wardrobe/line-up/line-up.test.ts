import { describe, expect, it } from 'vitest';
import { generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import { daysOfSeason } from '../../../src/wardrobe/days/usual-days.ts';
import { buildLineUp } from '../../../src/wardrobe/line-up/line-up.ts';
import type { LineUpRequest } from '../../../src/wardrobe/line-up/line-up-choices.ts';
import { lineUpSetup } from '../../../src/wardrobe/line-up/line-up-setup.ts';
import { slotOfKind } from '../../../src/wardrobe/words/kind.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

const { season } = aSeasonInput();
const NOTHING_WANTED = { top: 0, outer: 0, bottom: 0, full: 0, legwear: 0, shoes: 0, accessory: 0 };
const request = (changes: Partial<LineUpRequest> = {}): LineUpRequest => ({
	quotas: season.quotas,
	targetCount: season.targetCount,
	mustKeep: [],
	neverUse: [],
	...changes,
});

const few = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'rust shirt', kind: 'shirt', lab: RUST }),
	aGarment({ id: 'lime shirt', kind: 'shirt', lab: [85, -40, 75] }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'teal skirt', kind: 'skirt', lab: TEAL }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
	aGarment({ id: 'oat coat', kind: 'coat', lab: OAT }),
	aGarment({ id: 'rust jacket', kind: 'jacket', lab: RUST }),
];
const input = aSeasonInput({ garments: few });
const wanting = (quotas: Partial<typeof NOTHING_WANTED>, changes: Partial<LineUpRequest> = {}) => {
	const all = { ...NOTHING_WANTED, ...quotas };
	const targetCount = Object.values(all).reduce((sum, one) => sum + one, 0);
	return request({ quotas: all, targetCount, ...changes });
};

describe('a line-up', () => {
	it('takes what goes together and says how good that is known to be', () => {
		const result = buildLineUp(input, wanting({ top: 2, bottom: 2, shoes: 1, outer: 1 }));
		expect(result.garmentIds).not.toContain('lime shirt');
		expect(result.countBySlot).toMatchObject({ top: 2, bottom: 2, shoes: 1, outer: 1 });
		// 2 tops x 2 bottoms x 1 pair of shoes, with or without the coat.
		expect(result.outfits).toEqual({ likely: 8, from: 8, to: 8 });
		expect(result.proof.kind).not.toBe('best-found');
		expect(result.problems).toEqual([]);
		expect(result.sentence).toMatch(
			/^6 garments: \d of 7 days between washes dressed and \d+ % of the palette covered\. (No other choice is better|It is within \d+ % of the best possible)\./,
		);
	});

	it('says which quotas cannot be met, and by how much', () => {
		const { problems, garmentIds } = buildLineUp(input, wanting({ top: 5, bottom: 1, shoes: 3 }));
		expect(problems).toEqual([
			'Tops: 5 wanted, 2 can be chosen, 3 too few.',
			'Shoes: 3 wanted, 1 can be chosen, 2 too few.',
		]);
		expect(garmentIds).toHaveLength(4);
	});

	it('keeps what must be kept even where it is too much, and says so', () => {
		const { garmentIds, problems } = buildLineUp(
			input,
			wanting({ top: 1, bottom: 1 }, { mustKeep: ['lime shirt', 'rust shirt'] }),
		);
		expect(garmentIds).toEqual(expect.arrayContaining(['lime shirt', 'rust shirt']));
		expect(problems).toEqual(['Tops: 1 wanted, 2 must be kept, 1 too many. All are kept.']);
	});

	it('names must-keeps that contradict something else that was said', () => {
		const garments = [...few, aGarment({ id: 'old shirt', place: 'leaving' })];
		const { problems, garmentIds } = buildLineUp(
			{ ...input, garments },
			wanting({ top: 2 }, { mustKeep: ['oat shirt', 'old shirt', 'no such'], neverUse: ['oat shirt', 'rust shirt'] }),
		);
		expect(problems.join(' ')).toContain('oat shirt is both to be kept and never to be used');
		expect(problems.join(' ')).toContain('old shirt must be kept, but is leaving');
		expect(problems.join(' ')).toContain('no longer in the wardrobe');
		expect(garmentIds).toContain('oat shirt');
		expect(garmentIds).not.toContain('rust shirt');
		expect(garmentIds).not.toContain('old shirt');
	});

	it('says of a must-keep of another part of the year that it is one, and keeps it', () => {
		const garments = [...few, aGarment({ id: 'linen shirt', yearParts: ['summer'] })];
		const { problems, garmentIds } = buildLineUp(
			{ ...input, garments },
			wanting({ top: 2 }, { mustKeep: ['linen shirt'] }),
		);
		expect(problems).toContain('linen shirt must be kept, but it is for summer, not spring.');
		expect(garmentIds).toContain('linen shirt');
	});

	it('has an outer piece that is warm enough, or says that none is', () => {
		const cold = { ...input, season: { ...season, days: { ...daysOfSeason(season), coldDay: 0 } } };
		expect(buildLineUp(cold, wanting({ outer: 1 })).garmentIds).toEqual(['oat coat']);
		const noCoat = { ...cold, garments: few.filter(({ kind }) => kind !== 'coat') };
		expect(buildLineUp(noCoat, wanting({ outer: 1 })).problems.join(' ')).toContain(
			'none that can be chosen is that warm',
		);
		const kept = buildLineUp(cold, wanting({ outer: 1 }, { mustKeep: ['rust jacket'] }));
		expect(kept.problems.join(' ')).toContain('none of them is that warm');
	});

	it('may bring back what is stored, never what is leaving or gone', () => {
		const garments = few.map((garment, index) => ({
			...garment,
			place: (['stored', 'leaving', 'gone'] as const)[index % 3]!,
		}));
		const chosen = buildLineUp({ ...input, garments }, request()).garmentIds;
		expect(new Set(chosen)).toEqual(new Set(garments.filter(({ place }) => place === 'stored').map(({ id }) => id)));
	});

	it('counts what is loved, or else what is worn', () => {
		const twin = (id: string, changes = {}) => aGarment({ id, kind: 'shirt', lab: OAT, ...changes });
		const loved = { ...input, garments: [twin('a'), twin('b', { loved: 3 })] };
		expect(buildLineUp(loved, wanting({ top: 1 })).garmentIds).toEqual(['b']);
		const wears = [{ garmentId: 'b', on: '2026-03-01' }];
		const worn = { ...input, garments: [twin('a'), twin('b')], wears };
		expect(buildLineUp(worn, wanting({ top: 1 })).garmentIds).toEqual(['b']);
		const tomorrow = { ...worn, wears: [{ garmentId: 'b', on: '2030-01-01' }] };
		expect(buildLineUp(tomorrow, wanting({ top: 1 })).garmentIds).toEqual(['a']);
	});

	it('counts for a palette colour only what is that colour, by the size of the piece', () => {
		const { garments, problem } = lineUpSetup(input, wanting({ top: 3, outer: 1 }, { mustKeep: ['lime shirt'] }));
		const held = (id: string) => {
			const colours = problem.colourWeights.length;
			const at = garments.findIndex((garment) => garment.id === id) * colours;
			return [...problem.holds.slice(at, at + colours)].map((cloth) => cloth > 0);
		};
		expect(held('lime shirt')).toEqual([false, false, false, false]);
		expect(held('rust shirt')).toEqual([false, false, true, false]);
	});

	it('is the same whatever the order of the garments', () => {
		const garments = generatedWardrobe(80, 'order');
		const one = buildLineUp({ ...input, garments }, request());
		const other = buildLineUp({ ...input, garments: [...garments].reverse() }, request());
		expect(other).toEqual(one);
		for (const [slot, count] of Object.entries(one.countBySlot))
			expect(one.garmentIds.filter((id) => slotOfKind(garments.find((g) => g.id === id)!.kind) === slot)).toHaveLength(
				count,
			);
	});

	it('of an empty wardrobe says so plainly', () => {
		const { sentence, outfits, objective, garmentIds } = buildLineUp(aSeasonInput(), request());
		expect(garmentIds).toEqual([]);
		expect([outfits.to, objective]).toEqual([0, 0]);
		expect(sentence).toContain('nothing to choose from');
		expect(buildLineUp(input, wanting({})).sentence).toContain('You ask for nothing yet');
	});
});
