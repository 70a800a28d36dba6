import { describe, expect, it } from 'vitest';
import { cleanedLabels } from '../../../src/reading/outline/label-cleaning.ts';

/** Labels drawn as text: `.` background, digits are classes. */
function drawn(...rows: string[]) {
	const classes = Uint8Array.from(rows.join(''), (letter) => (letter === '.' ? 0 : Number(letter)));
	return { widthPx: rows[0]!.length, heightPx: rows.length, classes };
}

/** A block of cloth of 30 x 30 with something in or beside it. */
function block(change: (rows: string[][]) => void) {
	const rows = Array.from({ length: 40 }, (_, y) =>
		Array.from({ length: 60 }, (_, x) => (y >= 5 && y < 35 && x >= 5 && x < 35 ? '1' : '.')),
	);
	change(rows);
	return drawn(...rows.map((row) => row.join('')));
}
const at = (labels: { widthPx: number }, x: number, y: number) => y * labels.widthPx + x;

describe('the outline of the clothes', () => {
	it('drops a speck beside a single garment', () => {
		const labels = block((rows) => {
			rows[20]![50] = '3';
		});
		expect(cleanedLabels(labels, 'single')[at(labels, 50, 20)]).toBe(0);
	});

	it('keeps both of a pair, and a small shoe on a person', () => {
		const labels = block((rows) => {
			for (let y = 10; y < 20; y++) rows[y]!.fill('6', 45, 55);
		});
		expect(cleanedLabels(labels, 'single')).toEqual(labels.classes);
		const worn = block((rows) => {
			for (let y = 10; y < 13; y++) rows[y]!.fill('6', 45, 48);
		});
		expect(cleanedLabels(worn, 'worn')).toEqual(worn.classes);
	});

	it('closes a small hole with the cloth around it, but no gap between legs, and no skin', () => {
		const labels = block((rows) => {
			rows[10]![10] = '.';
			rows[12]![20] = '8';
			for (let y = 20; y < 30; y++) rows[y]!.fill('.', 15, 25);
		});
		const cleaned = cleanedLabels(labels, 'single');
		expect(cleaned[at(labels, 10, 10)]).toBe(1);
		expect(cleaned[at(labels, 20, 12)]).toBe(8);
		expect(cleaned[at(labels, 20, 25)]).toBe(0);
	});

	it('changes nothing where there are no clothes, however odd the picture', () => {
		for (const labels of [drawn('.'), drawn('8'), drawn('........'), drawn('.', '9', '.')]) {
			expect(cleanedLabels(labels, 'single')).toEqual(labels.classes);
		}
		expect([...cleanedLabels(drawn('1'), 'single')]).toEqual([1]);
	});
});
