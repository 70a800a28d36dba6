import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { inLanguage } from '../../../src/language/speak.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { garmentName, withNames } from '../../../src/wardrobe/words/garment-name.ts';
import type { Kind } from '../../../src/wardrobe/words/kind.ts';
import type { Pattern } from '../../../src/wardrobe/words/reading.ts';
import { aGarment } from '../../support/build-wardrobe.ts';

// Colours of cloth as such pieces are: from memory, told by a language model.
const NAVY: Lab65 = [20, 2, -18];
const RED: Lab65 = [42, 58, 40];
const WHITE: Lab65 = [92, 0, 2];
const GREY: Lab65 = [55, 0, -1];

type Looks = { kind: Kind; labs: readonly (readonly [Lab65, number])[]; pattern?: Pattern; error?: number };

const piece = (id: string, { kind, labs, pattern = { type: 'plain', sure: 1 }, error = 3 }: Looks): Garment => ({
	...aGarment({ id, kind, addedAt: `2026-01-${id.padStart(2, '0')}T00:00:00Z` }),
	name: 'IMG_4711',
	nameFrom: 'looks',
	swatches: labs.map(([lab, share]) => ({ lab, share, slot: null, name: '' })),
	pattern,
	trust: { error, reasons: [], advice: null },
});
const shirt = (pattern: Pattern, labs: Looks['labs'] = [[NAVY, 1]]) => piece('1', { kind: 'shirt', labs, pattern });
const redJacket = (id: string) => piece(id, { kind: 'jacket', labs: [[RED, 1]] });
const names = (garments: readonly Garment[]) => withNames(garments).map(({ name }) => name);

describe('what a garment is called', () => {
	it.each([
		['navy checked shirt', shirt({ type: 'checked', sure: 0.9 })],
		[
			'navy and white striped shirt',
			shirt({ type: 'striped', sure: 0.9 }, [
				[NAVY, 0.6],
				[WHITE, 0.4],
			]),
		],
		[
			'navy striped shirt',
			shirt({ type: 'striped', sure: 0.9 }, [
				[NAVY, 0.8],
				[WHITE, 0.2],
			]),
		],
		['navy shirt', shirt({ type: 'mottled', sure: 0.9 })],
		['red jacket', redJacket('1')],
		['red piece', { ...redJacket('1'), kindFrom: 'none' as const }],
		['jacket', { ...redJacket('1'), swatches: [] }],
	])('%s', (name, garment) => expect(garmentName(garment)).toBe(name));

	it('does not name a pattern that the reading is not sure of', () =>
		expect(garmentName(shirt({ type: 'checked', sure: 0.5 }))).toBe('navy shirt'));

	it('has no hue that its photo cannot tell from grey', () => {
		const bluish: Looks = { kind: 'skirt', labs: [[[50, -1, -5], 1]] };
		expect(garmentName(piece('1', { ...bluish, error: 9 }))).toBe('grey skirt');
		expect(garmentName(piece('1', { ...bluish, error: 2 }))).toBe('blue-grey skirt');
	});

	it('follows the language that is spoken', () => {
		const checked = shirt({ type: 'checked', sure: 0.9 });
		expect(inLanguage('de', () => garmentName(checked))).toBe('Hemd, dunkelblau kariert');
		const jumper = piece('1', { kind: 'jumper', labs: [[GREY, 1]] });
		expect(inLanguage('en-US', () => garmentName(jumper))).toBe('gray sweater');
		expect(garmentName(jumper)).toBe('grey jumper');
	});
});

describe('the names of a wardrobe', () => {
	it('tell equal ones apart in the order in which they came, whatever the order of the list', () => {
		expect(names([redJacket('3'), redJacket('1'), redJacket('2')])).toEqual([
			'red jacket (the third)',
			'red jacket',
			'red jacket (the other)',
		]);
	});

	it('leave a name given by hand as it is, and give it to no other', () => {
		const byHand = { ...redJacket('2'), name: 'red jacket', nameFrom: 'user' as const };
		expect(names([redJacket('1'), byHand])).toEqual(['red jacket (the other)', 'red jacket']);
	});

	it('are all different, however many are alike', () => {
		fc.assert(
			fc.property(fc.array(fc.constantFrom(RED, NAVY, GREY), { maxLength: 28 }), (labs) => {
				const all = labs.map((lab, index) => piece(String(index + 1), { kind: 'jacket', labs: [[lab, 1]] }));
				expect(new Set(names(all)).size).toBe(all.length);
			}),
		);
	});
});
