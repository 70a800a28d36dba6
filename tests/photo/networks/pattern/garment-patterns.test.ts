import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../../../src/photo/read-photo.ts';

/** A copy of the photos that fixtures/garment-patterns/README.md names; they are not part of this project. */
const folder = process.env.DYELOT_GARMENTS;
if (!folder)
	console.info('Skipped: the pattern of real garments, since DYELOT_GARMENTS names no folder with their photos.');

describe.skipIf(!folder)('the pattern of a hundred real garments, none of which the network was trained on', () => {
	it('is the word first told by eye, or the second, in nine of ten, and mostly the first', async () => {
		const rows = readFileSync(new URL('../../../../fixtures/garment-patterns/labels.csv', import.meta.url), 'utf8')
			.trim()
			.split('\n')
			.slice(2)
			.map((row) => row.split(','));
		expect(rows).toHaveLength(100);
		let [first, either, sure] = [0, 0, 0];
		for (const [file, pattern, also] of rows) {
			const result = await readPhoto(join(folder!, file!));
			if (!result.ok) continue;
			const told = result.reading.pattern;
			sure += told.sure;
			if (told.type === pattern) first++;
			if ([pattern, ...also!.split(' ')].includes(told.type)) either++;
		}
		console.info(`Patterns of 100 garments: first choice ${first}, either ${either}, sure ${(sure / 100).toFixed(2)}.`);
		expect(first).toBeGreaterThanOrEqual(84);
		expect(either).toBeGreaterThanOrEqual(92);
		expect(Math.abs(sure - first) / 100).toBeLessThanOrEqual(0.08);
	});
});
