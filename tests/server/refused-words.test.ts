import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
let garmentId = '';
let seasonId = '';
beforeAll(async () => {
	test = await testApp();
	garmentId = (await test.send('POST', '/api/garments', { name: ' Oat shirt ' })).body.id;
	seasonId = (await test.send('POST', '/api/seasons', { name: 'Spring', startsOn: '2027-03-01', endsOn: '2027-05-31' }))
		.body.id;
});
afterAll(() => test?.close());

describe('words that mean nothing', () => {
	it('a name keeps no blanks around it', async () => {
		expect((await test.get('/api/garments')).body).toMatchObject([{ name: 'Oat shirt' }]);
	});

	it.each([
		['a season', 'POST', '/api/seasons', { name: ' ', startsOn: '2027-03-01', endsOn: '2027-05-31' }],
		['a garment', 'POST', '/api/garments', { name: '' }],
		['a maker', 'POST', '/api/makers', { name: '\t', notes: '' }],
	] as const)('%s without a name is refused', async (_what, method, url, body) => {
		const answer = await test.send(method, url, body);
		expect(answer.status).toBe(400);
		expect(answer.body.error.message).toMatch(/^Expected some text that is not only blanks for “name”; received "/);
	});

	// The Gregorian calendar: 2027 and 2100 are no leap years, 2028 is one.
	it.each([
		['2027-02-29', 400],
		['2027-02-31', 400],
		['2100-02-29', 400],
		['2027-13-01', 400],
		['2028-02-29', 201],
	])('a season that starts on %s is answered with %i', async (startsOn, status) => {
		const answer = await test.send('POST', '/api/seasons', { name: 'A', startsOn, endsOn: '2200-01-01' });
		expect(answer.status).toBe(status);
		if (status === 400)
			expect(answer.body.error.message).toBe(
				`Expected a day of the calendar like 2026-03-14 for “first day”; received "${startsOn}".`,
			);
	});

	it('a wear on a day that does not exist is refused, and so is such a range', async () => {
		const wears = [{ garmentId, on: '2026-02-31' }];
		expect((await test.send('POST', '/api/wears', { wears })).status).toBe(400);
		expect((await test.get('/api/wears?from=2026-02-31')).status).toBe(400);
	});

	it('a season keeps what it had where a change is refused', async () => {
		const before = (await test.get(`/api/seasons/${seasonId}`)).body;
		await test.send('PATCH', `/api/seasons/${seasonId}`, { endsOn: '2027-06-31' });
		expect((await test.get(`/api/seasons/${seasonId}`)).body).toEqual(before);
	});
});

describe('ids that name nothing', () => {
	const photoId = 'f'.repeat(64);
	it.each<[what: string, method: string, url: string, body: () => object | undefined]>([
		['a garment for a wear', 'POST', '/api/wears', () => ({ wears: [{ garmentId: 'nobody', on: '2026-03-01' }] })],
		['a wear to take back', 'DELETE', '/api/wears', () => ({ garmentId, on: '2026-03-01' })],
		['a photo of a new garment', 'POST', '/api/garments', () => ({ name: 'A', photoIds: [photoId] })],
		['a photo of a garment', 'PATCH', '/api/garments/GARMENT', () => ({ photoIds: [photoId] })],
		['a photo of several', 'PATCH', '/api/garments', () => ({ ids: [garmentId], changes: { photoIds: [photoId] } })],
		['a garment of a set', 'PATCH', '/api/seasons/SEASON/line-up', () => ({ garmentIds: ['nobody'] })],
		['a garment to keep', 'PATCH', '/api/seasons/SEASON/line-up', () => ({ mustKeep: ['nobody'] })],
		['a garment to pair', 'PUT', '/api/pair-words', () => ({ a: garmentId, b: 'nobody', word: 'approved' })],
		['a gap to wish for', 'POST', '/api/seasons/SEASON/wishes/from-gap', () => ({ gapId: 'nothing' })],
		['a thing in the bin', 'POST', '/api/bin/nobody/restore', () => undefined],
		['garments to join', 'POST', '/api/garments/merge', () => ({ ids: [garmentId, 'nobody'] })],
	])('%s is refused with 404', async (_what, method, url, body) => {
		const address = url.replace('GARMENT', garmentId).replace('SEASON', seasonId);
		const answer = await test.send(method as 'POST', address, body());
		expect(answer.status).toBe(404);
		expect(answer.body.error.message).toMatch(/^Expected the id of something that exists \(.+\); ".+" names none\./);
	});
});
