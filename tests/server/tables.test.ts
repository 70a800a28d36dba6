import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test?.close());

const bring = async (url: string, payload: string | Buffer, type = 'text/csv') => {
	const headers = { host: 'localhost:4810', 'content-type': type };
	const answer = await test.app.inject({ method: 'POST', url, headers, payload });
	return { status: answer.statusCode, body: answer.json() };
};

describe('a table of garments', () => {
	it('says how it was taken, stores nothing as a preview, then all of it as one decision', async () => {
		const bytes = readFileSync('fixtures/tables/windows-1252-semicolon.csv');
		const preview = await bring('/api/garments/import?preview=true', bytes);
		expect(preview.body).toMatchObject({ encoding: 'Windows-1252', separator: 'semicolon', added: 4, problemCount: 0 });
		expect((await test.get('/api/garments')).body).toHaveLength(0);
		expect((await bring('/api/garments/import', bytes)).body.added).toBe(4);
		const stored = (await test.get('/api/garments')).body as { name: string; yearParts: string[] }[];
		expect(stored.map(({ name }) => name)).toContain('Señora’s coat');
		await test.send('POST', '/api/undo');
		expect((await test.get('/api/garments')).body).toHaveLength(0);
		await test.send('POST', '/api/redo');
		expect((await test.get('/api/garments')).body).toHaveLength(4);
	});

	it('comes back from our own export as changes', async () => {
		const csv = (await test.get('/api/garments.csv')).body as string;
		expect((await bring('/api/garments/import', csv)).body).toMatchObject({ added: 0, changed: 0, unchanged: 4 });
		const changed = await bring('/api/garments/import', csv.replace(',120,', ',95,'));
		expect(changed.body).toMatchObject({
			added: 0,
			changed: 1,
			changedNames: [{ name: 'Señora’s coat', columns: ['price'] }],
			unchanged: 3,
		});
		const stored = (await test.get('/api/garments')).body as { name: string; price: number }[];
		expect(stored.find(({ name }) => name === 'Señora’s coat')?.price).toBe(95);
	});

	it('must be text/csv', async () => {
		expect((await bring('/api/garments/import', '{}', 'application/json')).status).toBe(400);
		expect((await bring('/api/garments/import', '<a/>', 'text/xml')).status).toBe(415);
	});
});

describe('a table of wears', () => {
	it('comes back from our own export, and is noted once', async () => {
		const [garment] = (await test.get('/api/garments')).body as { id: string }[];
		const wears = [{ garmentId: garment!.id, on: '2025-03-14' }];
		await test.send('POST', '/api/wears', { wears });
		const csv = (await test.get('/api/export/wears.csv')).body as string;
		expect((await bring('/api/wears/import', csv)).body).toMatchObject({ added: 0, notedBefore: 1, problemCount: 0 });
		await test.send('DELETE', '/api/wears', wears[0]);
		expect((await bring('/api/wears/import', csv)).body).toMatchObject({ added: 1, notedBefore: 0, problemCount: 0 });
		expect((await test.get('/api/wears')).body).toEqual(wears);
	});
});
