import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { LARGE } from '../../../src/app/beside/large-work.ts';
import type { ServerEvent } from '../../../src/app/events.ts';
import { tableOfGarments } from '../../support/large-table.ts';
import { type TestApp, testApp } from '../../support/test-app.ts';

// What makes a table large is its bytes: a few thousand lines with long notes are as large as many short ones, and sooner done.
const LINES = 2_500;
const NOTES = ' in the loft'.repeat(30);
const TABLE = tableOfGarments(LINES, NOTES);

describe('a table too large to be done between other entries', () => {
	let home: TestApp;
	const heard: ServerEvent[] = [];
	beforeAll(async () => {
		home = await testApp();
		home.services.events.listen((event) => heard.push(event));
	});
	afterAll(() => home.close());

	const bring = async (url: string, key: string, payload = TABLE) => {
		const headers = { host: 'localhost:4810', 'content-type': 'text/csv', 'idempotency-key': key };
		const answer = await home.app.inject({ method: 'POST', url, headers, payload });
		return { status: answer.statusCode, body: JSON.parse(answer.payload) };
	};

	it('is large', () => expect(TABLE.length).toBeGreaterThan(LARGE));

	it('is shown first without being taken in', async () => {
		const { status, body } = await bring('/api/garments/import?preview=true', 'show-it-first');
		expect(status).toBe(200);
		expect(body).toMatchObject({ added: LINES, changed: 0, problemCount: 0 });
		expect(await home.services.store.garments.count()).toBe(0);
	});

	it('is taken in once, however often it is sent, as one decision that pages are told of in short', async () => {
		const first = await bring('/api/garments/import', 'take-it-in');
		expect(first.body).toMatchObject({ added: LINES });
		expect(await bring('/api/garments/import', 'take-it-in')).toEqual(first);
		expect(await home.services.store.garments.count()).toBe(LINES);
		expect((await home.get('/api/decisions')).body).toHaveLength(1);
		expect(heard).toEqual([{ event: 'changed', data: { entries: [{ kind: 'garment', id: '*' }] } }]);
	});

	it('is refused with its reason where the thread refuses it', async () => {
		const other = await bring('/api/garments/import', 'take-it-in', tableOfGarments(LINES + 1, NOTES));
		expect(other).toMatchObject({ status: 422, body: { error: { code: 'key-reused' } } });
	});

	it('is taken back by one undo and done again by one redo', async () => {
		expect((await home.send('POST', '/api/undo')).status).toBe(200);
		expect(await home.services.store.garments.count()).toBe(0);
		expect((await home.send('POST', '/api/redo')).status).toBe(200);
		expect(await home.services.store.garments.count()).toBe(LINES);
	});

	it('leaves small decisions as they are, the newest first', async () => {
		await home.send('POST', '/api/garments', { name: 'A scarf' });
		expect((await home.send('POST', '/api/undo')).status).toBe(200);
		expect(await home.services.store.garments.count()).toBe(LINES);
	});
});
