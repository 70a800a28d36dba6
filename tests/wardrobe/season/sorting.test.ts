import { describe, expect, it } from 'vitest';
import { fitOf } from '../../../src/wardrobe/fit/fit.ts';
import { type SortingFacts, sortingOf } from '../../../src/wardrobe/season/sorting.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { garmentWears } from '../../../src/wardrobe/words/garment-wears.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import { aGarment, aPalette, OAT } from '../../support/build-wardrobe.ts';

const { season, today } = aSeasonInput();
const LIME = [85, -40, 75] as const;

/** The suggestion for a garment worn on these days, in a home where wears are noted. */
function sorted(garment: Garment, days: readonly string[] = [], facts: Partial<SortingFacts> = {}, wearsNoted = true) {
	const [wear] = garmentWears(
		[garment],
		days.map((on) => ({ garmentId: garment.id, on })),
		today,
	);
	const known = {
		fit: fitOf(garment, aPalette()),
		wear: wear!,
		knownSince: '2025-02-03',
		knownDays: 400,
		loner: null,
		wornMore: null,
	};
	return sortingOf(garment, { ...known, ...facts }, season, wearsNoted);
}

describe('sorting', () => {
	it('keeps what fits or is worn often, and says why', () => {
		expect(sorted(aGarment({ id: 'oat', lab: OAT }), ['2026-02-01'])).toMatchObject({
			suggestion: 'keep',
			wayOut: null,
		});
		const often = Array.from({ length: 12 }, (_, n) => `2026-02-${String(n + 1).padStart(2, '0')}`);
		const { suggestion, sentence } = sorted(aGarment({ id: 'lime', lab: LIME }), often);
		expect(suggestion).toBe('keep');
		expect(sentence).toContain('worn 12 times in twelve months');
	});

	it('keeps what was worn some times where its colour likely fits, and says how to decide on what was not', () => {
		const unsure = aGarment({ id: 'near oat', lab: [75, 1, 11], trust: { error: 12, reasons: [], advice: null } });
		const some = ['2026-01-01', '2026-02-01', '2026-03-01'];
		expect(sorted(unsure, some)).toMatchObject({ suggestion: 'keep' });
		expect(sorted(unsure, some.slice(1))).toMatchObject({ suggestion: 'keep' });
		expect(sorted({ ...unsure, loved: 0 }, some.slice(1)).sentence).toMatch(
			/^Up to you: .+ Look at it in daylight, then decide\.$/,
		);
		expect(sorted(unsure).sentence).toMatch(/^Up to you: .+ Wear it once, in daylight, then decide\.$/);
	});

	it('lets go what lies off the season and was not worn for two of them, with a way out', () => {
		const lime = { id: 'lime', lab: LIME } as const;
		const old = ['2024-01-01'];
		expect(sorted(aGarment({ ...lime, price: 40 }), old)).toMatchObject({ suggestion: 'let-go', wayOut: 'sell' });
		expect(sorted(aGarment(lime), old)).toMatchObject({ suggestion: 'let-go', wayOut: 'swap' });
		expect(sorted(aGarment({ ...lime, condition: 'worn' }), old)).toMatchObject({ wayOut: 'give' });
		expect(sorted(aGarment({ ...lime, condition: 'worn-out' }), old)).toMatchObject({ wayOut: 'recycle' });
		expect(sorted(aGarment({ ...lime, condition: 'worn-out', loved: 2 }), old)).toMatchObject({ wayOut: 'mend' });
		expect(sorted(aGarment({ ...lime, wayOut: 'give', price: 40 }), old)).toMatchObject({ wayOut: 'give' });
	});

	it('keeps year-round basics whatever else is said of them', () => {
		expect(
			sorted(aGarment({ id: 'basic', lab: LIME, basic: true, condition: 'worn-out' }), ['2023-01-01']),
		).toMatchObject({
			suggestion: 'keep',
			reasons: ['it is a year-round basic', 'it is worn out: mend it, or wish for another'],
		});
	});

	it('stores what serves another part of the year, and leaves in store what is there', () => {
		const winter = { id: 'winter coat', kind: 'coat', lab: OAT, yearParts: ['winter'] } as const;
		expect(sorted(aGarment(winter)).sentence).toBe('Store it: it is for winter, not spring.');
		expect(sorted(aGarment({ ...winter, place: 'stored' })).sentence).toBe(
			'Leave it in store: it is for winter, not spring.',
		);
		expect(sorted(aGarment({ ...winter, yearParts: ['winter', 'spring'] }), ['2026-02-01']).suggestion).toBe('keep');
	});

	it('brings back what is stored and fits', () => {
		expect(sorted(aGarment({ id: 'oat', lab: OAT, place: 'stored' }), ['2025-05-01']).sentence).toMatch(
			/^Bring it back/,
		);
	});

	it('does not hold it against a garment that nobody notes wears, or that it is new here', () => {
		const plain = aGarment({ id: 'lime', lab: LIME });
		expect(sorted(plain, [], {}, false).reasons.join()).not.toContain('no wear');
		expect(sorted(plain, [], { knownDays: 30 }).reasons.join()).not.toContain('no wear');
		expect(sorted(plain).reasons.join()).toContain('no wear');
	});

	it('speaks of a colour that is likely off or likely fits, where the photo does not allow more', () => {
		const blurred = { error: 12, reasons: [], advice: null };
		const near = aGarment({ id: 'far', lab: [58, 1, 11], trust: blurred });
		expect(sorted(near, ['2026-02-01']).reasons.join()).toContain(
			'likely off the palette of Spring, from 1 Mar 2026 on',
		);
		expect(sorted(aGarment({ id: 'oat', lab: [78, 1, 11], trust: blurred }), ['2026-02-01']).reasons.join()).toContain(
			'likely fits the season',
		);
	});

	it('counts two seasons of its own: a winter coat has longer than what serves all year', () => {
		const days = ['2025-05-01'];
		expect(sorted(aGarment({ id: 'all year', lab: LIME }), days).reasons.join()).toContain(
			'it was last worn on 1 May 2025, and two of its seasons have passed',
		);
		const springOnly = aGarment({ id: 'spring', lab: LIME, yearParts: ['spring'] });
		expect(sorted(springOnly, days).reasons.join()).not.toContain('last worn');
	});

	it('keeps what is near where nothing speaks against it, and brings nothing back for that alone', () => {
		const near = aGarment({ id: 'near', lab: [66, 3, 14], trust: { error: 0.5, reasons: [], advice: null } });
		const told = sorted(near, ['2026-02-01']);
		expect(told).toMatchObject({ suggestion: 'keep', reasons: ['its colour is near the season’s'] });
		expect(sorted({ ...near, place: 'stored' }, ['2026-02-01']).suggestion).toBe('undecided');
		expect(sorted({ ...near, loved: 0 }, ['2026-02-01']).suggestion).toBe('undecided');
	});

	it('gives each reason its date', () => {
		const twin = { name: 'the other', wears: 9, since: '2025-06-01' };
		const lime = aGarment({ id: 'lime', lab: LIME, condition: 'worn-out', conditionSince: '2026-02-14' });
		expect(sorted(lime, ['2026-02-01'], { wornMore: twin }).reasons).toEqual([
			'it is worn out, as you said on 14 Feb 2026',
			'its colour is off the palette of Spring, from 1 Mar 2026 on',
			'the other is nearly the same and has 9 wears noted, this one 1; you have had both since 1 Jun 2025',
		]);
		const { conditionSince: _untold, ...older } = lime;
		expect(sorted(older, ['2026-02-01']).reasons[0]).toBe('it is worn out');
	});

	it('leaves undecided what little speaks for or against', () => {
		expect(sorted(aGarment({ id: 'lime', lab: LIME }), ['2026-02-01'])).toMatchObject({
			suggestion: 'undecided',
			wayOut: null,
		});
		const unknown = sorted(aGarment({ id: 'no photo', swatches: [] }), ['2026-02-01']);
		expect(unknown).toMatchObject({
			suggestion: 'undecided',
			reasons: ['nothing speaks clearly for or against it yet'],
		});
	});

	it('does not argue with a decision to part', () => {
		const { suggestion, sentence } = sorted(aGarment({ id: 'oat', lab: OAT, place: 'leaving', wayOut: 'give' }), [
			'2026-03-01',
		]);
		expect(suggestion).toBe('let-go');
		expect(sentence).toBe('Let it go (give away): you decided that it leaves.');
	});
});
