import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { bandsOf } from '../../../src/wardrobe/gaps/bands.ts';
import { gapsOf } from '../../../src/wardrobe/gaps/gaps.ts';
import { missingPieces } from '../../../src/wardrobe/gaps/missing-piece.ts';
import { pairContextOf } from '../../../src/wardrobe/pairs/pair-context.ts';
import type { SeasonInput } from '../../../src/wardrobe/words/season-input.ts';
import { aSeasonInput } from '../../support/build-season.ts';
import {
	aGarment,
	aPalette,
	aPaletteColour,
	aReading,
	aSwatch,
	INK,
	OAT,
	RUST,
	TEAL,
} from '../../support/build-wardrobe.ts';

const sum = (values: readonly number[]) => values.reduce((total, value) => total + value, 0);
const gapsIn = (input: SeasonInput) =>
	gapsOf(
		input,
		bandsOf(
			input.palette,
			input.garments.filter(({ place }) => place === 'rail'),
		),
		pairContextOf(input).pairings,
		missingPieces(input),
	);

const three = [
	aGarment({ id: 'oat shirt', kind: 'shirt', lab: OAT }),
	aGarment({ id: 'ink trousers', kind: 'trousers', lab: INK }),
	aGarment({ id: 'lime shirt', kind: 'shirt', lab: [85, -40, 75] }),
];

describe('the two bands', () => {
	it('neither lose nor invent anything: what is covered above is what the threads carry', () => {
		fc.assert(
			fc.property(fc.integer({ min: 1, max: 40 }), fc.string(), (count, seed) => {
				const { asked, held, threads } = bandsOf(aPalette(), generatedWardrobe(count, seed));
				expect(sum(asked.map(({ amount }) => amount))).toBeCloseTo(1, 9);
				expect(sum(held.map(({ amount }) => amount))).toBeCloseTo(1, 9);
				for (const { paletteColourId, amount, covered, missing } of asked) {
					expect(covered + missing).toBeCloseTo(amount, 9);
					const carried = threads.filter((thread) => thread.paletteColourId === paletteColourId);
					expect(sum(carried.map((thread) => thread.amount))).toBeCloseTo(covered, 9);
				}
				for (const { id, amount, surplus } of held)
					expect(
						sum(threads.filter(({ heldId }) => heldId === id).map((thread) => thread.amount)) + surplus,
					).toBeCloseTo(amount, 9);
			}),
			{ numRuns: 60, seed: 1 },
		);
	});

	it('let no charcoal cover a wide blue-green: a colour reaches as far as its spread, not beyond it', () => {
		// The two colours of the demo whose mix of river green and ink had a spread of 14: charcoal lies 17 from it.
		const palette = { colours: [aPaletteColour('wide', [42, -15, -10], { spread: 14.4, weight: 1 })] };
		const missingWith = (lab: Lab65) => bandsOf(palette, [aGarment({ id: 'g', lab })]).asked[0]!.missing;
		expect(missingWith([33, 0, -5])).toBeCloseTo(1, 9);
		// Within the spread it still counts.
		expect(missingWith([41, -2, -9])).toBeCloseTo(0, 9);
	});

	it('say what is missing and what is left over', () => {
		const { asked, held } = bandsOf(aPalette(), three);
		const missing = new Map(asked.map((one) => [one.paletteColourId, one.missing]));
		// A shirt is 1 of 3.1 parts of the cloth held, trousers 1.1: oat asks for 0.4, ink for 0.3.
		expect(missing.get('oat')).toBeCloseTo(0.4 - 1 / 3.1, 6);
		expect(missing.get('ink')).toBe(0);
		expect(missing.get('rust')).toBeCloseTo(0.2, 9);
		const lime = held.find(({ garmentIds }) => garmentIds.includes('lime shirt'))!;
		expect(lime.surplus).toBeCloseTo(lime.amount, 9);
		const ink = held.find(({ garmentIds }) => garmentIds.includes('ink trousers'))!;
		expect(ink.surplus).toBeCloseTo(1.1 / 3.1 - 0.3, 6);
	});

	it('are the same whatever the order of the garments', () => {
		const garments = generatedWardrobe(30, 'order');
		expect(bandsOf(aPalette(), [...garments].reverse())).toEqual(bandsOf(aPalette(), garments));
	});

	it('have nothing below for an empty wardrobe, and nothing above without a palette', () => {
		const nothingHeld = bandsOf(aPalette(), []);
		expect([nothingHeld.held, nothingHeld.threads]).toEqual([[], []]);
		expect(nothingHeld.asked.every(({ amount, missing }) => missing === amount)).toBe(true);
		const nothingAsked = bandsOf({ colours: [] }, three);
		expect(nothingAsked.asked).toEqual([]);
		expect(nothingAsked.held.every(({ amount, surplus }) => surplus === amount)).toBe(true);
		expect(bandsOf(aPalette(), [{ ...three[0]!, swatches: [] }]).held).toEqual([]);
	});
});

describe('a gap', () => {
	it('names the colour, the slot in which the pictures wear it, and what such a piece would add', () => {
		const reading = aReading([aSwatch(RUST, 0.5, 'outer'), aSwatch(INK, 0.5, 'bottom')]);
		const inspirations = [1, 2].map((n) => ({
			inspiration: { id: `i${n}`, seasonId: 'spring', photoId: `p${n}`, title: '', group: '', addedAt: '' },
			reading,
		}));
		const gap = gapsIn(aSeasonInput({ garments: three, inspirations })).find(({ id }) => id === 'colour rust')!;
		expect(gap).toMatchObject({ kind: 'colour', slot: 'outer', paletteColourId: 'rust', storedFirst: null });
		expect(gap.missing).toBeCloseTo(1, 9);
		// Over oat shirt and ink trousers; nothing speaks for the lime shirt with rust.
		expect(gap.outfitsAdded).toBe(1);
		expect(gap.sentence).toContain('1 outfit.');
	});

	it('is filled first by what is owned but stored', () => {
		const garments = [
			...three,
			aGarment({ id: 'old lime skirt', kind: 'skirt', lab: [85, -40, 75], place: 'stored' }),
			aGarment({ id: 'stored rust skirt', kind: 'skirt', lab: [46, 37, 40], place: 'stored' }),
		];
		const bottomOnly = aReading([aSwatch(RUST, 0.5, 'bottom'), aSwatch(OAT, 0.5, 'top')]);
		const inspirations = [
			{
				inspiration: { id: 'i', seasonId: 'spring', photoId: 'p', title: '', group: '', addedAt: '' },
				reading: bottomOnly,
			},
		];
		const gaps = gapsIn(aSeasonInput({ garments, inspirations }));
		expect(gaps.find(({ id }) => id === 'colour rust')).toMatchObject({ storedFirst: 'stored rust skirt' });
		expect(gaps.find(({ id }) => id === 'slot bottom')).toMatchObject({ missing: 5, storedFirst: 'stored rust skirt' });
	});

	it('is not filled by a stored piece that is in the line-up already', () => {
		const garments = [...three, aGarment({ id: 'ink coat', kind: 'coat', lab: INK, place: 'stored' })];
		const lineUp = { seasonId: 'spring', garmentIds: ['oat shirt', 'ink coat'], mustKeep: [], neverUse: [] };
		const outerGap = (input: SeasonInput) => gapsIn(input).find(({ id }) => id === 'slot outer')!;
		expect(outerGap(aSeasonInput({ garments }))).toMatchObject({ missing: 4, storedFirst: 'ink coat' });
		expect(outerGap(aSeasonInput({ garments, lineUp }))).toMatchObject({ missing: 3, storedFirst: null });
	});

	it('whose slot no picture shows is filled by a stored piece of any slot', () => {
		const garments = [...three, aGarment({ id: 'stored rust skirt', kind: 'skirt', lab: RUST, place: 'stored' })];
		const gap = gapsIn(aSeasonInput({ garments })).find(({ id }) => id === 'colour rust')!;
		expect(gap.slot).not.toBe('bottom');
		expect(gap.storedFirst).toBe('stored rust skirt');
		expect(gap.sentence).toContain('stored rust skirt is stored and could fill it.');
	});

	it('of a slot tells how many pieces the season lacks', () => {
		const slots = gapsIn(aSeasonInput({ garments: three })).filter(({ kind }) => kind === 'slot');
		expect(Object.fromEntries(slots.map(({ slot, missing }) => [slot, missing]))).toEqual({
			top: 8,
			outer: 4,
			bottom: 5,
			full: 3,
			legwear: 3,
			shoes: 4,
			accessory: 3,
		});
	});

	it('is told as tentative where the colour itself is', () => {
		const palette = { colours: [aPaletteColour('teal', TEAL, { weight: 1, firmness: 0.3 })] };
		const [gap] = gapsIn(aSeasonInput({ palette, garments: three }));
		expect(gap!.sentence).toContain('tentative');
	});

	it('is left out where a colour is nearly covered, and without a palette only needs are left', () => {
		const covered = gapsIn(
			aSeasonInput({ garments: three, palette: { colours: [aPaletteColour('oat', OAT, { weight: 0.3 })] } }),
		);
		expect(covered.filter(({ kind }) => kind === 'colour')).toEqual([]);
		const bare = gapsIn(aSeasonInput({ garments: three, palette: { colours: [] } }));
		expect(bare.every(({ kind, paletteColourId }) => kind === 'slot' && paletteColourId === null)).toBe(true);
	});
});
