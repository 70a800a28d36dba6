import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

describe('what goes with a garment', () => {
	it('is listed whole: as many as the report counts', async () => {
		const dates = { startsOn: '2026-09-01', endsOn: '2026-11-30' };
		const season = (await test.send('POST', '/api/seasons', { name: 'Sorrel', ...dates })).body;
		const shirt = (await test.send('POST', '/api/garments', { name: 'Shirt' })).body;
		for (let count = 0; count < 7; count++) {
			const { id } = (await test.send('POST', '/api/garments', { name: `Trousers ${count}` })).body;
			await test.send('PATCH', `/api/garments/${id}`, { kind: 'trousers' });
			const pair = { a: shirt.id, b: id, word: 'approved' };
			await test.send('PUT', '/api/pair-words', pair);
		}
		const { body: report } = await test.get(`/api/seasons/${season.id}/report`);
		const said = report.garments.find(({ garmentId }: { garmentId: string }) => garmentId === shirt.id);
		const { body: partners } = await test.get(`/api/seasons/${season.id}/partners?garmentId=${shirt.id}`);
		expect(said.partnerCount).toBe(7);
		expect(partners).toHaveLength(7);
		expect(partners.slice(0, said.partners.length)).toEqual(said.partners);
	});

	it('of a garment that is not here is refused', async () => {
		const [season] = (await test.get('/api/seasons')).body;
		expect((await test.get(`/api/seasons/${season.id}/partners?garmentId=none`)).status).toBe(404);
	});
});
