import { describe, expect, it, vi } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { cutOut } from '../support/pictures.ts';

vi.mock('../../src/photo/file/decode.ts', { spy: true });
vi.mock('../../src/photo/networks/outline/parser.ts', { spy: true });

const rust: Lab65 = [45, 38, 40];

describe('the work of reading a photo', () => {
	it('decodes and parses it once, whatever is wanted of it', async () => {
		const point = { x: 200, y: 200 };
		const result = await readPhoto(await cutOut(rust), { derived: true, shades: 4, at: [point, point] });
		expect(result.ok).toBe(true);
		expect(decodePhoto).toHaveBeenCalledTimes(1);
		expect(parsePhoto).toHaveBeenCalledTimes(1);
	});
});
