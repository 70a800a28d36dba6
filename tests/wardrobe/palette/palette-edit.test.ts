import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../../src/colour/delta-e.ts';
import type { Lab65 } from '../../../src/colour/lab65.ts';
import { derivePalette } from '../../../src/wardrobe/palette/palette.ts';
import { editPalette, type PaletteEdit } from '../../../src/wardrobe/palette/palette-edit.ts';
import type { PaletteSource } from '../../../src/wardrobe/palette/palette-pool.ts';
import type { Palette } from '../../../src/wardrobe/words/palette-colour.ts';
import { aPalette, aPaletteColour, aSwatch, OAT, RUST, TEAL } from '../../support/build-wardrobe.ts';

const newId = () => 'new';
const edited = (palette: Palette, edit: PaletteEdit, board: readonly PaletteSource[] = []) => {
	const result = editPalette(palette, edit, newId, board);
	if (!result.ok) throw new Error(result.message);
	return result;
};
const refusal = (palette: Palette, edit: PaletteEdit, board: readonly PaletteSource[] = []) => {
	const result = editPalette(palette, edit, newId, board);
	if (result.ok) throw new Error('expected a refusal');
	return result;
};
const colourOf = (palette: Palette, id: string) => palette.colours.find((colour) => colour.id === id)!;

describe('editing the palette', () => {
	it('locks and unlocks', () => {
		const locked = edited(aPalette(), { edit: 'lock', id: 'rust' });
		expect(colourOf(locked.palette, 'rust').locked).toBe(true);
		expect(locked.sentence).toBe('Locked rust');
		expect(colourOf(edited(locked.palette, { edit: 'unlock', id: 'rust' }).palette, 'rust').locked).toBe(false);
	});

	it('merges colours into their weighted mean, which stands for all that they stood for', () => {
		const { palette, sentence } = edited(aPalette(), { edit: 'merge', ids: ['rust', 'teal'] });
		const merged = colourOf(palette, 'rust');
		expect(palette.colours).toHaveLength(3);
		expect(merged).toMatchObject({ origin: 'merged', locked: true });
		expect(merged.weight).toBeCloseTo(0.3, 9);
		expect(merged.lab[0]).toBeCloseTo((RUST[0] * 0.2 + TEAL[0] * 0.1) / 0.3, 9);
		const [toRust, toTeal] = [deltaE2000(merged.lab, RUST), deltaE2000(merged.lab, TEAL)];
		expect(merged.spread).toBeGreaterThan(Math.min(toRust, toTeal));
		expect(merged.spread).toBeLessThan(Math.max(toRust, toTeal) + 4);
		expect(sentence).toBe('Merged rust and teal');
	});

	it('splits a colour into the two that the pictures hold, each with its own spread, pictures and weight', () => {
		const [brick, ginger]: Lab65[] = [
			[38, 34, 30],
			[54, 34, 46],
		];
		const board = [brick, brick, brick, ginger].map((lab, index) => ({
			swatches: [aSwatch([lab![0] + index / 2, lab![1], lab![2]], 0.5, 'top'), aSwatch(OAT, 0.5, 'bottom')],
		}));
		const { palette, sentence } = edited(aPalette(), { edit: 'split', id: 'rust' }, board);
		const [heavier, lighter] = [colourOf(palette, 'rust'), colourOf(palette, 'new')];
		expect(deltaE2000(heavier.lab, brick!)).toBeLessThan(1);
		expect(deltaE2000(lighter.lab, ginger!)).toBeLessThan(2);
		expect([heavier.photos, lighter.photos]).toEqual([3, 1]);
		expect(heavier.weight).toBeCloseTo(0.15, 9);
		expect(lighter.weight).toBeCloseTo(0.05, 9);
		expect(heavier.spread).toBeLessThan(1);
		expect([heavier.origin, lighter.origin]).toEqual(['split', 'split']);
		expect(sentence).toMatch(/^Split rust into (brick red|rust|chestnut) and /);
	});

	it('gives a merged colour the spread and the pictures that its cloth really has', () => {
		const board = [RUST, RUST, RUST, [45, 30, 34] as const].map((lab) => ({ swatches: [aSwatch(lab, 1, 'top')] }));
		const two = { colours: [...aPalette().colours, aPaletteColour('brick', [45, 30, 34], { weight: 0.0667 })] };
		const merged = colourOf(edited(two, { edit: 'merge', ids: ['rust', 'brick'] }, board).palette, 'rust');
		expect(merged.photos).toBe(4);
		expect(merged.spread).toBeCloseTo(deltaE2000(merged.lab, RUST), 6);
	});

	it('renames, and back to the systematic name with an empty one', () => {
		const renamed = edited(aPalette(), { edit: 'rename', id: 'rust', label: ' brick ' }).palette;
		expect(colourOf(renamed, 'rust').label).toBe('brick');
		expect(edited(renamed, { edit: 'rename', id: 'rust', label: '' }).sentence).toContain(
			colourOf(renamed, 'rust').name,
		);
	});

	it('gives another role and moves the colour to its place', () => {
		const { palette } = edited(aPalette(), { edit: 'role', id: 'rust', role: 'base' });
		expect(palette.colours.map(({ id }) => id)).toEqual(['oat', 'ink', 'rust', 'teal']);
	});

	it('adds a colour typed as CIELAB or as hex, base where it is neutral, main where it is not', () => {
		const grey = edited(aPalette(), { edit: 'add', hex: '#777777' }).palette;
		expect(colourOf(grey, 'new')).toMatchObject({ role: 'base', origin: 'by-hand', locked: true, firmness: 1 });
		const green = edited(aPalette(), { edit: 'add', lab: [50, -40, 30], label: 'moss', weight: 0.2 }).palette;
		expect(colourOf(green, 'new')).toMatchObject({ role: 'main', label: 'moss' });
		expect(colourOf(green, 'new').weight).toBeCloseTo(0.2, 9);
	});

	it('removes a colour and remembers it, so that deriving again leaves it out until it is added again', () => {
		const { palette } = edited(aPalette(), { edit: 'remove', id: 'teal' });
		expect(palette.removed).toEqual([TEAL]);
		const board = Array.from({ length: 6 }, () => ({ swatches: [aSwatch(OAT, 0.5), aSwatch(TEAL, 0.5)] }));
		expect(derivePalette(board, { keep: palette }).colours.some(({ lab }) => deltaE2000(lab, TEAL) < 10)).toBe(false);
		const back = edited(palette, { edit: 'add', lab: TEAL }).palette;
		expect(back.removed).toEqual([]);
	});

	it('keeps weights summing to 1 and ids unique after any row of edits', () => {
		const ids = fc.constantFrom('oat', 'ink', 'rust', 'teal');
		const anEdit: fc.Arbitrary<PaletteEdit> = fc.oneof(
			ids.map((id) => ({ edit: 'lock', id }) as const),
			ids.map((id) => ({ edit: 'split', id }) as const),
			ids.map((id) => ({ edit: 'remove', id }) as const),
			fc.tuple(ids, ids).map((both) => ({ edit: 'merge', ids: both }) as const),
			fc
				.integer({ min: 0, max: 0xffffff })
				.map((n) => ({ edit: 'add', hex: n.toString(16).padStart(6, '0') }) as const),
		);
		fc.assert(
			fc.property(fc.array(anEdit, { maxLength: 12 }), (edits) => {
				let next = 0;
				let palette = aPalette();
				for (const edit of edits) {
					const result = editPalette(palette, edit, () => `new-${next++}`);
					if (result.ok) palette = result.palette;
				}
				if (palette.colours.length > 0)
					expect(palette.colours.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 9);
				expect(new Set(palette.colours.map(({ id }) => id)).size).toBe(palette.colours.length);
			}),
		);
	});
});

describe('edits that cannot be', () => {
	it.each([
		[{ edit: 'lock', id: 'nothing' }, 'no-such-colour', 'received "nothing"'],
		[{ edit: 'merge', ids: ['rust'] }, 'too-few-to-merge', 'received 1'],
		[{ edit: 'merge', ids: ['rust', 'rust'] }, 'too-few-to-merge', 'received 1'],
		[{ edit: 'add', hex: 'reddish' }, 'not-a-colour', 'received reddish'],
		[{ edit: 'add', lab: [120, 0, 0] }, 'not-a-colour', 'received [120, 0, 0]'],
		[{ edit: 'add', lab: [Number.NaN, 0, 0] }, 'not-a-colour', 'received [NaN, 0, 0]'],
		[{ edit: 'add' }, 'not-a-colour', 'received nothing'],
		[{ edit: 'add', lab: [84, 1, 12] }, 'already-there', 'as oat'],
	] as [PaletteEdit, string, string][])(
		'%j is refused with what was expected and what came',
		(edit, reason, received) => {
			const result = refusal(aPalette(), edit);
			expect(result.reason).toBe(reason);
			expect(result.message).toContain('Expected');
			expect(result.message).toContain(received);
		},
	);

	it('a colour that is one in the pictures is not split, nor one without pictures', () => {
		const board = [0, 1, 2].map((step) => ({ swatches: [aSwatch([45 + step, 38, 40], 1, 'top')] }));
		for (const pictures of [board, []])
			expect(refusal(aPalette(), { edit: 'split', id: 'rust' }, pictures).message).toContain('they hold only one');
	});
});
