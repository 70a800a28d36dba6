import { afterAll, describe, expect, it, vi } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { cutOut } from '../support/pictures.ts';

const DECODE = '../../src/photo/file/decode.ts';
const PARSER = '../../src/photo/networks/outline/parser.ts';
const rust: Lab65 = [45, 38, 40];

describe('the work of reading a photo', () => {
	// Files share their modules: those that are watched are loaded anew here, and anew once more for whoever comes next.
	afterAll(() => {
		for (const path of [DECODE, PARSER]) vi.doUnmock(path);
		vi.resetModules();
	});

	it('decodes and parses it once, whatever is wanted of it', async () => {
		vi.resetModules();
		for (const path of [DECODE, PARSER]) vi.doMock(path, { spy: true });
		const { readPhoto } = await import('../../src/photo/read-photo.ts');
		const { decodePhoto } = await import('../../src/photo/file/decode.ts');
		const { parsePhoto } = await import('../../src/photo/networks/outline/parser.ts');
		const point = { x: 200, y: 200 };
		const result = await readPhoto(await cutOut(rust), { derived: true, shades: 4, at: [point, point] });
		expect(result.ok).toBe(true);
		expect(decodePhoto).toHaveBeenCalledTimes(1);
		expect(parsePhoto).toHaveBeenCalledTimes(1);
	});
});
