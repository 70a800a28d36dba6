import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { paletteChange } from '../../../src/wardrobe/palette/palette-change.ts';
import { aPalette, aPaletteColour, OAT } from '../../support/build-wardrobe.ts';

describe("what changed against last year's palette", () => {
	it('is nothing between equal palettes', () => {
		const change = paletteChange(aPalette(), aPalette());
		expect(change).toMatchObject({ arrived: [], gone: [] });
		expect(change.keptShare).toBeCloseTo(1, 9);
		expect(change.kept.every(({ distance, weightChange }) => distance === 0 && weightChange === 0)).toBe(true);
	});

	it('names what is new, gone and moved', () => {
		const before = aPalette();
		const plum: Lab65 = [30, 30, -20];
		const paler: Lab65 = [OAT[0] + 9, OAT[1], OAT[2]];
		const now = {
			colours: [
				aPaletteColour('pale', paler, { weight: 0.6 }),
				...before.colours.slice(1, 3),
				aPaletteColour('plum', plum),
			],
		};
		const change = paletteChange(before, now);
		expect(change.arrived.map(({ id }) => id)).toEqual(['plum']);
		expect(change.gone.map(({ id }) => id)).toEqual(['teal']);
		expect(change.kept.find(({ now: colour }) => colour.id === 'pale')!.weightChange).toBeCloseTo(0.2, 9);
		expect(change.sentence).toContain('new: plum');
		expect(change.sentence).toContain('gone: teal');
		expect(change.sentence).toContain('moved: pale');
	});

	it('matches one to one', () => {
		const two = { colours: [aPaletteColour('a', [50, 20, 20]), aPaletteColour('b', [51, 20, 20])] };
		const one = { colours: [aPaletteColour('c', [50, 20, 20])] };
		expect(paletteChange(one, two)).toMatchObject({ kept: [{ now: { id: 'a' } }], arrived: [{ id: 'b' }], gone: [] });
	});

	it('has a plain sentence when a year has no palette', () => {
		const none = { colours: [] };
		expect(paletteChange(none, none).sentence).toBe('Neither year has a palette yet.');
		expect(paletteChange(none, aPalette()).sentence).toContain('nothing to compare');
		expect(paletteChange(aPalette(), none).sentence).toContain('no palette yet');
	});
});
