import { readFile } from 'node:fs/promises';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { labelOfSlot } from '../../src/reading/pixels.ts';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
let inspirationId: string;
let seasonId: string;
beforeAll(async () => {
	test = await testApp();
	const season = await test.send('POST', '/api/seasons', { name: 'S', startsOn: '2026-03-01', endsOn: '2026-05-31' });
	seasonId = season.body.id;
	await test.upload({ purpose: 'inspiration', seasonId }, [{ name: 'rust.png', bytes: await cutOut([45, 38, 40]) }]);
	inspirationId = (await test.get(`/api/seasons/${seasonId}/inspirations`)).body[0].id;
});
afterAll(() => test?.close());

describe('what somebody says of a piece of a picture', () => {
	const tell = (pieceKinds: unknown) => test.send('PATCH', `/api/inspirations/${inspirationId}`, { pieceKinds });

	it('is kept, can be said anew, and is taken back by an undo', async () => {
		expect((await tell([{ piece: 0, kind: 'coat' }])).body.pieceKinds).toEqual([{ piece: 0, kind: 'coat' }]);
		expect((await tell([{ piece: 0, kind: 'blazer' }])).body.pieceKinds).toEqual([{ piece: 0, kind: 'blazer' }]);
		await test.send('POST', '/api/undo');
		const [kept] = (await test.get(`/api/seasons/${seasonId}/inspirations`)).body;
		expect(kept.pieceKinds).toEqual([{ piece: 0, kind: 'coat' }]);
	});

	it('is refused where it is no kind or no piece', async () => {
		expect((await tell([{ piece: 0, kind: 'toga' }])).status).toBe(400);
		expect((await tell([{ piece: -1, kind: 'coat' }])).status).toBe(400);
		expect((await tell('coat')).status).toBe(400);
	});
});

describe('what somebody said of a piece, once the photo is read otherwise', () => {
	const board = async () => (await test.get(`/api/seasons/${seasonId}/inspirations`)).body;

	it('stays with that piece when an outline drawn by hand changes their order, and when it is forgotten', async () => {
		const bytes = await readFile(new URL('../../demo-images/i04-garden-work.jpg', import.meta.url));
		await test.upload({ purpose: 'inspiration', seasonId }, [{ name: 'garden.jpg', bytes }]);
		const { id, photoId } = (await board()).find((one: { id: string }) => one.id !== inspirationId);
		const slots = async () =>
			(await test.get(`/api/photos/${photoId}`)).body.reading.pieces.map((piece: { slot: string }) => piece.slot);
		const told = async () => (await board()).find((one: { id: string }) => one.id === id).pieceKinds;
		expect((await slots()).indexOf('bottom')).toBe(1);
		await test.send('PATCH', `/api/inspirations/${id}`, { pieceKinds: [{ piece: 1, kind: 'jeans' }] });

		// The trousers alone: what is worn above is no piece any more, and they come first.
		const photo = await decodePhoto(bytes);
		if (!photo.ok) throw new Error(photo.message);
		const { classes, widthPx: width, heightPx: height } = await parsePhoto(photo.analysis);
		const trousers = classes.map((label) => (label === labelOfSlot('bottom') ? 255 : 0));
		const mask = await sharp(trousers, { raw: { width, height, channels: 1 } })
			.png()
			.toBuffer();
		const drawn = await test.app.inject({
			method: 'PUT',
			url: `/api/photos/${photoId}/mask`,
			headers: { host: 'localhost:4810', 'content-type': 'image/png' },
			payload: mask,
		});
		expect(drawn.statusCode).toBe(200);
		await test.services.jobs.settled();
		expect((await slots()).indexOf('bottom')).toBe(0);
		expect(await told()).toEqual([{ piece: 0, kind: 'jeans' }]);

		await test.send('DELETE', `/api/photos/${photoId}/mask`);
		await test.services.jobs.settled();
		expect((await slots()).indexOf('bottom')).toBe(1);
		expect(await told()).toEqual([{ piece: 1, kind: 'jeans' }]);
	});
});
