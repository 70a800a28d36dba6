import { describe, expect, it } from 'vitest';
import { appearanceOf } from '../../../src/wardrobe/words/appearance.ts';
import { aReading, aSwatch, INK, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

const onAPerson = aReading([aSwatch(RUST, 0.5, 'top'), aSwatch(INK, 0.4, 'bottom'), aSwatch(OAT, 0.1, 'top')], {
	patternBySlot: { top: { type: 'striped', sure: 0.8 } },
});

describe('the colours of a garment', () => {
	it('from a photo of a person are those of its own slot, filling the whole piece', () => {
		const shirt = appearanceOf('shirt', [onAPerson]);
		expect(shirt.swatches.map(({ lab, share }) => [lab, share])).toEqual([
			[RUST, 0.5 / 0.6],
			[OAT, 0.1 / 0.6],
		]);
		expect(shirt.pattern.type).toBe('striped');
		expect(appearanceOf('skirt', [onAPerson]).swatches.map(({ lab }) => lab)).toEqual([INK]);
	});

	it('are all of the photo where its slot was not seen, or the kind is not known', () => {
		expect(appearanceOf('hat', [onAPerson]).swatches).toHaveLength(3);
		expect(appearanceOf(null, [onAPerson]).swatches).toHaveLength(3);
	});

	it('from two photos are one mix: near colours joined, each photo weighing the same in area and by its trust in colour', () => {
		const front = aReading([aSwatch(RUST, 1, 'top')], { trust: { error: 4, reasons: ['front'], advice: null } });
		const back = aReading([aSwatch([46, 38, 40], 0.5, 'top'), aSwatch(TEAL, 0.5, 'top')], {
			trust: { error: 8, reasons: ['back'], advice: 'more light' },
		});
		const shirt = appearanceOf('shirt', [front, back]);
		expect(shirt.swatches.map(({ share }) => share)).toEqual([0.75, 0.25]);
		expect(shirt.swatches[0]!.lab[0]).toBeCloseTo(45.2, 9);
		expect(shirt.trust).toMatchObject({ error: 4.8, advice: null });
		expect(shirt.trust.reasons).toEqual(['joined from 2 photos in one light, which err alike', 'front']);
	});

	it('keep at most five, their shares summing to 1', () => {
		const many = (shift: number) => aReading([0, 1, 2, 3, 4].map((n) => aSwatch([10 + 18 * n, shift, 0], 0.2, 'top')));
		const { swatches } = appearanceOf('shirt', [many(0), many(60)]);
		expect(swatches).toHaveLength(5);
		expect(swatches.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 9);
	});

	it('are none before a photo was read, or from a photo without clothes, and the trust says so', () => {
		const unread = appearanceOf('shirt', []);
		expect(unread.swatches).toEqual([]);
		expect(unread.trust.reasons[0]).toContain('none of its photos has been read');
		expect(appearanceOf('shirt', [aReading([])]).swatches).toEqual([]);
		expect(appearanceOf('shirt', [aReading([]), aReading([])]).swatches).toEqual([]);
	});
});
