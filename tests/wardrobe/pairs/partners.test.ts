import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { pairTable } from '../../../src/wardrobe/pairs/pair-table.ts';
import { pairingsFromReadings } from '../../../src/wardrobe/pairs/pairings.ts';
import { partnersIn, partnersOf, supportOf } from '../../../src/wardrobe/pairs/partners.ts';
import { isSupported, type PairContext, SUPPORT_KINDS } from '../../../src/wardrobe/pairs/support.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../../src/wardrobe/words/kind.ts';
import { aGarment, aPalette, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { apartBy } from '../../support/colours-apart.ts';

const VIOLET: Lab65 = [50, 50, -50];
const LIME: Lab65 = [85, -50, 70];
const nothing: PairContext = { palette: { colours: [] }, pairings: [], pairWords: [], wornTogether: [] };
const withPalette: PairContext = { ...nothing, palette: aPalette() };
const limeSkirt = aGarment({ id: 'skirt', kind: 'skirt', lab: LIME });
const violetShirt = aGarment({ id: 'shirt', lab: VIOLET });

const aWardrobe: fc.Arbitrary<Garment[]> = fc
	.array(
		fc.tuple(
			fc.constantFrom(...KIND_NAMES),
			fc.double({ min: 5, max: 95, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
		),
		{ minLength: 1, maxLength: 8 },
	)
	.map((parts) => parts.map(([kind, L, a, b], index) => aGarment({ id: `g${index}`, kind, lab: [L, a + 0, b + 0] })));

describe('what speaks for wearing two garments together', () => {
	it('is unproven, not no, where nothing speaks for it', () => {
		const support = supportOf(violetShirt, limeSkirt, withPalette);
		expect(support.kind).toBe('unproven');
		expect(support.sentence).toMatch(/Nothing speaks for shirt with skirt yet, and nothing against/);
		expect(isSupported('unproven')).toBe(false);
	});

	it("is first of all the user's own word, either way, whatever else holds", () => {
		const palettePair = [
			aGarment({ id: 'shirt', lab: OAT }),
			aGarment({ id: 'skirt', kind: 'skirt', lab: RUST }),
		] as const;
		const said = (word: 'approved' | 'refused') => ({
			...withPalette,
			pairWords: [{ garmentA: 'skirt', garmentB: 'shirt', word }],
			wornTogether: [{ garmentA: 'shirt', garmentB: 'skirt', days: 3 }],
		});
		expect(supportOf(...palettePair, said('refused')).kind).toBe('no');
		expect(supportOf(violetShirt, limeSkirt, said('approved'))).toEqual({
			kind: 'approved',
			sentence: 'You said that shirt and skirt go together.',
		});
	});

	it('is having worn them together, before any colour is looked at', () => {
		const context = { ...withPalette, wornTogether: [{ garmentA: 'skirt', garmentB: 'shirt', days: 3 }] };
		expect(supportOf(violetShirt, limeSkirt, context)).toEqual({
			kind: 'worn',
			sentence: 'You wore shirt and skirt on the same day, 3 times.',
		});
	});

	it('is a picture that wears both colours in the same two slots, and not in others', () => {
		const picture = aReading([aSwatch([51, 49, -50], 0.5, 'top'), aSwatch([84, -50, 69], 0.5, 'bottom')]);
		const context = { ...withPalette, pairings: pairingsFromReadings([picture, picture]) };
		const support = supportOf(violetShirt, limeSkirt, context);
		expect(support.kind).toBe('inspired');
		expect(support.sentence).toMatch(
			/^2 pictures of the season wear it: .+ \(tops\) with .+ \(trousers and skirts\)\.$/,
		);
		const turned = supportOf(
			aGarment({ id: 'a', lab: LIME }),
			aGarment({ id: 'b', kind: 'skirt', lab: VIOLET }),
			context,
		);
		expect(turned.kind).toBe('unproven');
	});

	it('is lying both in the palette, then a base neutral, then an echo, in this order', () => {
		const rust = aGarment({ id: 'rust', lab: RUST });
		const teal = aGarment({ id: 'teal', kind: 'trousers', lab: TEAL });
		expect(supportOf(rust, teal, withPalette).kind).toBe('palette');
		const ink = aGarment({ id: 'ink', kind: 'trousers', lab: INK });
		expect(supportOf(violetShirt, ink, withPalette)).toEqual({
			kind: 'base',
			sentence: 'ink is a base neutral of the season, which carries the others.',
		});
		const violetSkirt = aGarment({ id: 'violet', kind: 'skirt', lab: [52, 50, -49] });
		expect(supportOf(violetShirt, violetSkirt, withPalette).kind).toBe('echo');
	});

	it('is an echo when a print holds the partner’s colour', () => {
		const print = aGarment({
			id: 'print',
			kind: 'skirt',
			swatches: [aSwatch(LIME, 0.8, 'bottom'), aSwatch([51, 50, -50], 0.2, 'bottom')],
			pattern: { type: 'printed', sure: 0.9 },
		});
		expect(supportOf(violetShirt, print, withPalette).kind).toBe('echo');
		const trim = { ...print, swatches: [aSwatch(LIME, 0.95, 'bottom'), aSwatch([51, 50, -50], 0.05, 'bottom')] };
		expect(supportOf(violetShirt, trim, withPalette).kind).toBe('unproven');
	});

	it('never says that two colours clash: opposite hues are unproven, like any other unknown pair', () => {
		// Hue clash told worn from shuffled pairs no better than chance (measured on 1,004 outfits), so no rule of hue can give "no".
		for (let hue = 0; hue < 360; hue += 30) {
			const lab: Lab65 = [50, 50 * Math.cos((hue * Math.PI) / 180), 50 * Math.sin((hue * Math.PI) / 180)];
			expect(supportOf(violetShirt, aGarment({ id: 'b', kind: 'skirt', lab }), nothing).kind).not.toBe('no');
		}
	});

	it('is a base neutral where two thirds and more of a piece lie within reach of the base colours', () => {
		// Common practice, no source; the reach is 10, as for the fit.
		const skirt = (ink: Lab65, share: number) =>
			supportOf(
				violetShirt,
				aGarment({
					id: 'b',
					kind: 'skirt',
					swatches: [aSwatch(ink, share, 'bottom'), aSwatch(LIME, 1 - share, 'bottom')],
				}),
				withPalette,
			).kind;
		expect([skirt(INK, 0.75), skirt(INK, 0.6)]).toEqual(['base', 'unproven']);
		expect([skirt(apartBy(INK, 9), 1), skirt(apartBy(INK, 11), 1)]).toEqual(['base', 'unproven']);
	});

	it('is shown by a picture up to 10 away, in lightness further where nothing tells the photo’s light', () => {
		const picture = aReading([aSwatch(VIOLET, 0.5, 'top'), aSwatch(LIME, 0.5, 'bottom')]);
		const context = { ...withPalette, pairings: pairingsFromReadings([picture]) };
		const shirt = (away: number, untold = false) =>
			supportOf(
				aGarment({ id: 'shirt', lab: apartBy(VIOLET, away), trust: { error: 9, reasons: [], advice: null, untold } }),
				limeSkirt,
				context,
			).kind;
		expect([shirt(9), shirt(11), shirt(11, true), shirt(17, true)]).toEqual([
			'inspired',
			'unproven',
			'inspired',
			'unproven',
		]);
	});

	it('takes neutrals as base where the palette has no base yet', () => {
		expect(supportOf(violetShirt, aGarment({ id: 'b', kind: 'skirt', lab: [40, 3, 2] }), nothing).kind).toBe('base');
	});

	it('says so when two pieces take each other’s place, or when one has no colours', () => {
		const dress = aGarment({ id: 'dress', kind: 'dress', lab: OAT });
		expect(supportOf(violetShirt, dress, withPalette).sentence).toContain('take each other’s place');
		const unread = aGarment({ id: 'unread', kind: 'skirt', swatches: [] });
		expect(supportOf(violetShirt, unread, withPalette)).toMatchObject({
			kind: 'unproven',
			sentence: expect.stringContaining('no colours read yet'),
		});
	});

	it('is the same from either side, and one pair alone says what the whole table says', () => {
		fc.assert(
			fc.property(aWardrobe, (garments) => {
				const table = pairTable(garments, withPalette);
				for (const one of garments.keys())
					for (const other of garments.keys()) {
						if (one === other) continue;
						expect(table.kind(one, other)).toBe(table.kind(other, one));
						expect(supportOf(garments[one]!, garments[other]!, withPalette).kind).toBe(table.kind(one, other));
					}
			}),
			{ numRuns: 50 },
		);
	});
});

describe('partners', () => {
	const shirt = aGarment({ id: 'shirt', lab: RUST });
	const wardrobe = [
		shirt,
		aGarment({ id: 'other shirt', lab: RUST }),
		aGarment({ id: 'ink', kind: 'trousers', lab: INK }),
		aGarment({ id: 'teal', kind: 'trousers', lab: TEAL }),
		aGarment({ id: 'rusty', kind: 'skirt', lab: [46, 38, 41] }),
		aGarment({ id: 'lime', kind: 'skirt', lab: LIME }),
		aGarment({ id: 'refused', kind: 'skirt', lab: OAT }),
		aGarment({ id: 'worn', kind: 'skirt', lab: VIOLET }),
	];
	const context: PairContext = {
		...withPalette,
		pairWords: [{ garmentA: 'shirt', garmentB: 'refused', word: 'refused' }],
		wornTogether: [{ garmentA: 'shirt', garmentB: 'worn', days: 1 }],
	};

	it('come in the order of their support, echoes first within one kind; unproven and refused ones do not count', () => {
		const partners = partnersOf(shirt, wardrobe, context);
		expect(partners.map(({ garmentId }) => garmentId)).toEqual(['worn', 'rusty', 'ink', 'teal']);
		expect(partners.map(({ support }) => support.kind)).toEqual(['worn', 'palette', 'palette', 'palette']);
		expect(pairTable(wardrobe, context).partnerCount(wardrobe.indexOf(shirt))).toBe(4);
	});

	it('can be cut, and unproven ones asked for', () => {
		expect(partnersOf(shirt, wardrobe, context, 2)).toHaveLength(2);
		const table = pairTable(wardrobe, context);
		const open = partnersIn(table, 0, { include: (kind) => kind === 'unproven' });
		expect(open.map(({ garmentId }) => garmentId)).toEqual(['lime']);
	});

	it('do not depend on the order of the wardrobe', () => {
		fc.assert(
			fc.property(aWardrobe, (garments) => {
				const one = partnersOf(garments[0]!, garments, withPalette);
				expect(partnersOf(garments[0]!, [...garments].reverse(), withPalette)).toEqual(one);
			}),
		);
	});

	it('are none for the only garment, and serialise without NaN', () => {
		expect(partnersOf(shirt, [shirt], context)).toEqual([]);
		const partners = partnersOf(shirt, wardrobe, context);
		expect(JSON.parse(JSON.stringify(partners))).toEqual(partners);
	});

	it('kinds stand in the order that the outfits measured give', () => {
		expect(SUPPORT_KINDS).toEqual(['approved', 'worn', 'inspired', 'palette', 'base', 'echo', 'unproven', 'no']);
	});
});
