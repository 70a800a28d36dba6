import { readdirSync } from 'node:fs';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { multipartBody, type TestApp, testApp } from '../support/test-app.ts';

const homePath = temporaryFolder();
let test: TestApp;
let port: number;
beforeAll(async () => {
	test = await testApp({ homePath });
	await test.app.listen({ port: 0, host: '127.0.0.1' });
	port = (test.app.server.address() as { port: number }).port;
});
afterAll(() => test?.close());

const incoming = () => {
	try {
		return readdirSync(join(homePath, 'incoming'));
	} catch {
		// Made with the first photo.
		return [];
	}
};
/** Looks again until it is so; what never comes fails the test by its time limit. */
async function until(isSo: () => boolean): Promise<void> {
	while (!isSo()) await new Promise(setImmediate);
}

/** Sends the first half of an upload and stays on the line. */
function halfUpload(): Socket {
	const { payload, headers } = multipartBody({ purpose: 'garment' }, [
		{ name: 'half.jpg', bytes: new Uint8Array(400_000) },
	]);
	const socket = connect(port, '127.0.0.1');
	socket.on('error', () => {});
	const head = `POST /api/photos HTTP/1.1\r\nHost: localhost:${port}\r\nContent-Length: ${payload.length}\r\nContent-Type: ${headers['content-type']}\r\n\r\n`;
	socket.write(head);
	socket.write(payload.subarray(0, 200_000));
	return socket;
}

describe('photos on their way', () => {
	it('are four of a device at once, whoever goes on waiting; all is freed when they leave, and the next comes in', async () => {
		const sockets = Array.from({ length: 12 }, halfUpload);
		await until(() => incoming().length === 4);
		const bytes = await cutOut([40, 20, 10]);
		const { payload, headers } = multipartBody({ purpose: 'garment' }, [{ name: 'whole.png', bytes }]);
		const whole = test.app.inject({
			method: 'POST',
			url: '/api/photos',
			headers: { host: 'localhost', ...headers },
			payload,
		});
		expect(incoming()).toHaveLength(4);
		for (const socket of sockets) socket.destroy();
		const { items } = (await whole).json();
		expect(items[0]).toMatchObject({ ok: true });
		await until(() => incoming().length === 0);
		expect(await test.services.store.photos.list()).toHaveLength(1);
		await test.services.jobs.settled();
	});

	it('that are too large, no photo, or known already leave nothing behind', async () => {
		const bytes = await cutOut([40, 20, 10]);
		const tooLarge = new Uint8Array(60 * 1024 * 1024 + 1);
		const { body } = await test.upload({ purpose: 'garment' }, [
			{ name: 'too-large.jpg', bytes: tooLarge },
			{ name: 'words.jpg', bytes: new TextEncoder().encode('no photo at all') },
			{ name: 'again.png', bytes },
		]);
		expect(body.items).toMatchObject([
			{ ok: false, reason: 'too-many-bytes' },
			{ ok: false, reason: 'not-a-photo' },
			{ ok: true, keptBefore: true },
		]);
		expect(incoming()).toEqual([]);
	});

	it('are called by the first 200 letters of their files, and one picture is on a board once, on another again', async () => {
		const boards = [];
		for (const name of ['Spring', 'Autumn'])
			boards.push(
				(await test.send('POST', '/api/seasons', { name, startsOn: '2026-03-01', endsOn: '2026-05-31' })).body.id,
			);
		const photo = { name: `${'n'.repeat(250)}.png`, bytes: await cutOut([30, -20, 10]) };
		const shownOn = async (seasonId: string) =>
			(await test.upload({ purpose: 'inspiration', seasonId }, [photo])).body.items[0];
		const [first, again, other] = [await shownOn(boards[0]), await shownOn(boards[0]), await shownOn(boards[1])];
		expect(first.name).toBe('n'.repeat(200));
		expect(again.entryId).toBe(first.entryId);
		expect(other).toMatchObject({ photoId: first.photoId, keptBefore: true });
		expect(other.entryId).not.toBe(first.entryId);
	});
});
