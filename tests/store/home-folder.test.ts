import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { isFolder, makeHomeFolder } from '../../src/store/home-folder.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

describe('the folder of a home', () => {
	it('can be made by many programs at the same time, without one of them taking it for a dead link', async () => {
		const parent = temporaryFolder();
		for (let round = 0; round < 50; round++) {
			const path = join(parent, String(round));
			await Promise.all(Array.from({ length: 16 }, () => makeHomeFolder(path)));
			expect(await isFolder(path)).toBe(true);
		}
	});
});
