import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, writeFileSync } from 'node:fs';
import { createServer, type RequestListener } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import type { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { objectPhotoFiles } from '../../src/store/object-photo-files.ts';
import { ObjectStoreError } from '../../src/store/object-requests.ts';
import { openObjectStore } from '../../src/store/object-store.ts';
import { startObjectStore } from '../support/object-store.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const idOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');

describe('photos in an object store', () => {
	const folder = temporaryFolder();
	let objects: Awaited<ReturnType<typeof startObjectStore>>;
	beforeAll(async () => {
		mkdirSync(join(folder, 'objects'));
		objects = await startObjectStore(join(folder, 'objects'));
	});
	afterAll(() => objects.stop());
	const filesOf = (home: string) => objectPhotoFiles(openObjectStore(objects.settings), home);

	it('are sent as they are read from the disk, and are gone there', async () => {
		const bytes = Buffer.alloc(3_000_000, 'cloth');
		const path = join(folder, 'incoming');
		writeFileSync(path, bytes);
		const files = filesOf('one');
		await files.takeOriginal(idOf(bytes), { path, sizeBytes: bytes.length, sha256: idOf(bytes) });
		expect(existsSync(path)).toBe(false);
		expect(Buffer.compare(await files.original(idOf(bytes)), bytes)).toBe(0);
	});

	it('of one home go together, and those of another stay', async () => {
		const bytes = new Uint8Array([1, 2, 3]);
		const [one, two] = [filesOf('going'), filesOf('staying')];
		for (const files of [one, two]) {
			await files.writeOriginal(idOf(bytes), bytes);
			await files.writeDerived(idOf(bytes), 'thumb', bytes);
		}
		await one.removeAll();
		expect(await one.derived(idOf(bytes), 'thumb')).toBeNull();
		await expect(one.original(idOf(bytes))).rejects.toThrow(/missing/);
		expect(await two.derived(idOf(bytes), 'thumb')).toEqual(bytes);
	});
});

describe('an object store that fails', () => {
	/** A store that answers the requests one after the other as the list says. */
	async function storeThat(answers: readonly RequestListener[], timeoutMs = 30_000) {
		let asked = 0;
		const server = createServer((request, response) => {
			request.resume();
			answers[Math.min(asked++, answers.length - 1)]!(request, response);
		});
		await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
		const { port } = server.address() as AddressInfo;
		const store = openObjectStore({
			endpoint: `http://127.0.0.1:${port}`,
			bucket: 'homes',
			region: 'us-east-1',
			accessKeyId: 'a',
			secretAccessKey: 'b',
			timeoutMs,
		});
		return { store, asked: () => asked, close: () => server.closeAllConnections() ?? server.close() };
	}
	const answering =
		(status: number): RequestListener =>
		(_request, response) =>
			void response.writeHead(status).end();
	const silent: RequestListener = () => {};

	it('for a moment is asked again, a file from its start', async () => {
		const path = join(temporaryFolder(), 'photo');
		writeFileSync(path, 'whole');
		const received: string[] = [];
		const taking: RequestListener = (request, response) => {
			request.on('data', (chunk) => received.push(String(chunk)));
			request.on('end', () => response.writeHead(200).end());
		};
		const { store, asked, close } = await storeThat([answering(500), taking]);
		await store.put('a', { path, sizeBytes: 5, sha256: idOf(Buffer.from('whole')) });
		expect([asked(), received.join('')]).toEqual([2, 'whole']);
		close();
	});

	it('for good is told as an error after three tries, and one that refuses at once', async () => {
		const failing = await storeThat([answering(503)]);
		await expect(failing.store.put('a', new Uint8Array(1))).rejects.toThrow(ObjectStoreError);
		expect(failing.asked()).toBe(3);
		failing.close();
		const refusing = await storeThat([answering(403)]);
		await expect(refusing.store.get('a')).rejects.toThrow(/403/);
		expect(refusing.asked()).toBe(1);
		refusing.close();
	});

	const BYTES = Buffer.from(Array.from({ length: 300_000 }, (_, index) => index % 251));
	/** Sends the object from the byte asked for, `most` bytes of it, then breaks off or falls silent. */
	const sending =
		(most: number, then: 'breaks' | 'silent'): RequestListener =>
		(request, response) => {
			const from = Number(/^bytes=(\d+)-$/.exec(request.headers.range ?? '')?.[1] ?? 0);
			response.writeHead(from > 0 ? 206 : 200, { 'content-length': BYTES.length - from });
			response.write(BYTES.subarray(from, from + most), () => {
				if (from + most >= BYTES.length) response.end();
				else if (then === 'breaks') setTimeout(() => response.destroy(), 20);
			});
		};
	const readWhole = async (stream: Readable) => Buffer.concat(await stream.toArray());

	it('in the middle of an object is asked for the rest, once the line breaks or falls silent', async () => {
		for (const then of ['breaks', 'silent'] as const) {
			const { store, asked, close } = await storeThat([sending(200_000, then)], 300);
			const { sizeBytes, stream } = (await store.open('a'))!;
			expect(sizeBytes).toBe(BYTES.length);
			expect((await readWhole(stream)).equals(BYTES)).toBe(true);
			expect(asked()).toBe(2);
			close();
		}
	});

	it('in the middle of an object for good, or gives another part of it, is told as an error', async () => {
		const failing = await storeThat([sending(1000, 'breaks')]);
		await expect(readWhole((await failing.store.open('a'))!.stream)).rejects.toThrow(ObjectStoreError);
		failing.close();
		const whole: RequestListener = (_request, response) => void response.writeHead(200).end(BYTES);
		const wrong = await storeThat([sending(1000, 'breaks'), whole]);
		await expect(readWhole((await wrong.store.open('a'))!.stream)).rejects.toThrow(ObjectStoreError);
		wrong.close();
		const without = await storeThat([answering(404)]);
		expect(await without.store.open('a')).toBeNull();
		without.close();
	});

	it('is not taken for silent while nobody takes what it sends', async () => {
		const { store, asked, close } = await storeThat([sending(300_000, 'breaks')], 100);
		const { stream } = (await store.open('a'))!;
		await new Promise((resolve) => setTimeout(resolve, 400));
		expect((await readWhole(stream)).equals(BYTES)).toBe(true);
		expect(asked()).toBe(1);
		close();
	});

	it('by saying nothing is not waited for without end', async () => {
		const { store, asked, close } = await storeThat([silent], 50);
		await expect(store.get('a')).rejects.toThrow(ObjectStoreError);
		expect(asked()).toBe(3);
		close();
	});
});
