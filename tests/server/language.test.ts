import { afterAll, beforeAll, describe, expect, it } from 'vitest';
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
});
