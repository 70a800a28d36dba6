import type { RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { OPEN_ROUTES } from '../../src/server/open-routes.ts';
import { formsOf } from '../support/address-forms.ts';
import { strangersAddress, strangerTo } from '../support/stranger.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

describe('a device that was not paired', () => {
	const registered: RouteOptions[] = [];
	let test: TestApp;
	let stranger: ReturnType<typeof strangerTo>;
	beforeAll(async () => {
		test = await testApp({ share: true, onRoute: (route) => void registered.push(route) });
		await test.app.listen({ port: 0, host: '0.0.0.0' });
		stranger = strangerTo((test.app.server.address() as { port: number }).port);
	});
	afterAll(async () => {
		stranger?.close();
		await test?.close();
	});

	/** Every route of the running application, `METHOD address`. */
	const routes = () => registered.flatMap(({ method, url }) => [method].flat().map((one) => [one, url] as const));

	it('comes from an address that is not this computer’s own loopback', () => {
		expect(strangersAddress()).not.toBe('127.0.0.1');
	});

	it('finds no route but the open ones, however its address is written', async () => {
		const closed = routes().filter(([method, url]) => !OPEN_ROUTES.has(`${method} ${url}`));
		expect(closed.length).toBeGreaterThan(80);
		const letIn: string[] = [];
		let tried = 0;
		for (const [method, url] of closed) {
			const path = url.replace(/:[^/]+/g, 'x').replace('*', 'x');
			for (const form of formsOf(path, stranger.host)) {
				const status = await stranger.statusOf(method, form);
				tried++;
				if (status !== 401 && status !== 404) letIn.push(`${method} ${form}: ${status}`);
			}
		}
		expect(letIn).toEqual([]);
		expect(tried).toBeGreaterThan(5_000);
	});

	it('is told 401 at every route as it is written, and nothing of the wardrobe', async () => {
		for (const [method, url] of routes()) {
			if (OPEN_ROUTES.has(`${method} ${url}`)) continue;
			const { status, text } = await stranger.ask(method, url.replace(/:[^/]+/g, 'x').replace('*', 'x'));
			expect(`${method} ${url}: ${status}`).toBe(`${method} ${url}: 401`);
			if (method !== 'HEAD') expect(JSON.parse(text).error.code).toBe('not-paired');
		}
	});

	it('may ask only for the page itself and for pairing', () => {
		const open = routes()
			.map(([method, url]) => `${method} ${url}`)
			.filter((route) => OPEN_ROUTES.has(route));
		for (const route of open)
			expect(route).toMatch(
				/^(GET|HEAD) \/(assets\/\*|mark\.svg|seasons|devices|season\/:id\/:place)?$|^POST \/api\/pair$/,
			);
		expect(open).toContain('POST /api/pair');
	});

	it('is answered about an address that is none before its body is read', async () => {
		const json = { 'content-type': 'application/json' };
		expect((await stranger.ask('POST', '/nothing', json, '{"never": "read')).status).toBe(404);
	});
});
