import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { readPhoto } from '../../src/photo/read-photo.ts';

/** A copy of the photos that fixtures/garment-patterns/README.md names; they are not part of this project. */
const folder = process.env.DYELOT_GARMENTS;

describe.skipIf(!folder)('the pattern of real garments', () => {
	it('agrees with what people saw in at least four of five photos', async () => {
		const rows = readFileSync(new URL('../../fixtures/garment-patterns/labels.csv', import.meta.url), 'utf8')
			.trim()
			.split('\n')
			.slice(2)
			.map((row) => row.split(','));
		expect(rows).toHaveLength(100);
		let agreed = 0;
		for (const [file, pattern, also] of rows) {
			const result = await readPhoto(join(folder!, file!));
			if (result.ok && [pattern, ...also!.split(' ')].includes(result.reading.pattern.type)) agreed++;
		}
		expect(agreed).toBeGreaterThanOrEqual(80);
	}, 300_000);
});
