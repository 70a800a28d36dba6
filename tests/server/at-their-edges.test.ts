import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { todayOf } from '../../src/app/services.ts';
import { aReading, aSwatch, OAT, RUST } from '../support/build-wardrobe.ts';
import { addedPhoto, decided, putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test?.close());

const newestSentence = async (): Promise<string> => (await test.get('/api/decisions')).body[0].sentence;
const season = async (name: string): Promise<string> =>
	(await test.send('POST', '/api/seasons', { name, startsOn: '2026-03-01', endsOn: '2026-05-31' })).body.id;
let photos = 0;
/** A photo whose reading is told. */
async function readPhoto(lab: typeof OAT): Promise<string> {
	const { store } = test.services;
	const about = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: '2026-03-01T08:00:00.000Z' };
	const { id } = await addedPhoto(store, new TextEncoder().encode(`photo ${photos++}`), about);
	await store.photos.saveReading(id, aReading([aSwatch(lab)]), {});
	return id;
}

describe('a piece found for sale', () => {
	it('is bought once, then neither bought again nor passed; one that was passed can still be bought', async () => {
		const seasonId = await season('Shopping');
		const fields = {
			kind: 'coat',
			kindFrom: 'user',
			price: null,
			used: true,
			source: '',
			photoId: await readPhoto(OAT),
		} as const;
		const of = (id: string) =>
			({ id, seasonId, name: id, addedAt: '2026-03-01T08:00:00.000Z', state: 'open', ...fields }) as const;
		await decided(test.services.store, { candidates: { put: [of('first'), of('second')] } });
		expect((await test.send('POST', '/api/candidates/first/bought')).status).toBe(200);
		expect((await test.send('POST', '/api/candidates/first/bought')).status).toBe(409);
		expect((await test.send('POST', '/api/candidates/first/passed')).status).toBe(409);
		expect((await test.send('POST', '/api/candidates/second/passed')).body.state).toBe('passed');
		expect((await test.send('POST', '/api/candidates/second/bought')).status).toBe(200);
	});
});

describe('a season begun from another', () => {
	it('is in use, with the board of that one alone', async () => {
		const [from, other] = [await season('Old'), await season('Other')];
		const picture = (id: string, seasonId: string, photoId: string) =>
			({
				id,
				seasonId,
				photoId,
				title: id,
				titleFrom: 'user',
				group: '',
				addedAt: '2026-03-01T08:00:00.000Z',
			}) as const;
		const put = [picture('own', from, await readPhoto(OAT)), picture('foreign', other, await readPhoto(RUST))];
		await decided(test.services.store, { inspirations: { put } });
		await test.send('PATCH', `/api/seasons/${from}`, { archived: true });
		const dates = { name: 'New', startsOn: '2027-03-01', endsOn: '2027-05-31' };
		const { body } = await test.send('POST', `/api/seasons/${from}/copy`, dates);
		expect(body.archived).toBe(false);
		const board = (await test.get(`/api/seasons/${body.id}/inspirations`)).body;
		expect(board.map(({ title }: { title: string }) => title)).toEqual(['own']);
	});
});

describe('a palette derived from garments', () => {
	it('is that of the rail alone', async () => {
		const seasonId = await season('From the rail');
		await putGarments(test.services.store, [
			garmentDetails({ id: 'here', photoIds: [await readPhoto(OAT)] }),
			garmentDetails({ id: 'away', photoIds: [await readPhoto(RUST)], place: 'stored' }),
		]);
		await test.send('PATCH', '/api/garments', { ids: ['away'], changes: { place: 'stored' } });
		const { body } = await test.send('POST', `/api/seasons/${seasonId}/palette/derive`, { from: 'garments' });
		const distances = body.palette.colours.map(({ lab }: { lab: number[] }) => Math.abs(lab[1]! - RUST[1]!));
		expect(Math.min(...distances)).toBeGreaterThan(10);
	});
});

describe('what is told of garments', () => {
	it('names them as far as a line goes', async () => {
		const [one, other] = ['a'.repeat(150), 'b'.repeat(150)];
		await putGarments(test.services.store, [
			garmentDetails({ id: 'long1', name: one, nameFrom: 'user' }),
			garmentDetails({ id: 'long2', name: other, nameFrom: 'user' }),
		]);
		await test.send('PATCH', '/api/garments', { ids: ['long1', 'long2'], changes: { notes: 'both' } });
		expect(await newestSentence()).toContain(`${one}, ${other}`.slice(0, 280));
		expect(await newestSentence()).not.toContain(other);
	});

	it('is worn today at the latest, by name where it is one', async () => {
		await putGarments(test.services.store, garmentDetails({ id: 'worn', name: 'Loden', nameFrom: 'user' }));
		const today = todayOf(test.services);
		const wear = (...days: readonly string[]) =>
			test.send('POST', '/api/wears', { wears: days.map((on) => ({ garmentId: 'worn', on })) });
		expect((await wear(today)).status).toBe(201);
		expect(await newestSentence()).toContain('Loden');
		expect((await wear('2026-01-01', '2026-01-02')).status).toBe(201);
		expect(await newestSentence()).toContain('2');
		expect((await wear('9999-12-31')).status).toBe(400);
	});

	it('keeps its only photo', async () => {
		const photoId = await readPhoto(OAT);
		await putGarments(test.services.store, garmentDetails({ id: 'single', photoIds: [photoId] }));
		expect((await test.send('POST', '/api/garments/single/part', { photoId })).status).toBe(400);
	});
});
