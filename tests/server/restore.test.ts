import { existsSync } from 'node:fs';
import { mkdir, readdir, rename } from 'node:fs/promises';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type RunningServer, serve } from '../../src/server/serve.ts';
import { openHome } from '../../src/store/open-home.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const SPRING = { name: 'Spring', startsOn: '2027-03-01', endsOn: '2027-05-31' };
const AUTUMN = { name: 'Autumn', startsOn: '2027-09-01', endsOn: '2027-11-30' };

describe('restoring an archive while the page is open', () => {
	const folder = temporaryFolder();
	const homePath = join(folder, 'home');
	const said: string[] = [];
	let server: RunningServer;

	const ask = (path: string, init: RequestInit = {}) =>
		fetch(new URL(path, server.address), { ...init, headers: { 'x-dyelot': 'page', ...init.headers } });
	const start = (season: typeof SPRING) =>
		ask('/api/seasons', {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify(season),
		});
	const names = async () => ((await (await ask('/api/seasons')).json()) as { name: string }[]).map(({ name }) => name);
	const restore = (archive: BodyInit) =>
		ask('/api/restore', { method: 'POST', headers: { 'content-type': 'application/x-tar' }, body: archive });
	/** The seasons of the home that stands there after the program has started anew. */
	async function namesAnew() {
		for (;;) {
			const seasons = said.some((one) => one.includes('taken the place')) ? await names().catch(() => null) : null;
			if (seasons) return seasons;
			await new Promise((resolve) => setImmediate(resolve));
		}
	}

	beforeAll(async () => {
		server = await serve({ homePath, port: 0, share: false, log: (sentence) => said.push(sentence) });
		await start(SPRING);
	});
	afterAll(() => server?.close());

	it('refuses what is no archive, or was cut off, and leaves everything as it was', async () => {
		const archive = new Uint8Array(await (await ask('/api/backup')).arrayBuffer());
		for (const spoilt of [new Uint8Array(2048), archive.slice(0, archive.length / 2)]) {
			const answer = await restore(spoilt);
			expect(answer.status).toBe(400);
			const { error } = (await answer.json()) as { error: { message: string } };
			expect(error.message).toMatch(/^Expected .+archive/);
			expect(error.message).not.toContain(folder);
		}
		expect(await names()).toEqual(['Spring']);
		expect(await readdir(folder)).toEqual(['home']);
	});

	it('starts anew over a whole one, and keeps what was there beside it', async () => {
		const archive = await (await ask('/api/backup')).arrayBuffer();
		await start(AUTUMN);
		const answer = await restore(archive);
		expect(answer.status).toBe(202);
		const { files, setAside } = (await answer.json()) as { files: number; setAside: string };
		expect(files).toBeGreaterThan(0);
		expect(await namesAnew()).toEqual(['Spring']);
		expect((await server.services.store.seasons.list()).map(({ name }) => name)).toEqual(['Spring']);
		const before = await openHome(setAside, { now: () => new Date() });
		try {
			expect((await before.store.seasons.list()).map(({ name }) => name).toSorted()).toEqual(['Autumn', 'Spring']);
		} finally {
			await before.close();
		}
	});
});

describe('a stop between setting the old home aside and putting the new one in its place', () => {
	it('is ended by the next start', async () => {
		const folder = temporaryFolder();
		const homePath = join(folder, 'home');
		const first = await serve({ homePath, port: 0, share: false, log: () => {} });
		await first.close();
		await rename(homePath, `${homePath}.restored`);
		await mkdir(join(folder, 'home-before'));
		const again = await serve({ homePath, port: 0, share: false, log: () => {} });
		await again.close();
		expect(existsSync(homePath)).toBe(true);
		expect(existsSync(`${homePath}.restored`)).toBe(false);
	});
});
