import { describe, expect, it } from 'vitest';
import { checkCandidate } from '../../../src/wardrobe/wishes/candidate-check.ts';
import { aCandidate, aSeasonInput, aWish } from '../../support/build-season.ts';
import { aGarment, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { piece } from '../pictures/build-picture.ts';

const garments = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'oat skirt', kind: 'skirt', lab: OAT }),
	aGarment({ id: 'ink boots', kind: 'boots', lab: INK }),
];
const input = aSeasonInput({ garments, wishes: [aWish()] });
const check = (changes = {}, more = {}) => checkCandidate(aCandidate(changes), { ...input, ...more });

describe('the check of a candidate', () => {
	it('recommends what answers a wish, fits and costs no more than the limit', () => {
		const result = check();
		expect(result).toMatchObject({
			candidateId: 'candidate',
			wishId: 'wish',
			partnerCount: 4,
			// With each bottom, alone or over the shirt.
			outfitsAdded: { likely: 4, from: 4, to: 4 },
			shareOfBest: 1,
			recommendation: 'take',
			twins: [],
		});
		// 60 over two years of 20 wears, as the wish expects.
		expect(result.expectedCostPerWear).toBe(1.5);
		expect(result.reasons.join(' ')).toContain('It answers the wish “rust jumper”.');
		expect(result.reasons.join(' ')).toContain('within your limit of 80');
	});

	it('says what part of the outfits it adds that a piece of its slot could add', () => {
		const lime = aGarment({ id: 'lime skirt', kind: 'skirt', lab: [85, -40, 75] });
		const halved = check({}, { garments: [garments[1]!, lime], wishes: [] });
		expect(halved.outfitsAdded.likely).toBe(1);
		expect(halved.shareOfBest).toBe(0.5);
	});

	it('asks for a better photo where the colour cannot be told, and only then', () => {
		const { swatches } = aGarment({ id: 'x', kind: 'jumper', lab: [53, 34, 34] });
		const badPhoto = { error: 12, reasons: ['a lamp, and nothing neutral in the picture'], advice: null };
		const unsure = check({ trust: badPhoto, swatches });
		expect(unsure.fit.verdict).toBe('unsure');
		expect(unsure.recommendation).toBe('ask');
		expect(unsure.sentence).toContain('a sheet of white paper');
		expect(check({ trust: badPhoto, swatches, price: 100 }).recommendation).toBe('think');
		const young = { wishes: [aWish({ wantedSince: '2026-03-09' })] };
		expect(check({ trust: badPhoto, swatches, price: 100, used: false }, young).recommendation).toBe('leave');
		expect(check({}).sentence).not.toContain('paper');
	});

	it('tells to leave what lies off the palette', () => {
		const { swatches } = aGarment({ id: 'x', kind: 'jumper', lab: [85, -40, 75] });
		expect(check({ swatches })).toMatchObject({ recommendation: 'leave', wishId: null });
	});

	it('tells to think where something speaks against it or no wish asks for it', () => {
		expect(check({ price: 81 })).toMatchObject({ recommendation: 'think' });
		expect(check({ price: 81 }).reasons.join(' ')).toContain('It costs 81, over your limit of 80.');
		expect(check({ price: 81 }).sentence).toBe('Think about it. It costs 81, over your limit of 80.');
		const rust = aGarment({ id: 'rust skirt', kind: 'skirt', lab: RUST });
		const covered = { wishes: [], garments: [...garments, rust, { ...rust, id: 'another', kind: 'dress' as const }] };
		expect(check({}, covered)).toMatchObject({ recommendation: 'think', wishId: null, fills: null });
	});

	it('counts a piece that fills a gap as wanted, though no wish was written', () => {
		const filling = check({}, { wishes: [] });
		expect(filling).toMatchObject({ recommendation: 'take', wishId: null });
		expect(filling.sentence).toBe('Take it. It is rust, of which you still have too little.');
	});

	it('knows the very photo of an owned piece', () => {
		const owned = aGarment({ id: 'mine', kind: 'shirt', lab: TEAL, photoIds: ['photo'], name: 'My jumper' });
		expect(check({}, { garments: [...garments, owned] })).toMatchObject({
			recommendation: 'own',
			sentence: 'You own this: My jumper has the very same photo.',
		});
	});

	it('names a twin that is owned', () => {
		const twin = aGarment({ id: 'own rust jumper', kind: 'jumper', lab: [45.5, 38, 40] });
		const result = check({}, { garments: [...garments, twin] });
		expect(result.twins.map(({ garmentA, garmentB }) => [garmentA, garmentB].sort())).toEqual([
			['candidate', 'own rust jumper'],
		]);
		expect(result.recommendation).not.toBe('take');
	});

	it('asks to think where something owned is likely its twin, and says so first', () => {
		const untold = { error: 10, reasons: [], advice: null, untold: true };
		const twin = aGarment({ id: 'own rust jumper', kind: 'jumper', lab: [47, 37, 38], trust: untold });
		const result = check({ trust: untold }, { garments: [...garments, twin] });
		expect(result.twins).toMatchObject([{ sureness: 'maybe' }]);
		expect(result.recommendation).toBe('think');
		expect(result.sentence).toContain('are likely the same colour');
	});

	it('holds new pieces back until the waiting time is over', () => {
		expect(check({ used: false })).toMatchObject({ recommendation: 'take' });
		expect(check({ used: false }).reasons.join(' ')).toContain('new is allowed: you have wanted it for 68 days');
		const young = { wishes: [aWish({ wantedSince: '2026-03-01' })] };
		expect(check({ used: false }, young)).toMatchObject({ recommendation: 'think' });
		expect(check({ used: false }, young).reasons.join(' ')).toContain('New is allowed in 21 days');
		expect(check({ used: true }, young)).toMatchObject({ recommendation: 'take' });
	});

	it('answers the nearest wish of its slot within tolerance and trust', () => {
		const wishes = [
			aWish({ id: 'far', target: [45, 20, 60] }),
			aWish({ id: 'other kind', kind: 'shirt' }),
			aWish({ id: 'other slot', slot: 'bottom' }),
			aWish({ id: 'done', state: 'answered' }),
			aWish({ id: 'near', target: [47, 36, 38] }),
		];
		expect(check({}, { wishes }).wishId).toBe('near');
		expect(check({}, { wishes: wishes.slice(0, 4) }).wishId).toBeNull();
		expect(check({}, { wishes: [aWish({ target: null })] }).wishId).toBe('wish');
	});

	it('expects the wears that such pieces got this year, not over all years', () => {
		const wishes = [aWish({ expectedWearsPerYear: null })];
		const shirt = { ...garments[0]!, price: 50 };
		const days = ['2020-01-01', '2020-01-02', '2020-01-03', '2026-01-01', '2026-01-02', '2030-01-01'];
		const wears = days.map((on) => ({ garmentId: shirt.id, on }));
		const result = check({}, { wishes, wears, garments: [shirt, ...garments.slice(1)] });
		expect(result.expectedCostPerWear).toBe(60 / (2 * 2));
		expect(result.usualCostPerWear).toBe(10);
		expect(check({}, { wishes, wears: [] }).usualCostPerWear).toBeNull();
	});

	it('says plainly what a missing or zero price means', () => {
		const untold = check({ price: null });
		expect(untold.expectedCostPerWear).toBeNull();
		expect(untold.reasons.join(' ')).toContain('Tell its price to see what it would cost a wear.');
		expect(check({ price: 0 }).reasons.join(' ')).toContain('It costs nothing.');
		expect(check({}, { wishes: [aWish({ expectedWearsPerYear: 0 })] }).expectedCostPerWear).toBeNull();
	});

	it('gives an answer without palette, without wardrobe and without colours', () => {
		const alone = checkCandidate(aCandidate(), aSeasonInput({ palette: { colours: [] } }));
		expect(alone).toMatchObject({
			partnerCount: 0,
			outfitsAdded: { likely: 0, from: 0, to: 0 },
			shareOfBest: 0,
			recommendation: 'think',
		});
		expect(alone.reasons.join(' ')).toContain('Nothing you own is known to go with it.');
		expect(check({ swatches: [] }).recommendation).toBe('ask');
		const spotted = check({ swatches: [aSwatch(RUST, 0.6, 'top'), aSwatch(OAT, 0.4, 'top')] });
		expect(JSON.stringify(spotted)).not.toContain('null,null,null');
	});

	it('says which piece of the pictures it is, where nothing owned answers that piece', () => {
		const plum: [number, number, number] = [30, 25, -15];
		const inspirations = ['a', 'b'].map((id) => ({
			inspiration: { id, seasonId: 'spring', photoId: id, title: id, group: '', addedAt: '' },
			reading: aReading([aSwatch(plum, 1, 'outer')], { pieces: [piece('coat', plum)] }),
		}));
		const { swatches } = aGarment({ id: 'x', kind: 'coat', lab: plum });
		const result = check({ kind: 'coat', swatches }, { inspirations, wishes: [] });
		expect(result.fills).toMatch(/^It is the .*coat that you lack, seen in 2 pictures\.$/);
		expect(check({ kind: 'hat', swatches }, { inspirations, wishes: [] }).fills).toBeNull();
	});
});
