import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import { chroma, type Lab65 } from '../../../src/colour/lab65.ts';
import { NEUTRAL_CHROMA } from '../../../src/colour/neutrality.ts';
import { derivePalette } from '../../../src/wardrobe/palette/palette.ts';
import { paletteCover } from '../../../src/wardrobe/palette/palette-cover.ts';
import type { Swatch } from '../../../src/wardrobe/words/reading.ts';
import { seededRandom } from '../../../src/wardrobe/words/seeded-random.ts';
import { aGarment, aPaletteColour, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

const OLIVE: Lab65 = [42, -8, 28];
const GREY: Lab65 = [55, 0, 1];
/** Oat pale enough that no picture's version of it passes chroma 12. */
const PALE_OAT: Lab65 = [84, 1, 6];

/** A board of pictures that wear oat, ink and grey with rust, olive and teal, each a little different. */
function aBoard(count: number, seed = 'board') {
	const random = seededRandom(seed);
	const shaken = ([L, a, b]: Lab65): Lab65 => [L + random() * 6 - 3, a + random() * 6 - 3, b + random() * 6 - 3];
	const coloured = [RUST, RUST, OLIVE, OLIVE, TEAL];
	const neutral = [PALE_OAT, INK, GREY];
	return Array.from({ length: count }, (_, photo) => ({
		swatches: [
			aSwatch(shaken(neutral[photo % 3]!), 0.5, 'top'),
			aSwatch(shaken(neutral[(photo + 1) % 3]!), 0.2, 'shoes'),
			aSwatch(shaken(coloured[photo % 5]!), 0.3, 'bottom'),
		],
	}));
}

const nearestTo = (lab: Lab65, colours: readonly { readonly lab: Lab65 }[]) =>
	Math.min(...colours.map((colour) => deltaE2000(colour.lab, lab)));

const aSwatchList: fc.Arbitrary<Swatch[]> = fc.array(
	fc
		.tuple(
			fc.double({ min: 0, max: 100, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
			fc.double({ min: 0.05, max: 1, noNaN: true }),
		)
		// Plus 0 turns -0, which no reading holds, into 0.
		.map(([L, a, b, share]) => aSwatch([L, a + 0, b + 0], share, 'top')),
	{ minLength: 1, maxLength: 5 },
);

describe('the palette of a board', () => {
	const palette = derivePalette(aBoard(15), { baseCount: 3, colourCount: 3 });

	it('finds the neutrals and the colours that the pictures wear', () => {
		expect(palette.colours).toHaveLength(6);
		for (const lab of [PALE_OAT, INK, GREY, RUST, OLIVE, TEAL]) expect(nearestTo(lab, palette.colours)).toBeLessThan(3);
	});

	it('calls the neutrals base, and puts base first, heaviest first, weights summing to 1', () => {
		expect(palette.colours.slice(0, 3).every(({ role, lab }) => role === 'base' && chroma(lab) < NEUTRAL_CHROMA)).toBe(
			true,
		);
		expect(palette.colours.slice(3).every(({ role }) => role !== 'base')).toBe(true);
		expect(palette.colours.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
		const base = palette.colours.filter(({ role }) => role === 'base').map(({ weight }) => weight);
		expect(base).toEqual([...base].sort((one, other) => other - one));
	});

	it('calls a light-weight vivid colour an accent and the heaviest one main', () => {
		const vivid: Lab65 = [55, 75, 45];
		const board = aBoard(15).map((photo, index) =>
			index < 4 ? { swatches: [...photo.swatches, aSwatch(vivid, 0.12, 'accessory')] } : photo,
		);
		const { colours } = derivePalette(board, { baseCount: 3, colourCount: 4 });
		expect(colours.filter(({ role }) => role === 'accent').map(({ lab }) => nearestTo(vivid, [{ lab }]))).toEqual([
			expect.closeTo(0, 1),
		]);
		const heaviest = colours.filter(({ role }) => role !== 'base').toSorted((a, b) => b.weight - a.weight)[0];
		expect(heaviest?.role).toBe('main');
	});

	it('counts the pictures that hold each colour and is firm where most resampled boards agree', () => {
		for (const { photos, firmness } of palette.colours) {
			expect(photos).toBeGreaterThanOrEqual(3);
			expect(photos).toBeLessThanOrEqual(15);
			expect(firmness).toBeGreaterThanOrEqual(0.5);
		}
	});

	it('is tentative about a colour of one picture only', () => {
		const odd: Lab65 = [60, 60, -60];
		const board = [...aBoard(14), { swatches: [aSwatch(odd, 1, 'full')] }];
		const found = derivePalette(board, { colourCount: 4 }).colours.find(({ lab }) => deltaE2000(lab, odd) < 3)!;
		expect(found.photos).toBe(1);
		// A picture is missing from a resampled board of 15 with probability (14/15)^15 = 0.36.
		expect(found.firmness).toBeGreaterThan(0.3);
		expect(found.firmness).toBeLessThan(0.95);
	});

	it('never shows a colour that no picture holds, such as the orange between rust and honey', () => {
		const rust: Lab65 = [46, 33, 37];
		const honey: Lab65 = [70, 14, 56];
		const board = [rust, rust, honey].map((lab) => aReading([aSwatch(lab, 1, 'top')]));
		const [only] = derivePalette(board, { baseCount: 0, colourCount: 1 }).colours;
		// Their mean lies more than 10 from both.
		expect(deltaE2000(only!.lab, rust)).toBeLessThan(1e-6);
		// Nearer to each other, with a mean within 10 of both: still a colour that neither picture wears.
		const near: Lab65 = [58, 30, 47];
		const [between] = derivePalette([aReading([aSwatch(rust, 1, 'top')]), aReading([aSwatch(near, 1, 'top')])], {
			baseCount: 0,
			colourCount: 1,
		}).colours;
		expect(Math.min(...[rust, near].map((lab) => deltaE2000(between!.lab, lab)))).toBeLessThan(1e-6);
		const lab = fc.tuple(
			fc.double({ min: 5, max: 95, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
			fc.double({ min: -60, max: 60, noNaN: true }),
		);
		fc.assert(
			fc.property(
				fc.array(lab, { minLength: 1, maxLength: 12 }),
				fc.integer({ min: 1, max: 6 }),
				(labs, colourCount) => {
					const readings = labs.map((one) => aReading([aSwatch(one, 1, 'top')]));
					for (const { photos } of derivePalette(readings, { baseCount: 2, colourCount }).colours)
						expect(photos).toBeGreaterThan(0);
				},
			),
			{ numRuns: 60, seed: 1 },
		);
	});

	it('lets every picture weigh the same, however large its areas', () => {
		const twice = [{ swatches: [aSwatch(RUST, 1, 'top')] }, { swatches: [aSwatch(TEAL, 0.01, 'top')] }];
		const weights = derivePalette(twice).colours.map(({ weight }) => weight);
		expect(weights).toEqual([0.5, 0.5]);
	});

	it('changes nothing when the pictures change places, and is the same again', () => {
		fc.assert(
			fc.property(
				fc.array(aSwatchList, { minLength: 1, maxLength: 8 }),
				fc.integer({ min: 0, max: 7 }),
				(lists, turn) => {
					const board = lists.map((swatches) => ({ swatches }));
					const turned = [...board.slice(turn), ...board.slice(0, turn)].reverse();
					expect(derivePalette(turned)).toEqual(derivePalette(board));
				},
			),
			{ numRuns: 40 },
		);
	});

	it('serialises without loss and holds no NaN, whatever the board', () => {
		fc.assert(
			fc.property(fc.array(aSwatchList, { maxLength: 6 }), (lists) => {
				const found = derivePalette(lists.map((swatches) => ({ swatches })));
				expect(JSON.parse(JSON.stringify(found))).toEqual(found);
				for (const { lab, weight, spread, firmness } of found.colours)
					expect([...lab, weight, spread, firmness].every(Number.isFinite)).toBe(true);
			}),
			{ numRuns: 40 },
		);
	});

	it('is empty without pictures, one colour from equal pictures, and never firm from a single picture', () => {
		expect(derivePalette([]).colours).toEqual([]);
		expect(derivePalette([aReading([])]).colours).toEqual([]);
		const equal = derivePalette(Array.from({ length: 5 }, () => ({ swatches: [aSwatch(RUST, 1, 'top')] })));
		expect(equal.colours).toHaveLength(1);
		expect(equal.colours[0]).toMatchObject({ weight: 1, spread: 0, photos: 5, firmness: 1, role: 'main' });
		expect(derivePalette([{ swatches: [aSwatch(RUST)] }]).colours[0]).toMatchObject({ photos: 1, firmness: 0 });
	});

	it('can be made from the garments one owns', () => {
		const owned = [aGarment({ id: 'a', lab: OAT }), aGarment({ id: 'b', lab: RUST }), aGarment({ id: 'c', lab: RUST })];
		const { colours } = derivePalette(owned);
		expect(colours.map(({ role, photos }) => [role, photos])).toEqual([
			['base', 1],
			['main', 2],
		]);
	});
});

describe('how many colours a board holds', () => {
	it('is told by the board: as many as lie 20 apart, however many that is', () => {
		const hues: Lab65[] = [RUST, TEAL, OLIVE, [60, 60, -60], [80, 5, 75], [30, 30, -70], [70, 45, 0]];
		for (const count of [1, 2, 5, 7]) {
			const board = Array.from({ length: 14 }, (_, photo) => ({
				swatches: [aSwatch(INK, 0.5, 'bottom'), aSwatch(hues[photo % count]!, 0.5, 'top')],
			}));
			const { colours } = derivePalette(board);
			expect(colours.filter(({ lab }) => chroma(lab) >= NEUTRAL_CHROMA)).toHaveLength(count);
		}
	});

	it('follows the user where a number is asked for', () => {
		const near: Lab65[] = [RUST, [45, 30, 34], [52, 38, 44], TEAL, [45, -20, -10]];
		const board = Array.from({ length: 15 }, (_, photo) => ({ swatches: [aSwatch(near[photo % 5]!, 1, 'top')] }));
		expect(derivePalette(board).colours).toHaveLength(2);
		for (const colourCount of [1, 2, 3, 4, 5])
			expect(derivePalette(board, { colourCount }).colours).toHaveLength(colourCount);
	});

	it('gives no colour wider than 20, and none that vouches from one picture or from under 2 % of the cloth', () => {
		const board = [...aBoard(12), { swatches: [aSwatch([60, 60, -60], 0.4, 'top'), aSwatch(INK, 0.6, 'bottom')] }].map(
			({ swatches }, photo) => ({
				swatches: photo < 4 ? [...swatches, aSwatch([80, 5, 75], 0.06, 'accessory')] : swatches,
			}),
		);
		const { colours } = derivePalette(board);
		const roleNear = (lab: Lab65) => colours.find((colour) => deltaE2000(colour.lab, lab) < 6)?.role;
		expect(roleNear([60, 60, -60])).toBe('hint');
		expect(roleNear([80, 5, 75])).toBe('hint');
		expect(roleNear(RUST)).toBe('main');
	});

	it.each([
		['navy', [22, 3, -20], 'base'],
		['denim', [42, -2, -20], 'base'],
		['camel', [62, 10, 28], 'base'],
		['a vivid blue', [40, 20, -70], 'main'],
		['rust', RUST, 'main'],
	] as [string, Lab65, string][])('%s that carries a set is %s: %s', (_, lab, role) => {
		const board = Array.from({ length: 8 }, (__, photo) => ({
			swatches: [aSwatch(lab, 0.6, 'bottom'), aSwatch(photo % 2 ? PALE_OAT : GREY, 0.4, 'top')],
		}));
		expect(derivePalette(board).colours.find((colour) => deltaE2000(colour.lab, lab) < 2)!.role).toBe(role);
	});
});

describe('what a palette holds of its board', () => {
	it('is a share of the cloth, with the pictures mostly left out', () => {
		const board = [...aBoard(9), { swatches: [aSwatch([60, 60, -60], 0.7, 'top'), aSwatch(INK, 0.3, 'shoes')] }];
		const cover = paletteCover(board, derivePalette(board));
		expect(cover.leftOut).toEqual([{ picture: 9, share: expect.closeTo(0.3, 6) }]);
		expect(cover.sentence).toBe(
			`The palette holds ${Math.round(100 * cover.share)} % of the cloth in your pictures. 1 picture is mostly left out: ask for more colours, add one by hand, or take the picture off the board.`,
		);
		expect(cover.share).toBeGreaterThan(0.85);
		expect(cover.share).toBeLessThanOrEqual(0.93);
		expect(paletteCover([], derivePalette([])).sentence).toContain('no pictures');
	});

	it('names the pictures left out, least held first, equal ones in the order of the board', () => {
		const palette = { colours: [aPaletteColour('oat', OAT)] };
		const shows = (oat: number) => ({ swatches: [aSwatch(OAT, oat, 'top'), aSwatch(TEAL, 1 - oat, 'bottom')] });
		const { leftOut } = paletteCover([shows(0.3), shows(0.9), shows(0.1), shows(0.3)], palette);
		expect(leftOut.map(({ picture }) => picture)).toEqual([2, 0, 3]);
	});
});

describe('deriving again', () => {
	const board = aBoard(15);
	const first = derivePalette(board, { baseCount: 3, colourCount: 3 });

	it('gives colours near the earlier ones their ids back', () => {
		const again = derivePalette(aBoard(18, 'other pictures'), { baseCount: 3, colourCount: 3, keep: first });
		expect(again.colours.map(({ id }) => id).sort()).toEqual(first.colours.map(({ id }) => id).sort());
	});

	it('keeps a locked colour as it is, and asks the photos only for the rest', () => {
		const mine = aPaletteColour('mine', [70, 30, -40], {
			locked: true,
			origin: 'by-hand',
			label: 'lilac',
			weight: 0.1,
		});
		const again = derivePalette(board, { baseCount: 3, colourCount: 3, keep: { colours: [...first.colours, mine] } });
		expect(again.colours).toHaveLength(6);
		expect(again.colours.find(({ id }) => id === 'mine')).toMatchObject({
			lab: mine.lab,
			label: 'lilac',
			locked: true,
		});
		expect(again.colours.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
	});

	it('does not find a locked colour a second time', () => {
		const locked = {
			colours: first.colours.map((colour) => (deltaE2000(colour.lab, RUST) < 5 ? { ...colour, locked: true } : colour)),
		};
		const again = derivePalette(board, { baseCount: 3, colourCount: 3, keep: locked });
		expect(again.colours.filter(({ lab }) => deltaE2000(lab, RUST) < 8)).toHaveLength(1);
	});

	it('leaves out what the user removed', () => {
		const again = derivePalette(board, { keep: { colours: [], removed: [TEAL] } });
		expect(nearestTo(TEAL, again.colours)).toBeGreaterThan(10);
		expect(again.removed).toEqual([TEAL]);
	});

	it('does not let a colour that was alone in the palette take everything', () => {
		const alone = aPaletteColour('alone', [70, 30, -40], { locked: true, weight: 1, origin: 'by-hand' });
		const again = derivePalette(board, { baseCount: 3, colourCount: 3, keep: { colours: [alone] } });
		expect(again.colours.find(({ id }) => id === 'alone')!.weight).toBeLessThan(0.25);
		expect(again.colours.every(({ weight }) => weight > 0)).toBe(true);
	});

	it('keeps locked colours without any picture', () => {
		const locked = [aPaletteColour('mine', RUST, { locked: true, weight: 0.3 })];
		expect(derivePalette([], { keep: { colours: locked } }).colours).toMatchObject([
			{ id: 'mine', weight: 1, photos: 0 },
		]);
	});
});
