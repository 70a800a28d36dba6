import sharp from 'sharp';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

const RUST = [45, 38, 40] as const;
const INK = [30, 2, -14] as const;
const LEFT = { left: 0, top: 0, right: 0.5, bottom: 1 };
const RIGHT = { left: 0.5, top: 0, right: 1, bottom: 1 };

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test?.close());

/** A photo that shows two pieces side by side on a light floor, never the same one twice. */
async function twoPieces(): Promise<Uint8Array> {
	const [left, right] = await Promise.all([cutOut(RUST), cutOut(INK)]);
	const width = 820 + 2 * count++;
	return sharp({ create: { width, height: 420, channels: 3, background: '#d8d6d2' } })
		.composite([
			{ input: left, left: 5, top: 10 },
			{ input: right, left: width - 405, top: 10 },
		])
		.png()
		.toBuffer();
}
let count = 0;

const garments = async (): Promise<Garment[]> => (await test.get('/api/garments')).body;
const one = async (id: string): Promise<Garment> => (await garments()).find((garment) => garment.id === id)!;
const undo = () => test.send('POST', '/api/undo');

describe('a photo that shows two garments', () => {
	let id: string;
	let photoId: string;
	beforeEach(async () => {
		const { body } = await test.upload({ purpose: 'garment' }, [{ name: 'two.png', bytes: await twoPieces() }]);
		({ entryId: id, photoId } = body.items[0]);
		await test.send('PATCH', `/api/garments/${id}`, { price: 40, notes: 'from my sister', place: 'stored' });
	});

	it('becomes two garments, each with its own colour; the first keeps what was told of it', async () => {
		const { body } = await test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: [LEFT, RIGHT] });
		await test.services.jobs.settled();
		const [first, second] = await Promise.all(body.garments.map((garment: Garment) => one(garment.id)));
		expect(first).toMatchObject({ id, price: 40, notes: 'from my sister', place: 'stored' });
		expect(second).toMatchObject({ price: null, notes: '', place: 'stored' });
		// The colours that the picture was drawn in; a JPEG and an estimated lamp stand between.
		expect(deltaE2000(first!.swatches[0]!.lab, RUST)).toBeLessThan(8);
		expect(deltaE2000(second!.swatches[0]!.lab, INK)).toBeLessThan(8);
		// Each is called by its own colour now.
		expect(first!.name).toMatch(/^(rust|brown|chestnut|brick red) /);
		expect(second!.name).toMatch(/^(navy|dark blue|charcoal|black) /);
	});

	it('is one garment again by undo, with its photo', async () => {
		const before = await one(id);
		const count = (await garments()).length;
		await test.send('PATCH', `/api/garments/${id}`, { kind: 'skirt' });
		await test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: [LEFT, RIGHT] });
		expect(await garments()).toHaveLength(count + 1);
		// The kind suggested for the second once it is read is nobody's decision.
		await test.services.jobs.settled();
		expect((await undo()).body.sentence).toMatch(/^Made two garments/);
		expect(await garments()).toHaveLength(count);
		expect(await one(id)).toMatchObject({ photoIds: [photoId], kind: 'skirt', swatches: before.swatches });
	});

	it('keeps its other photos, and a neutral that was pointed at within the box', async () => {
		const { body } = await test.upload({ purpose: 'garment' }, [{ name: 'back.png', bytes: await twoPieces() }]);
		await test.send('POST', '/api/garments/merge', { ids: [id, body.items[0].entryId] });
		await test.send('PUT', `/api/photos/${photoId}/correction`, { neutrals: [{ x: 600, y: 3, lightness: 90 }] });
		await test.services.jobs.settled();
		const { photoIds } = await one(id);
		const answer = await test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: [LEFT, RIGHT] });
		await test.services.jobs.settled();
		const [first, second] = answer.body.garments as [Garment, Garment];
		expect(first.photoIds).toEqual([expect.not.stringMatching(photoId), photoIds[1]]);
		const correctionOf = async (photo: string) => (await test.services.store.photos.get(photo))!.correction;
		expect(await correctionOf(first.photoIds[0]!)).toEqual({});
		const [neutral] = (await correctionOf(second.photoIds[0]!)).neutrals!;
		const { widthPx } = (await test.services.store.photos.get(photoId))!.reading!;
		expect(neutral).toMatchObject({ lightness: 90, y: 3 });
		expect(neutral!.x).toBeCloseTo(600 - widthPx / 2, 6);
	});

	it('cut the same way again, after undo, leaves its parts as they were read and corrected', async () => {
		await test.send('PUT', `/api/photos/${photoId}/correction`, { byHand: { warmer: 1, lighter: 0 } });
		const split = () => test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: [LEFT, RIGHT] });
		const part = (await split()).body.garments[0].photoIds[0];
		await test.services.jobs.settled();
		await undo();
		await test.services.jobs.settled();
		await test.send('PUT', `/api/photos/${part}/correction`, { byHand: { warmer: 3, lighter: 0 } });
		await test.services.jobs.settled();
		expect((await split()).body.garments[0].photoIds[0]).toBe(part);
		expect((await test.services.store.photos.get(part))!.correction).toEqual({ byHand: { warmer: 3, lighter: 0 } });
	});

	it('is cut however thin a box is drawn: a pixel of the photo is the least', async () => {
		const thin = { ...LEFT, right: 0.0001 };
		const { status, body } = await test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: [thin, RIGHT] });
		expect(status).toBe(200);
		const part = await test.services.store.photos.original(body.garments[0].photoIds[0]);
		expect((await sharp(part).metadata()).width).toBe(1);
		await test.services.jobs.settled();
	});

	it.each([
		['no width', () => [LEFT, { ...RIGHT, right: 0.5 }], 400],
		['the same box twice', () => [LEFT, LEFT], 400],
		['one box', () => [LEFT], 400],
		['a box beyond the picture', () => [LEFT, { ...RIGHT, right: 1.2 }], 400],
	] as const)('is left as it is where asked for with %s', async (_what, boxes, status) => {
		const before = await garments();
		const answer = await test.send('POST', `/api/garments/${id}/split`, { photoId, boxes: boxes() });
		expect(answer.status).toBe(status);
		expect(answer.body.error.message).toMatch(/^Expected .+; received .+/);
		expect(await garments()).toEqual(before);
	});

	it('is refused where the photo is another garment’s', async () => {
		const answer = await test.send('POST', `/api/garments/${id}/split`, {
			photoId: 'a'.repeat(64),
			boxes: [LEFT, RIGHT],
		});
		expect(answer.status).toBe(404);
		expect(answer.body.error.message).toMatch(/^Expected the id of something that exists \(photo of .+\)/);
	});
});

describe('a photo named by a camera', () => {
	it('never names the garment: that is called by its looks, a second one like it “the other”, and all of it goes by one undo and comes back by one redo', async () => {
		const files = [
			{ name: 'IMG_4711.png', bytes: await cutOut(RUST) },
			{ name: 'IMG_4712.png', bytes: await cutOut([44.5, 38, 40]) },
		];
		const { body } = await test.upload({ purpose: 'garment' }, files);
		await test.services.jobs.settled();
		const [first, second] = await Promise.all(body.items.map(({ entryId }: { entryId: string }) => one(entryId)));
		expect(first.name).toMatch(/^rust /);
		expect(second.name).toMatch(/^rust .+ \((the (other|third|fourth)|no\. \d+)\)$/);
		expect((await undo()).body.sentence).toBe('Added a garment');
		expect((await undo()).body.sentence).toBe('Added a garment');
		await test.send('POST', '/api/redo');
		expect(await one(first.id)).toMatchObject({ kind: first.kind, kindFrom: first.kindFrom });
	});
});

describe('two entries of one garment', () => {
	const make = async (told: object) => {
		const { body } = await test.send('POST', '/api/garments', { name: 'Front' });
		return (await test.send('PATCH', `/api/garments/${body.id}`, told)).body as Garment;
	};

	it('become one that keeps what either says, wears too, and part again by undo', async () => {
		const front = await make({ notes: 'wash cold', price: null });
		const back = await make({ notes: 'from Ada', price: 12, kind: 'coat', yearParts: ['winter'] });
		await test.send('POST', '/api/wears', { wears: [{ garmentId: back.id, on: '2026-01-05' }] });
		const { body } = await test.send('POST', '/api/garments/merge', { ids: [front.id, back.id] });
		expect(body).toMatchObject({
			id: front.id,
			notes: 'wash cold\nfrom Ada',
			price: 12,
			kind: 'coat',
			kindFrom: 'user',
			yearParts: ['winter'],
		});
		const wears = await test.services.store.wears();
		expect(wears).toContainEqual({ garmentId: front.id, on: '2026-01-05' });
		expect((await undo()).body.sentence).toBe('Joined Front and Front');
		expect(await test.services.store.wears()).toEqual([{ garmentId: back.id, on: '2026-01-05' }]);
		expect(await one(back.id)).toMatchObject({ notes: 'from Ada', price: 12 });
		expect((await one(front.id)).notes).toBe('wash cold');
	});

	it('are never one and the same: naming it twice changes nothing', async () => {
		const front = await make({ notes: 'the only one' });
		for (const [method, url] of [
			['POST', '/api/garments/merge'],
			['DELETE', '/api/garments'],
		] as const) {
			const answer = await test.send(method, url, { ids: [front.id, front.id] });
			expect(answer.status).toBe(400);
			expect(answer.body.error.message).toMatch(/^Expected .+ for “ids”; received /);
		}
		expect(await one(front.id)).toMatchObject({ notes: 'the only one' });
	});

	it('of which one photo is another garment are parted as one decision', async () => {
		const { body } = await test.upload({ purpose: 'garment' }, [
			{ name: 'front.png', bytes: await twoPieces() },
			{ name: 'back.png', bytes: await twoPieces() },
		]);
		const [front, back] = body.items as [{ entryId: string; photoId: string }, { entryId: string; photoId: string }];
		await test.send('POST', '/api/garments/merge', { ids: [front.entryId, back.entryId] });
		await test.send('PATCH', `/api/garments/${front.entryId}`, { kind: 'skirt', yearParts: ['summer'] });
		const count = (await garments()).length;
		const parted = await test.send('POST', `/api/garments/${front.entryId}/part`, { photoId: back.photoId });
		expect(parted.body.garments[1]).toMatchObject({ photoIds: [back.photoId], yearParts: ['summer'] });
		expect(await garments()).toHaveLength(count + 1);
		expect((await undo()).body.sentence).toMatch(/^Parted/);
		expect((await one(front.entryId)).photoIds).toEqual([front.photoId, back.photoId]);
		const alone = await make({ notes: '' });
		expect((await test.send('POST', `/api/garments/${alone.id}/part`, { photoId: back.photoId })).status).toBe(404);
	});
});
