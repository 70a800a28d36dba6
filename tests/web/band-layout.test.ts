import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import type { Bands } from '../../src/wardrobe/gaps/bands.ts';
import { bandLayout } from '../../web/src/charts/band-layout.ts';

const lab: Lab65 = [50, 0, 0];

const bands: Bands = {
	asked: [
		{ paletteColourId: 'oat', amount: 0.6, covered: 0.5, missing: 0.1 },
		{ paletteColourId: 'ink', amount: 0.4, covered: 0.2, missing: 0.2 },
	],
	held: [
		{ id: 'held-1', lab, name: 'dark blue', amount: 0.25, surplus: 0.05, garmentIds: ['a'] },
		{ id: 'held-2', lab, name: 'grayish yellow', amount: 0.5, surplus: 0, garmentIds: ['b', 'c'] },
		{ id: 'held-3', lab, name: 'vivid pink', amount: 0.25, surplus: 0.25, garmentIds: ['d'] },
	],
	threads: [
		{ heldId: 'held-2', paletteColourId: 'oat', amount: 0.5 },
		{ heldId: 'held-1', paletteColourId: 'ink', amount: 0.2 },
	],
};

describe('where the woven bands lie', () => {
	it('each colour is as wide as its amount, and what is missing hangs loose at its end', () => {
		const { asked } = bandLayout(bands, 1000);
		expect(asked.map(({ span }) => [span.from, span.to])).toEqual([
			[0, 600],
			[600, 1000],
		]);
		expect(asked[0]!.loose.to - asked[0]!.loose.from).toBeCloseTo(100, 9);
		expect(asked[1]!.loose.to - asked[1]!.loose.from).toBeCloseTo(200, 9);
	});

	it('held colours lie under what they cover, and what covers nothing lies last', () => {
		const { held } = bandLayout(bands, 1000);
		expect(held.map(({ held: { id } }) => id)).toEqual(['held-2', 'held-1', 'held-3']);
		expect(held[2]!.loose).toEqual({ from: 750, to: 1000 });
	});

	it('a thread is as wide above as below', () => {
		for (const { thread, above, below } of bandLayout(bands, 1000).threads) {
			expect(above.to - above.from).toBeCloseTo(1000 * thread.amount, 9);
			expect(below.to - below.from).toBeCloseTo(1000 * thread.amount, 9);
		}
	});

	it('a home without palette or garments has empty bands', () => {
		expect(bandLayout({ asked: [], held: [], threads: [] }, 1000)).toEqual({ asked: [], held: [], threads: [] });
	});

	it('whatever covers what, threads stay inside their cloth and never lie on each other', () => {
		const flows = fc.array(fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { minLength: 2, maxLength: 4 }), {
			minLength: 2,
			maxLength: 4,
		});
		fc.assert(
			fc.property(flows, (rows) => {
				const columns = Math.min(...rows.map((row) => row.length));
				const total = rows.reduce((sum, row) => sum + row.slice(0, columns).reduce((a, b) => a + b, 0), 0);
				const threads = rows.flatMap((row, held) =>
					row
						.slice(0, columns)
						.map((flow, asked) => ({ heldId: `h${held}`, paletteColourId: `c${asked}`, amount: flow / total })),
				);
				const sum = (list: typeof threads) => list.reduce((all, { amount }) => all + amount, 0);
				const made: Bands = {
					asked: Array.from({ length: columns }, (_, index) => {
						const amount = sum(threads.filter(({ paletteColourId }) => paletteColourId === `c${index}`));
						return { paletteColourId: `c${index}`, amount, covered: amount, missing: 0 };
					}),
					held: rows.map((_, index) => ({
						id: `h${index}`,
						lab,
						name: '',
						amount: sum(threads.filter(({ heldId }) => heldId === `h${index}`)),
						surplus: 0,
						garmentIds: [],
					})),
					threads,
				};
				const layout = bandLayout(made, 1);
				for (const side of ['above', 'below'] as const) {
					const spans = layout.threads.map((thread) => thread[side]).sort((a, b) => a.from - b.from);
					for (const [index, span] of spans.entries()) {
						expect(span.from).toBeGreaterThanOrEqual(-1e-9);
						expect(span.to).toBeLessThanOrEqual(1 + 1e-9);
						if (index > 0) expect(span.from).toBeGreaterThanOrEqual(spans[index - 1]!.to - 1e-9);
					}
				}
			}),
		);
	});
});
