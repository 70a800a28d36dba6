import { SqliteDriver } from 'kysely';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { aReading, aSwatch, INK, OAT, RUST, TEAL } from '../support/build-wardrobe.ts';
import { addedPhoto, putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

/**
 * Guards against slow work that do not time anything: they count. The limits are this project's own choice: a few queries a page whatever
 * the size of the wardrobe, and a list of 2,000 garments within 2 MB.
 */
const MOST_QUERIES: Readonly<Record<string, number>> = {
	'/api/status': 3,
	'/api/garments': 2,
	'/api/seasons/:id/report': 16,
};
const MOST_BYTES_A_GARMENT = 1000;

let test: TestApp;
let seasonId: string;
beforeAll(async () => {
	test = await testApp();
	const { body } = await test.send('POST', '/api/seasons', {
		name: 'Spring',
		startsOn: '2026-03-01',
		endsOn: '2026-05-31',
	});
	seasonId = body.id;
});
afterAll(() => test?.close());

let added = 0;
/** Adds garments, each with a photo of its own that has been read. */
async function addGarments(count: number): Promise<void> {
	const { store } = test.services;
	for (let i = 0; i < count; i++, added++) {
		const bytes = new TextEncoder().encode(`photo ${added}`);
		const addedAt = '2026-01-01T00:00:00Z';
		const { id } = await addedPhoto(store, bytes, { originalName: `${added}.jpg`, mediaType: 'image/jpeg', addedAt });
		const colours = [OAT, INK, RUST, TEAL];
		const swatches = [aSwatch(colours[added % 4]!, 0.8, 'top'), aSwatch(colours[(added + 1) % 4]!, 0.2, 'top')];
		await store.photos.saveReading(id, aReading(swatches), {});
		await putGarments(store, garmentDetails({ id: `g${added}`, name: `Shirt ${added}`, photoIds: [id] }), 'added');
	}
}

/** How many statements reach the database while an answer is made: outside transactions each takes the connection once. */
async function queriesOf(url: string): Promise<number> {
	const taken = vi.spyOn(SqliteDriver.prototype, 'acquireConnection');
	const { status } = await test.get(url);
	const count = taken.mock.calls.length;
	taken.mockRestore();
	expect(status).toBe(200);
	return count;
}

describe('work done for an answer', () => {
	it('asks the database a fixed number of times, however many garments there are', async () => {
		await addGarments(4);
		const routes = Object.keys(MOST_QUERIES);
		const few = new Map<string, number>();
		for (const route of routes) few.set(route, await queriesOf(route.replace(':id', seasonId)));
		await addGarments(36);
		for (const route of routes) {
			const many = await queriesOf(route.replace(':id', seasonId));
			expect(many, route).toBe(few.get(route));
			expect(many, route).toBeGreaterThan(0);
			expect(many, route).toBeLessThanOrEqual(MOST_QUERIES[route]!);
		}
	});

	it('sends a garment in less than a thousand bytes', async () => {
		const sent = async () => JSON.stringify((await test.get('/api/garments')).body).length;
		const before = await sent();
		await addGarments(10);
		const each = ((await sent()) - before) / 10;
		expect(each).toBeGreaterThan(200);
		expect(each).toBeLessThanOrEqual(MOST_BYTES_A_GARMENT);
	});

	it('reads a photo once, and never again to show it', async () => {
		const read = vi.spyOn(test.services.pool, 'read');
		const files = await Promise.all(
			[RUST, TEAL].map(async (lab, index) => ({ name: `${index}.png`, bytes: await cutOut(lab) })),
		);
		const { body } = await test.upload({ purpose: 'garment' }, files);
		for (const { photoId } of body.items) {
			for (const picture of ['thumb', 'display', 'labels', 'original'])
				expect((await test.get(`/api/photos/${photoId}/${picture}`)).status).toBe(200);
		}
		await test.upload({ purpose: 'garment' }, files);
		expect(read).toHaveBeenCalledTimes(files.length);
		read.mockRestore();
	});
});
