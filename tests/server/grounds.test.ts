import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { UNTOLD_PHONE } from '../../src/reading/light/light-model.ts';
import { aReading, aSwatch } from '../support/build-wardrobe.ts';
import { addedPhoto, putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

const UNTOLD = { source: 'none', cast: null, strength: 0, reason: '', model: UNTOLD_PHONE, error: 10 } as const;
const QUALITY = { clothesShare: 0.4, clippedShare: 0, brightest: 0.9, sharpness: 0.3 };
const PLANKS = [-5, 0.3, 0.2, 0.1, 0, 1.5, 0.2, 0.1, 0, 0.1, -0.5];

let added = 0;
/** A photo whose ground is seen in this colour, read already. */
async function photoOn(ground: Lab65, texture: readonly number[] = PLANKS): Promise<string> {
	const { store } = test.services;
	const about = { originalName: 'IMG.jpg', mediaType: 'image/jpeg', addedAt: '2026-01-01T00:00:00.000Z' };
	const { id } = await addedPhoto(store, new TextEncoder().encode(`ground ${added++}`), about);
	const reading = aReading([aSwatch([40, 0, 2], 1, 'top')], {
		photoKind: 'single',
		light: UNTOLD,
		ownLight: UNTOLD,
		quality: QUALITY,
		ground: { lab: ground, share: 0.5, texture },
	});
	await store.photos.saveReading(id, reading, {});
	// Only what a garment shows counts.
	await putGarments(store, garmentDetails({ id: `of ${id}`, photoIds: [id] }));
	return id;
}

const lightOf = async (id: string) => (await test.services.store.photos.get(id))!.reading!.light;

describe('photos that share a ground', () => {
	it('are told together, take their light from it once all is read, and may be parted and brought back', async () => {
		const ids = [
			await photoOn([60, 5, 15]),
			await photoOn([66, 5, 16]),
			await photoOn([62, 6, 14]),
			await photoOn([70, 4, 15]),
		];
		await test.services.followGrounds();
		const [set] = (await test.get('/api/grounds')).body;
		expect([...set.photoIds].sort()).toEqual([...ids].sort());
		expect(set).toMatchObject({ unused: null, told: false, measuredBy: [] });
		for (const id of ids) expect(await lightOf(id)).toMatchObject({ source: 'ground' });

		const parted = await test.send('POST', '/api/grounds', { photoIds: [ids[0]], word: 'apart' });
		expect(parted.body[0].photoIds).not.toContain(ids[0]);
		expect(await lightOf(ids[0]!)).toMatchObject({ source: 'none' });
		const before = await test.services.store.photos.get(ids[0]!);
		expect(before).toMatchObject({ status: 'read', correction: { ground: null } });

		const back = await test.send('POST', '/api/grounds', { photoIds: ids, word: 'one' });
		expect(back.body[0]).toMatchObject({ told: true });
		expect(back.body[0].photoIds).toHaveLength(4);
		expect(await lightOf(ids[0]!)).toMatchObject({ source: 'ground' });
		// What is said of the light itself leaves the word on the ground as it is.
		await test.send('PUT', `/api/photos/${ids[1]}/correction`, { byHand: { warmer: 1, lighter: 0 } });
		expect((await test.services.store.photos.get(ids[1]!))!.correction).toMatchObject({ ground: expect.any(String) });
	});

	it('are refused as one ground where only one photo is named', async () => {
		const id = await photoOn(
			[30, 0, 0],
			PLANKS.map((value) => value + 3),
		);
		const answer = await test.send('POST', '/api/grounds', { photoIds: [id], word: 'one' });
		expect(answer).toMatchObject({ status: 400 });
		expect(answer.body.error.message).toMatch(/^Expected two or more photos that show one ground; received fewer/);
	});
});
