import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { fitOf, fitPercentOf, fitsPalette, nearestColour } from '../../../src/wardrobe/fit/fit.ts';
import {
	FITS_FROM_PERCENT,
	FULL_UP_TO,
	fitScore,
	NEAR_FROM_PERCENT,
	NOTHING_FROM,
	OFF_FROM,
} from '../../../src/wardrobe/fit/fit-score.ts';
import { REACH } from '../../../src/wardrobe/palette/palette-reach.ts';
import type { Appearance } from '../../../src/wardrobe/words/reading.ts';
import { aGarment, aPalette, aPaletteColour, aSwatch, INK, OAT, RUST } from '../../support/build-wardrobe.ts';
import { apartBy } from '../../support/colours-apart.ts';

const aLab: fc.Arbitrary<Lab65> = fc.tuple(
	fc.double({ min: 0, max: 100, noNaN: true }),
	fc.double({ min: -80, max: 80, noNaN: true }),
	fc.double({ min: -80, max: 80, noNaN: true }),
);
const piece = (swatches: readonly (readonly [Lab65, number])[], error = 3): Appearance => ({
	swatches: swatches.map(([lab, share]) => aSwatch(lab, share, 'top')),
	pattern: { type: 'plain', sure: 0.9 },
	trust: { error, reasons: ['the lamp is unknown'], advice: null },
});

const LOUD: Lab65 = [60, 80, -40];

/** Darker than oat by so much, CIEDE2000. */
const darker = (away: number) => apartBy(OAT, away);

describe('the fit of a garment', () => {
	it('is 100 for a garment made of palette colours, in any mix', () => {
		fc.assert(
			fc.property(fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 1, maxLength: 4 }), (shares) => {
				const { colours } = aPalette();
				const fit = fitOf(piece(shares.map((share, index) => [colours[index]!.lab, share] as const)), { colours });
				expect(fit.percent).toBeCloseTo(100, 9);
				expect(fit.percent).toBeLessThanOrEqual(100);
				expect(fit.likely).toBe('fits');
			}),
		);
	});

	it('never rises when a swatch moves away from a palette of one colour', () => {
		fc.assert(
			fc.property(aLab, fc.double({ min: 0, max: 0.999, noNaN: true }), (far, part) => {
				const palette = { colours: [aPaletteColour('oat', OAT)] };
				const nearer = OAT.map((value, axis) => value + part * (far[axis]! - value)) as unknown as Lab65;
				const closer = nearestColour(nearer, palette)!.distance;
				const further = nearestColour(far, palette)!.distance;
				const [one, other] = [fitPercentOf(piece([[nearer, 1]]), palette), fitPercentOf(piece([[far, 1]]), palette)];
				if (closer <= further) expect(one).toBeGreaterThanOrEqual(other);
				else expect(other).toBeGreaterThanOrEqual(one);
			}),
		);
	});

	it('stays the same when palette colours or swatches change places', () => {
		fc.assert(
			fc.property(
				fc.array(fc.tuple(aLab, fc.double({ min: 0.1, max: 1, noNaN: true })), { minLength: 1, maxLength: 5 }),
				(parts) => {
					const palette = aPalette();
					const turned = { colours: [...palette.colours].reverse() };
					expect(fitOf(piece([...parts].reverse()), turned).percent).toBeCloseTo(
						fitOf(piece(parts), palette).percent,
						9,
					);
				},
			),
		);
	});

	it('never falls when the palette gains a colour', () => {
		fc.assert(
			fc.property(aLab, aLab, (lab, added) => {
				const palette = aPalette();
				const larger = { colours: [...palette.colours, aPaletteColour('added', added)] };
				expect(fitPercentOf(piece([[lab, 1]]), larger)).toBeGreaterThanOrEqual(
					fitPercentOf(piece([[lab, 1]]), palette),
				);
			}),
		);
	});

	it('counts in full up to 5, not at all from 20, and falls smoothly in between', () => {
		expect([0, FULL_UP_TO, NOTHING_FROM, 500].map(fitScore)).toEqual([1, 1, 0, 0]);
		for (let beyond = 0; beyond < 25; beyond += 0.25) {
			expect(fitScore(beyond)).toBeGreaterThanOrEqual(fitScore(beyond + 0.25));
			expect(fitScore(beyond) - fitScore(beyond + 0.25)).toBeLessThan(0.03);
		}
	});

	it('is what cloth at the reach of a colour, and cloth that is off, score: its thresholds', () => {
		expect(100 * fitScore(REACH)).toBeCloseTo(FITS_FROM_PERCENT, 9);
		expect(100 * fitScore(OFF_FROM)).toBeCloseTo(NEAR_FROM_PERCENT, 9);
	});

	it('counts lightness less where nothing tells the photo’s light', () => {
		const dark = piece([[darker(12), 1]], 1);
		const oat = { colours: [aPaletteColour('oat', OAT)] };
		const untold = { ...dark, trust: { ...dark.trust, untold: true } };
		expect([fitOf(dark, oat).likely, fitOf(untold, oat).likely]).toEqual(['near', 'fits']);
	});

	it('lies inside its interval, which widens with the photo’s error', () => {
		fc.assert(
			fc.property(
				aLab,
				fc.double({ min: 0, max: 10, noNaN: true }),
				fc.double({ min: 0, max: 10, noNaN: true }),
				(lab, error, more) => {
					const fit = fitOf(piece([[lab, 1]], error), aPalette());
					const wider = fitOf(piece([[lab, 1]], error + more), aPalette());
					expect(fit.low).toBeLessThanOrEqual(fit.percent);
					expect(fit.high).toBeGreaterThanOrEqual(fit.percent);
					expect(wider.low).toBeLessThanOrEqual(fit.low);
					expect(wider.high).toBeGreaterThanOrEqual(fit.high);
				},
			),
		);
	});

	it('is told as a verdict only where the photo allows it', () => {
		const palette = aPalette();
		// The mean error of uncorrected phone photos of known colours, 8.9: a dead-on palette colour still fits.
		expect(fitOf(piece([[OAT, 1]], 8.9), palette).verdict).toBe('fits');
		expect(fitOf(piece([[[60, 60, -60], 1]], 3), palette).verdict).toBe('off');
		// 12.3 from oat: between the reach, 10, and 15, from where on cloth is off.
		const between: Lab65 = [67.5, 1, 11];
		expect(fitOf(piece([[between, 1]], 1), palette).percent).toBeGreaterThan(NEAR_FROM_PERCENT);
		expect(fitOf(piece([[between, 1]], 1), palette).percent).toBeLessThan(FITS_FROM_PERCENT);
		expect(fitOf(piece([[between, 1]], 0.5), palette).verdict).toBe('near');
		expect(fitOf(piece([[between, 1]], 9), palette)).toMatchObject({ verdict: 'unsure', likely: 'near' });
	});

	it('is surer of a colour in the middle of a palette colour than of one at its border, for the same photo', () => {
		const palette = { colours: [aPaletteColour('oat', OAT, { spread: 8 })] };
		const inside = fitOf(piece([[OAT, 1]], 8), palette);
		const border = fitOf(piece([[[OAT[0] - 6, OAT[1], OAT[2]], 1]], 8), palette);
		expect([inside.percent, border.percent]).toEqual([100, 100]);
		expect(inside.low).toBeGreaterThan(border.low);
		expect(inside.verdict).toBe('fits');
	});

	it('does not tell of a part as small as a button, unless nothing else is to be told', () => {
		expect(
			fitOf(
				piece([
					[OAT, 0.96],
					[LOUD, 0.04],
				]),
				aPalette(),
			).sentence,
		).not.toContain('4 %');
		expect(
			fitOf(
				piece([
					[OAT, 0.9],
					[LOUD, 0.1],
				]),
				aPalette(),
			).sentence,
		).toContain('part, 10 %');
	});

	it('gives its reasons in words: what is near what, and what is odd', () => {
		const fit = fitOf(
			piece(
				[
					[[82, 1, 13], 0.62],
					[INK, 0.17],
					[[60, 60, -60], 0.21],
				],
				2,
			),
			aPalette(),
		);
		expect(fit.sentence).toMatch(
			/^62 % of it matches oat; 17 % of it matches ink; the .+ part, 21 %, matches nothing in the palette\. /,
		);
		expect(fit.swatches.map(({ paletteColourId }) => paletteColourId).slice(0, 2)).toEqual(['oat', 'ink']);
		expect(fit.swatches[0]!.sentence).toMatch(/^62 % of it, .+, matches oat\.$/);
	});

	it.each([
		[
			'near or fitting',
			[
				[darker(9), 0.79],
				[darker(16), 0.21],
			],
			8,
		],
		['anything from off to fitting', [[darker(12.5), 1]], 12],
		// A fifth of it in a colour that no error brings near keeps it from fitting, though the rest may match in full.
		[
			'off or near',
			[
				[darker(9.2), 0.79],
				[LOUD, 0.21],
			],
			9,
		],
	] as const)('says what an unsure verdict could be, "%s", and why', (room, parts, error) => {
		const { verdict, sentence } = fitOf(piece(parts, error), { colours: [aPaletteColour('oat', OAT)] });
		expect(verdict).toBe('unsure');
		expect(sentence).toContain(`: by the photo it may be ${room} (the lamp is unknown).`);
	});

	it('says of cloth within the reach of a wide colour that it is close, not some way off', () => {
		const wide = { colours: [aPaletteColour('oat', OAT, { spread: 12.5 })] };
		expect(fitOf(piece([[darker(11.5), 1]], 1), wide)).toMatchObject({
			sentence: '100 % of it is close to oat. It fits.',
			swatches: [{ within: true, sentence: expect.stringContaining('is close to oat') }],
		});
		const usual = { colours: [aPaletteColour('oat', OAT)] };
		expect(fitOf(piece([[darker(11.5), 1]], 1), usual).sentence).toContain('is some way from oat');
	});

	it('never calls a piece fitting that is 15 or more from every palette colour, however wide the colours are', () => {
		// An aqua dress against a tan whose members spread over 27 (such spreads occur on real boards) was once "100, within its spread".
		const tan = aPaletteColour('tan', [68, 8, 24], { spread: 27 });
		expect(fitOf(piece([[[78, -24, -6], 1]]), { colours: [tan] })).toMatchObject({ percent: 0, verdict: 'off' });
		fc.assert(
			fc.property(aLab, fc.double({ min: 0, max: 40, noNaN: true }), (lab, spread) => {
				const palette = { colours: [{ ...tan, spread }, aPaletteColour('ink', INK, { spread })] };
				const { distance } = nearestColour(lab, palette)!;
				if (Math.min(distance, deltaE2000(lab, INK)) >= 15) expect(fitsPalette(piece([[lab, 1]]), palette)).toBe(false);
			}),
		);
	});

	it('does not fit with a fifth of it in a colour that is off, and says so', () => {
		const striped = piece(
			[
				[OAT, 0.79],
				[[60, 60, -60], 0.21],
			],
			2,
		);
		expect(fitOf(striped, aPalette())).toMatchObject({ likely: 'near', verdict: 'near' });
		expect(
			fitsPalette(
				piece([
					[OAT, 0.85],
					[[60, 60, -60], 0.15],
				]),
				aPalette(),
			),
		).toBe(true);
	});

	it.each([
		[14.5, 'fits'],
		[15.5, 'near'],
	])('holds a quarter of it that lies %d from the palette for a piece that %s', (away, likely) => {
		const odd = darker(away);
		const parts: [Lab65, number][] = [
			[OAT, 0.75],
			[odd, 0.25],
		];
		expect(fitOf(piece(parts), { colours: [aPaletteColour('oat', OAT)] })).toMatchObject({ likely });
	});

	it('passes over hints, which vouch for nothing', () => {
		const hinted = { colours: [aPaletteColour('oat', OAT), aPaletteColour('rust', RUST, { role: 'hint' })] };
		expect(fitOf(piece([[RUST, 1]]), hinted).verdict).toBe('off');
		expect(fitOf(piece([[RUST, 1]]), { colours: [hinted.colours[1]!] }).sentence).toContain('no palette yet');
	});

	it('has a plain answer without a palette and without colours, and no NaN', () => {
		const none = fitOf(piece([[RUST, 1]]), { colours: [] });
		expect(none).toMatchObject({ percent: 0, verdict: 'unsure' });
		expect(none.sentence).toContain('no palette yet');
		const unread = fitOf(piece([]), aPalette());
		expect(unread).toMatchObject({ percent: 0, low: 0, high: 100, verdict: 'unsure' });
		expect(unread.sentence).toContain('no colours yet');
		for (const fit of [none, unread]) expect(JSON.stringify(fit)).not.toContain('null,"high"');
		expect(fitPercentOf(aGarment({ id: 'a' }), { colours: [] })).toBe(0);
	});
});
