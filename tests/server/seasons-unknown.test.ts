import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPERATIONS } from '../../src/server/operations/all.ts';
import { exampleOf } from '../../src/server/schemas/example-of.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test.close());

type Any = {
	readonly method: string;
	readonly url: string;
	readonly schema: { readonly body?: object; readonly querystring?: object };
};
const ofSeasons = (Object.values(OPERATIONS) as Any[]).filter(({ url }) => url.startsWith('/api/seasons/:id'));

describe('a season that does not exist', () => {
	it('has routes that ask for it', () => expect(ofSeasons.length).toBeGreaterThan(18));

	it.each(ofSeasons.map((one) => ({ ...one, name: `${one.method} ${one.url}` })))(
		'is not found by $name',
		async ({ method, url, schema }) => {
			const answer = await test.app.inject({
				method: method as 'GET',
				url: url.replace(':id', 'no-such-season'),
				headers: { host: 'localhost:4810', 'x-dyelot': 'page' },
				...(schema.querystring ? { query: exampleOf(schema.querystring) as Record<string, string> } : {}),
				...(schema.body ? { payload: exampleOf(schema.body) as object } : {}),
			});
			expect(answer.statusCode).toBe(404);
			expect(answer.json().error).toMatchObject({
				code: 'not-found',
				message: expect.stringMatching(
					/^Expected the id of something that exists \(season\); "no-such-season" names none\./,
				),
			});
		},
	);

	it('is refused for a wish, and for a photo of its board', async () => {
		const wish = { ...(exampleOf(OPERATIONS.addWish.schema.body) as object), seasonId: 'no-such-season' };
		expect((await test.send('POST', '/api/wishes', wish)).status).toBe(404);
		const upload = await test.upload({ purpose: 'inspiration', seasonId: 'no-such-season' }, [
			{ name: 'a.jpg', bytes: new Uint8Array([1, 2, 3]) },
		]);
		expect(upload.status).toBe(404);
	});
});
