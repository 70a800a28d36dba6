import { createHash, randomBytes } from 'node:crypto';
import { mkdirSync, writeFileSync } from 'node:fs';
import { createServer, get, type IncomingMessage, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { objectPhotoFiles } from '../../../src/store/object-photo-files.ts';
import { openObjectStore } from '../../../src/store/object-store.ts';
import { openHome } from '../../../src/store/open-home.ts';
import { restoreBackup } from '../../../src/store/restore.ts';
import { addedPhoto } from '../../support/decided.ts';
import { type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { startObjectStore } from '../../support/object-store.ts';
import { startPostgres } from '../../support/postgres.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of downloads skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const MEGABYTE = 1024 * 1024;
const PHOTOS = 2;
const PHOTO_BYTES = 50 * MEGABYTE;
/** What the sockets and streams on the way may hold: those of the system alone take ten megabytes on a line within one machine. */
const MOST_ON_THE_WAY = 25 * MEGABYTE;

/** Passes requests on to the object store, and counts the bytes of photos that leave it. */
async function countedStore(folder: string) {
	mkdirSync(folder, { recursive: true });
	const { settings, stop } = await startObjectStore(folder);
	const { hostname, port: target } = new URL(settings.endpoint);
	const counted = { bytes: 0, open: 0 };
	const proxy = createServer((asked, response) => {
		const { method, url, headers } = asked;
		const onward = request({ host: hostname, port: target, method, path: url, headers }, (answer) => {
			response.writeHead(answer.statusCode ?? 500, answer.headers);
			if (method === 'GET') counted.open++;
			response.once('close', () => {
				if (method === 'GET') counted.open--;
				answer.destroy();
			});
			answer.on('data', ({ length }: Buffer) => {
				if (method === 'GET') counted.bytes += length;
			});
			answer.pipe(response);
		});
		onward.once('error', () => response.destroy());
		asked.pipe(onward);
	});
	await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve));
	const { port } = proxy.address() as AddressInfo;
	const close = async () => {
		proxy.closeAllConnections();
		proxy.close();
		await stop();
	};
	return { settings: { ...settings, endpoint: `http://127.0.0.1:${port}` }, counted, close };
}

describe.skipIf(!postgres.ok)('downloads of a home whose photos lie in an object store', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let objects: Awaited<ReturnType<typeof countedStore>>;
	let ada: Awaited<ReturnType<HostedTest['newcomer']>>;
	let port: number;
	const ids: string[] = [];
	const filesOf = (home: string) => objectPhotoFiles(openObjectStore(objects.settings), home);
	beforeAll(async () => {
		objects = await countedStore(join(temporaryFolder(), 'objects'));
		test = await hostedTestApp({ connectionString: await postgres.newDatabase(), filesOf });
		ada = await test.newcomer('Ada');
		const { store } = await test.host.homeServices(ada.home);
		const about = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: '2026-03-01T10:00:00.000Z' };
		for (let n = 0; n < PHOTOS; n++) ids.push((await addedPhoto(store, randomBytes(PHOTO_BYTES), about)).id);
		await test.app.listen({ port: 0, host: '127.0.0.1' });
		port = (test.app.server.address() as AddressInfo).port;
	});
	afterAll(async () => {
		await test?.close();
		await objects?.close();
	});

	const ask = (path: string) =>
		new Promise<IncomingMessage>((resolve, reject) => {
			const headers = { host: test.origin.host, cookie: ada.cookie() };
			const call = get({ host: '127.0.0.1', port, path: `/homes/${ada.home}/api${path}`, agent: false, headers });
			call.once('response', resolve).once('error', reject);
		});
	/** Waits until nothing has moved for a while. */
	async function untilStill(): Promise<void> {
		for (let before = -1; before !== objects.counted.bytes; ) {
			before = objects.counted.bytes;
			await new Promise((resolve) => setTimeout(resolve, 300));
		}
	}
	const photo = () => `/photos/${ids[0]}/original`;

	it.each([
		['a photo', photo],
		['the archive', () => '/backup'],
	])('%s leaves the store no faster than it is taken, and no further once its reader leaves', async (_what, path) => {
		objects.counted.bytes = 0;
		const answer = await ask(path());
		answer.on('error', () => {});
		expect(answer.statusCode).toBe(200);
		await new Promise((resolve) => answer.once('readable', resolve));
		await untilStill();
		expect(objects.counted.bytes).toBeLessThan(MOST_ON_THE_WAY);
		answer.destroy();
		await vi.waitFor(() => expect(objects.counted.open).toBe(0), { timeout: 10_000 });
		expect(objects.counted.bytes).toBeLessThan(MOST_ON_THE_WAY);
	});

	it('a photo comes byte for byte', async () => {
		const answer = await ask(photo());
		expect(answer.headers['content-length']).toBe(String(PHOTO_BYTES));
		const hash = createHash('sha256');
		for await (const piece of answer) hash.update(piece as Buffer);
		expect(hash.digest('hex')).toBe(ids[0]);
	});

	it('the archive is whole; a photo that the store has lost is told when it is restored, and keeps nobody from the others', async () => {
		await filesOf(ada.home).removeDerived(ids[1]!, 'thumb');
		await openObjectStore(objects.settings).remove(`${ada.home}/photos/${ids[1]!.slice(0, 2)}/${ids[1]}`);
		const lost = await ask(`/photos/${ids[1]}/original`);
		expect(lost.statusCode).toBe(404);
		lost.resume();
		const folder = temporaryFolder();
		const answer = await ask('/backup');
		writeFileSync(join(folder, 'home.tar'), Buffer.concat((await answer.toArray()) as Buffer[]));
		const { findings } = await restoreBackup(join(folder, 'home.tar'), join(folder, 'home'), () => new Date());
		expect(findings).toEqual([expect.stringMatching(/a\.jpg/)]);
		const { store, close } = await openHome(join(folder, 'home'), { now: () => new Date() });
		expect((await store.photos.original(ids[0]!)).length).toBe(PHOTO_BYTES);
		await close();
	});
});
