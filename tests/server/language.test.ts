import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutOut } from '../support/pictures.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

describe('the language of an answer', () => {
	it('is the one that the request asks for, also when several are answered at once', async () => {
		const season = { name: 'Autumn', startsOn: '2026-09-01', endsOn: '2026-11-30' };
		const { body } = await test.send('POST', '/api/seasons', season);
		const stationIn = async (language: string) => {
			const answer = await test.app.inject({
				method: 'GET',
				url: `/api/seasons/${body.id}/report`,
				headers: { host: '127.0.0.1', 'accept-language': language },
			});
			expect(answer.statusCode).toBe(200);
			return answer.json().stations[0].sentence;
		};
		const asked = ['de-AT,de;q=0.9', 'en-GB', 'fr', 'de', 'en-US'];
		expect(await Promise.all(asked.map(stationIn))).toEqual([
			'nichts als getragen vermerkt',
			'no wears noted',
			'no wears noted',
			'nichts als getragen vermerkt',
			'no wears noted',
		]);
	});

	it('tells what was stored in the language of whoever asks, whoever stored it', async () => {
		const ask = async (language: string, method: 'GET' | 'POST', url: string, payload?: object) => {
			const headers = { host: '127.0.0.1', 'accept-language': language };
			const answer = await test.app.inject({ method, url, headers, ...(payload ? { payload } : {}) });
			expect(answer.statusCode).toBeLessThan(300);
			return answer.json();
		};
		await ask('de', 'POST', '/api/garments', { name: 'The "best" coat' });
		expect((await ask('en-GB', 'POST', '/api/undo')).sentence).toBe('Added the garment The "best" coat');
		expect((await ask('de', 'POST', '/api/redo')).sentence).toBe('Kleidungsstück The "best" coat hinzugefügt');
		const photo = { name: 'cloth.png', bytes: await cutOut([60, 30, 20]) };
		const { photoId } = (await test.upload({ purpose: 'garment' }, [photo])).body.items[0];
		const reasonsIn = async (language: string) =>
			(await ask(language, 'GET', `/api/photos/${photoId}`)).reading.trust.reasons;
		expect((await reasonsIn('en-GB')).join()).toContain('no white in the picture');
		expect((await reasonsIn('de')).join()).toContain('kein Weiß im Bild');
	});

	it('tells what a table brought in the language of whoever asks, too', async () => {
		const take = (what: string, payload: string) =>
			test.app.inject({
				method: 'POST',
				url: `/api/${what}/import`,
				headers: { host: '127.0.0.1', 'accept-language': 'de', 'content-type': 'text/csv' },
				payload,
			});
		const told = async () => (await test.get('/api/decisions')).body[0].sentence;
		await take('garments', 'name,kind\nLoden,coat\n');
		expect(await told()).toBe('Took in a table: 1 garment added, 0 changed');
		await take('wears', 'day,garment\n2026-02-01,Loden\n');
		expect(await told()).toBe('Took in a table: 1 wear');
	});
});
