import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { lonersOf } from '../../../src/wardrobe/pairs/loners.ts';
import type { PairContext } from '../../../src/wardrobe/pairs/support.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { aGarment, aPalette, aPaletteColour, aSwatch } from '../../support/build-wardrobe.ts';
import { apartBy } from '../../support/colours-apart.ts';

const MAGENTA: Lab65 = [55, 80, -20];
const nothing: PairContext = { palette: { colours: [] }, pairings: [], pairWords: [], wornTogether: [] };

/** Near-neutrals and olives, as most of a real wardrobe is, and whatever else is put in. */
const quietWardrobe = (...more: Garment[]): Garment[] => [
	aGarment({ id: 'jeans', kind: 'jeans', lab: [30, 0, -9] }),
	aGarment({ id: 'trousers', kind: 'trousers', lab: [40, 1, 8] }),
	aGarment({ id: 'skirt', kind: 'skirt', lab: [42, -8, 28] }),
	aGarment({ id: 'boots', kind: 'boots', lab: [25, 6, 9] }),
	aGarment({ id: 'shoes', kind: 'shoes', lab: [90, 0, 2] }),
	aGarment({ id: 'coat', kind: 'coat', lab: [55, 3, 12] }),
	aGarment({ id: 'shirt', kind: 'shirt', lab: [85, 0, 4] }),
	...more,
];
const loud = (changes: Partial<Garment> = {}) => aGarment({ id: 'loud', kind: 'jumper', lab: MAGENTA, ...changes });

describe('the garment that goes with nothing', () => {
	it('is found, ranked first and put as a question', () => {
		const [first] = lonersOf(quietWardrobe(loud()), nothing);
		expect(first).toMatchObject({ garmentId: 'loud', rank: 1, flagged: true, possiblePartners: 7 });
		expect(first!.nearestDistance).toBeGreaterThan(20);
		expect(first!.held).toBeGreaterThanOrEqual(0.7);
		expect(first!.sentence).toMatch(
			/^Does loud go with anything\? .+ could carry it: wear the two together, .+New photos (would most likely say the same|may say otherwise)\.$/,
		);
	});

	it('is carried by something as large as it that is worn at the same time of the year', () => {
		const summery = loud({ id: 'loud skirt', kind: 'skirt', yearParts: ['summer'] });
		const shoes = aGarment({ id: 'pink boots', kind: 'boots', lab: [60, 40, -15] });
		const coat = aGarment({ id: 'plum coat', kind: 'coat', lab: [50, 35, -10] });
		const top = aGarment({ id: 'mauve top', kind: 'top', lab: [60, 25, -8] });
		const named = (...more: Garment[]) =>
			lonersOf(quietWardrobe(summery, ...more), nothing).find(({ garmentId }) => garmentId === 'loud skirt')!.carrierId;
		expect(named(shoes, coat, top)).toBe('mauve top');
		expect(['shirt', 'coat']).toContain(named(shoes, coat));
		expect(named(shoes, coat)).not.toBe('plum coat');
	});

	it('is not flagged when a partner wears nearly its colour', () => {
		const partner = aGarment({ id: 'partner', kind: 'skirt', lab: [50, 70, -10] });
		expect(lonersOf(quietWardrobe(loud(), partner), nothing).filter(({ flagged }) => flagged)).toEqual([]);
	});

	it('is not alone where a partner differs by what its photo’s light may have done to it', () => {
		const lighter = (untold: boolean) =>
			aGarment({
				id: 'partner',
				kind: 'skirt',
				lab: apartBy(MAGENTA, 12),
				trust: { error: 9, reasons: [], advice: null, untold },
			});
		const told = (untold: boolean) =>
			lonersOf(quietWardrobe(loud(), lighter(untold)), nothing).find(({ garmentId }) => garmentId === 'loud')!.sentence;
		expect(told(true)).toContain('not alone: partner wears nearly its colour');
		expect(told(false)).not.toContain('not alone');
	});

	it('is not flagged when the palette holds it, the user wore or approved it with something, or a picture shows it', () => {
		const inPalette = { ...nothing, palette: { colours: [aPaletteColour('magenta', MAGENTA)] } };
		expect(lonersOf(quietWardrobe(loud()), inPalette)).not.toContainEqual(
			expect.objectContaining({ garmentId: 'loud' }),
		);
		const worn = { ...nothing, wornTogether: [{ garmentA: 'loud', garmentB: 'jeans', days: 1 }] };
		expect(lonersOf(quietWardrobe(loud()), worn)).not.toContainEqual(expect.objectContaining({ garmentId: 'loud' }));
		const shown = {
			...nothing,
			pairings: [
				{ slotA: 'top', labA: MAGENTA, slotB: 'bottom', labB: [30, 0, -9], kindA: null, kindB: null, photos: 1 },
			],
		} satisfies PairContext;
		expect(lonersOf(quietWardrobe(loud()), shown)).not.toContainEqual(expect.objectContaining({ garmentId: 'loud' }));
	});

	it('is never a neutral, and never found among fewer than four possible partners', () => {
		expect(
			lonersOf(quietWardrobe(aGarment({ id: 'grey', lab: [50, 3, 3] })), nothing).map(({ garmentId }) => garmentId),
		).not.toContain('grey');
		expect(lonersOf([loud(), ...quietWardrobe().slice(0, 3)], nothing)).toEqual([]);
	});

	it('names the garment that could carry it: one of a near hue before one that is only nearer', () => {
		const carrierWith = (...more: Garment[]) =>
			lonersOf(quietWardrobe(loud(), ...more), nothing).find(({ garmentId }) => garmentId === 'loud')!;
		const pale = aGarment({ id: 'pale', kind: 'skirt', lab: [85, 14, -3] });
		expect(carrierWith(pale)).toMatchObject({ carrierId: 'pale' });
		expect(carrierWith(pale).sentence).toContain('pale could carry it');
		const partner = aGarment({ id: 'partner', kind: 'skirt', lab: [54, 74, -16] });
		expect(carrierWith(partner).sentence).toBe(
			'loud lies outside the palette, but not alone: partner wears nearly its colour.',
		);
	});

	it('is told apart from one that only lies outside the palette', () => {
		const dusty = aGarment({ id: 'dusty', kind: 'shirt', lab: [55, 22, 8] });
		const told = lonersOf(quietWardrobe(dusty), nothing).find(({ garmentId }) => garmentId === 'dusty')!;
		expect(told).toMatchObject({ flagged: false, held: 0 });
		expect(told.sentence).toMatch(
			/^dusty lies outside the palette, but not far from what you own; .+ could carry it\.$/,
		);
	});

	it('is less sure the worse the photos are', () => {
		const blurred = quietWardrobe(loud()).map((garment) => ({
			...garment,
			swatches: garment.id === 'loud' ? [aSwatch([50, 59, -18], 1, 'top')] : garment.swatches,
			trust: { ...garment.trust, error: 15 },
		}));
		const sharp = blurred.map((garment) => ({ ...garment, trust: { ...garment.trust, error: 1 } }));
		const heldBy = (garments: Garment[]) =>
			lonersOf(garments, nothing).find(({ garmentId }) => garmentId === 'loud')!.held;
		expect(heldBy(sharp)).toBe(1);
		expect(heldBy(blurred)).toBeLessThan(1);
	});

	it('is flagged at most three times at once', () => {
		const many = [0, 1, 2, 3, 4].map((n) => loud({ id: `loud ${n}` }));
		const told = lonersOf(quietWardrobe(...many), nothing);
		expect(told.filter(({ flagged }) => flagged)).toHaveLength(3);
		// What stands alone in every re-read is not called unclear because three others do so too.
		for (const { held, sentence } of told.slice(0, 5)) {
			expect(held).toBe(1);
			expect(sentence).toMatch(/^Does .+ New photos would most likely say the same\.$/);
		}
	});

	it('is flagged though louder garments that carry each other stand before it', () => {
		// Three pinks and a skirt worn with them; the orange shoes go with nothing. Common practice, no source.
		const pinks = [80, 84, 88].map((a) => loud({ id: `pink ${a}`, lab: [55, a, -20] } as Partial<Garment>));
		const skirt = aGarment({ id: 'pink skirt', kind: 'skirt', lab: [56, 82, -18] });
		const orange = aGarment({ id: 'orange', kind: 'shoes', lab: [66, 40, 62] });
		const told = lonersOf(quietWardrobe(...pinks, skirt, orange), nothing);
		expect(told.slice(0, 3).every(({ garmentId }) => garmentId.startsWith('pink'))).toBe(true);
		expect(told.filter(({ flagged }) => flagged).map(({ garmentId }) => garmentId)).toEqual(['orange']);
	});

	it('is the same again, and whatever the order of the wardrobe', () => {
		const garments = quietWardrobe(loud(), loud({ id: 'loud too', lab: [60, 60, 60] } as Partial<Garment>));
		expect(lonersOf([...garments].reverse(), nothing)).toEqual(lonersOf(garments, nothing));
	});

	it('is the same in another home, where the same photos belong to garments of other ids', () => {
		const blurred = quietWardrobe(loud({ swatches: [aSwatch([50, 59, -18], 1, 'top')] })).map((garment, index) => ({
			...garment,
			photoIds: [`photo ${index}`],
			trust: { ...garment.trust, error: 15 },
		}));
		const elsewhere = blurred.map((garment, index) => ({ ...garment, id: `other ${10 - index}` }));
		const heldBy = (garments: Garment[]) => lonersOf(garments, nothing).map(({ held }) => held);
		expect(heldBy(blurred).some((held) => held > 0 && held < 1)).toBe(true);
		expect(heldBy(elsewhere)).toEqual(heldBy(blurred));
	});

	it('is nobody in an empty wardrobe, a wardrobe of one, and one of equal colours', () => {
		expect(lonersOf([], nothing)).toEqual([]);
		expect(lonersOf([loud()], nothing)).toEqual([]);
		const equal = quietWardrobe(loud()).map((garment) => ({ ...garment, swatches: [aSwatch(MAGENTA)] }));
		expect(lonersOf(equal, { ...nothing, palette: aPalette() }).filter(({ flagged }) => flagged)).toEqual([]);
		expect(
			lonersOf(
				equal.map((garment) => ({ ...garment, swatches: [] })),
				nothing,
			),
		).toEqual([]);
	});
});
