import Fastify, { type FastifyError, type RouteOptions } from 'fastify';
import { Type } from 'typebox';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { BODY_LIMITS } from '../../src/server/body-limits.ts';
import { OPEN_ROUTES } from '../../src/server/open-routes.ts';
import { validateBodiesStrictly } from '../../src/server/validation.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

const registered: RouteOptions[] = [];
let test: TestApp;
beforeAll(async () => {
	test = await testApp({ share: true, onRoute: (route) => void registered.push(route) });
});
afterAll(() => test?.close());

const JSON_TYPE = { 'content-type': 'application/json' };
const stranger = () => ({
	remoteAddress: '192.168.1.20',
	headers: { host: test.services.sharing!.names()[0]!, ...JSON_TYPE },
});

describe('how much a request may bring', () => {
	it('is said at every route: what takes more than a decision is named', () => {
		const larger = registered
			.filter(({ bodyLimit }) => (bodyLimit ?? 0) > BODY_LIMITS.decision)
			.map(({ method, url }) => `${method} ${url}`)
			.sort();
		expect(larger).toEqual([
			'POST /api/garments/import',
			'POST /api/photos',
			'POST /api/restore',
			'POST /api/wears/import',
			'PUT /api/photos/:id/mask',
		]);
	});

	it('is a kilobyte wherever anybody may bring something', () => {
		const open = registered.filter(({ method, url }) => OPEN_ROUTES.has(`${method} ${url}`) && method !== 'GET');
		const bringing = open.filter(({ method }) => method !== 'HEAD' && String(method) !== 'GET,HEAD');
		expect(bringing.map(({ method, url, bodyLimit }) => [method, url, bodyLimit])).toEqual([
			['POST', '/api/pair', 1024],
		]);
	});

	it.each([
		['/api/pair', '{"code":"', 1025, 413],
		['/api/pair', '{"code":"', 8 * 1024 * 1024, 413],
		['/api/garments', '{"name":"', 8 * 1024 * 1024, 401],
		['/api/nothing', '{"name":"', 8 * 1024 * 1024, 404],
	] as const)('%s answers a stranger with %s and %d bytes by %d', async (url, begin, size, status) => {
		const payload = `${begin}${'x'.repeat(size)}"}`;
		expect((await test.app.inject({ method: 'POST', url, payload, ...stranger() })).statusCode).toBe(status);
	});

	it('is 256 kB for a decision', async () => {
		const payload = JSON.stringify({ name: 'x'.repeat(BODY_LIMITS.decision) });
		const headers = { host: 'localhost', ...JSON_TYPE };
		const answer = await test.app.inject({ method: 'POST', url: '/api/garments', payload, headers });
		expect(answer.statusCode).toBe(413);
	});

	it('is looked at only until the first fault', async () => {
		const app = Fastify();
		validateBodiesStrictly(app);
		const complaints: number[] = [];
		app.setErrorHandler((error: FastifyError, _request, reply) => {
			complaints.push(error.validation?.length ?? 0);
			return reply.code(400).send();
		});
		const list = Type.Object({ list: Type.Array(Type.Integer()) });
		app.post('/body', { schema: { body: list } }, async () => 'taken');
		app.get('/query', { schema: { querystring: list } }, async () => 'taken');
		await app.inject({ method: 'POST', url: '/body', payload: { list: Array.from({ length: 1000 }, () => 'x') } });
		await app.inject({ url: `/query?${Array.from({ length: 100 }, () => 'list=x').join('&')}` });
		expect(complaints).toEqual([1, 1]);
		await app.close();
	});
});
