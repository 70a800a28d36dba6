import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { styleProfile } from '../../../src/wardrobe/fit/style.ts';
import { styleFit } from '../../../src/wardrobe/fit/style-fit.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import { aGarment, aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';
import { piece } from '../pictures/build-picture.ts';

const outfit = (top: typeof RUST, bottom: typeof RUST) =>
	aReading([aSwatch(top, 0.5, 'top'), aSwatch(bottom, 0.4, 'bottom'), aSwatch(INK, 0.1, 'shoes')]);
const board = [outfit(RUST, OAT), outfit(OAT, INK), outfit(RUST, INK), outfit([50, 36, 42], OAT)];
const axisOf = (profile: ReturnType<typeof styleProfile>, axis: string) =>
	profile.axes.find((one) => one.axis === axis)!;

describe('the style of the inspirations', () => {
	const profile = styleProfile(board);

	it('tells which slots the pictures show', () => {
		expect(profile.slots).toMatchObject({ top: 1, bottom: 1, shoes: 1, full: 0, outer: 0 });
		expect(profile.wornPhotos).toBe(4);
	});

	it('tells light or deep, soft or vivid, warm or cool, plain or patterned', () => {
		expect(axisOf(profile, 'warmth').mean).toBeGreaterThan(0.8);
		expect(axisOf(profile, 'pattern').mean).toBeLessThan(0.2);
		const vivid = styleProfile([aReading([aSwatch([55, 75, 45], 1, 'full')])]);
		expect(axisOf(vivid, 'vividness').mean).toBeGreaterThan(axisOf(profile, 'vividness').mean!);
		expect(axisOf(styleProfile([outfit(TEAL, INK)]), 'warmth').mean).toBeLessThan(-0.5);
		const printed = styleProfile([aReading([aSwatch(RUST, 1, 'full')], { pattern: { type: 'printed', sure: 0.9 } })]);
		expect(axisOf(printed, 'pattern').mean).toBeCloseTo(0.9, 9);
	});

	it('takes a pattern for as plain as it is sure to be, and mottled cloth for plain', () => {
		const patternOf = (type: 'plain' | 'mottled' | 'checked', sure: number) =>
			axisOf(styleProfile([aReading([aSwatch(RUST, 1, 'full')], { pattern: { type, sure } })]), 'pattern').mean;
		expect(patternOf('plain', 0.6)).toBeCloseTo(0.4, 9);
		expect(patternOf('mottled', 0.9)).toBeCloseTo(0.1, 9);
		expect(patternOf('checked', 0.6)).toBeCloseTo(0.6, 9);
	});

	it('tells the range of the middle four in five pictures', () => {
		// Tenth and ninetieth percentile of eleven even steps, as any table of quantiles has them.
		const steps = Array.from({ length: 11 }, (_, step) => aReading([aSwatch([10 * step, 0, 0], 1, 'full')]));
		expect(axisOf(styleProfile(steps), 'lightness')).toMatchObject({ mean: 50, low: 10, high: 90, photos: 11 });
	});

	it('tells the contrast between the parts of an outfit', () => {
		const even = styleProfile([aReading([aSwatch(RUST, 0.5, 'top'), aSwatch(RUST, 0.5, 'bottom')])]);
		expect(even.contrast!.mean).toBe(0);
		expect(profile.contrast!.mean).toBeGreaterThan(20);
	});

	it('tells which kinds single pieces are', () => {
		const single = (kind: 'coat' | 'scarf') =>
			aReading([aSwatch(RUST, 1, 'outer')], { photoKind: 'single', kindGuesses: [{ kind, probability: 0.8 }] });
		expect(styleProfile([single('coat'), single('coat'), single('scarf')]).kinds).toEqual([
			{ kind: 'coat', share: 2 / 3 },
			{ kind: 'scarf', share: 1 / 3 },
		]);
	});

	it('knows nothing without pictures, without NaN', () => {
		const none = styleProfile([]);
		expect(none).toMatchObject({ photos: 0, wornPhotos: 0, kinds: [], contrast: null });
		expect(none.axes.every(({ mean, low, high }) => mean === null && low === null && high === null)).toBe(true);
		expect(JSON.parse(JSON.stringify(none))).toEqual(none);
		expect(JSON.parse(JSON.stringify(profile))).toEqual(profile);
	});

	it('is the same whatever the order of the pictures', () => {
		const turned = styleProfile([...board].reverse());
		for (const [index, axis] of turned.axes.entries()) expect(axis.mean).toBeCloseTo(profile.axes[index]!.mean!, 12);
	});
});

describe("a garment's style against the inspirations", () => {
	const profile = styleProfile(board);
	const positions = (garment: ReturnType<typeof aGarment>) =>
		Object.fromEntries(styleFit(garment, profile).map(({ axis, position }) => [axis, position]));

	it('is told axis by axis, in words', () => {
		const fit = styleFit(aGarment({ id: 'a', lab: RUST }), profile);
		expect(fit.map(({ axis }) => axis)).toEqual(['slot', 'lightness', 'vividness', 'warmth', 'pattern']);
		expect(fit[0]!.sentence).toBe('4 of 4 pictures show tops.');
		expect(fit.find(({ axis }) => axis === 'warmth')!.sentence).toBe('It is as warm or cool as most pictures.');
	});

	it('takes a slot for usual that one picture in five shows, and for rare below that', () => {
		// Common practice, no source.
		const slotOf = (pictures: number) => {
			const shown = [aReading([aSwatch(RUST, 0.5, 'outer'), aSwatch(INK, 0.5, 'bottom')])];
			const others = Array.from({ length: pictures - 1 }, () => outfit(RUST, OAT));
			return styleFit(aGarment({ id: 'a', kind: 'coat', lab: RUST }), styleProfile([...shown, ...others]))[0]!.position;
		};
		expect([slotOf(5), slotOf(6)]).toEqual(['within', 'beside']);
	});

	it('sees a cold, a vivid and a patterned piece', () => {
		expect(positions(aGarment({ id: 'a', lab: TEAL }))).toMatchObject({ warmth: 'far' });
		expect(positions(aGarment({ id: 'a', lab: [55, 90, 60] }))).toMatchObject({ vividness: 'far' });
		expect(positions(aGarment({ id: 'a', lab: RUST, pattern: { type: 'checked', sure: 1 } }))).toMatchObject({
			pattern: 'far',
		});
		expect(positions(aGarment({ id: 'a', kind: 'dress', lab: RUST }))).toMatchObject({ slot: 'far' });
	});

	it('does not judge what it cannot know: neutrals have no warmth, and two pictures are no style', () => {
		expect(positions(aGarment({ id: 'a', lab: INK }))).toMatchObject({ warmth: 'unknown' });
		const few = styleFit(aGarment({ id: 'a', lab: RUST }), styleProfile(board.slice(0, 2)));
		expect(few.every(({ position }) => position === 'unknown')).toBe(true);
		expect(few[1]!.sentence).toBe('Fewer than 3 pictures show how light or deep the season is.');
	});
});

describe('the style of one family of pieces', () => {
	const lightOuter = (lab: Lab65) =>
		aReading([aSwatch(lab, 0.5, 'outer'), aSwatch([20, 0, 0], 0.5, 'bottom')], {
			pieces: [piece('coat', lab), piece('trousers', [20, 0, 0])],
		});
	const board = [lightOuter([80, 0, 5]), lightOuter([82, 0, 5]), lightOuter([84, 0, 5])];
	const lightnessOf = (kind: Kind, lab: Lab65) =>
		styleFit(aGarment({ id: 'g', kind, lab }), styleProfile(board)).find(({ axis }) => axis === 'lightness')!;

	it('compares coats with coats, and with all that is worn where pictures show too few', () => {
		expect(lightnessOf('coat', [50, 0, 0])).toMatchObject({ position: 'far' });
		expect(lightnessOf('coat', [50, 0, 0]).sentence).toContain('deeper than most such pieces in your pictures (coat)');
		expect(lightnessOf('raincoat', [82, 0, 0]).position).toBe('within');
		// No scarf is shown: the whole pictures, light and deep, lie about the middle.
		expect(lightnessOf('scarf', [50, 0, 0])).toMatchObject({ position: 'within' });
		expect(lightnessOf('scarf', [50, 0, 0]).sentence).toBe('It is as light or deep as most pictures.');
	});
});
