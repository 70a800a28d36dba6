import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAGE_ADDRESSES } from '../../src/server/open-routes.ts';

describe('the addresses of the page', () => {
	it('are the same for the server, which sends it, and for the page, which shows what they name', () => {
		const app = readFileSync(new URL('../../web/src/app.tsx', import.meta.url), 'utf8');
		const shown = [...app.matchAll(/<Route path="([^"]+)"/g)].map(([, path]) => path);
		expect(shown.sort()).toEqual([...PAGE_ADDRESSES].sort());
	});
});
