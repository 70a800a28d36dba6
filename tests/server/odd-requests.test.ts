import { EventEmitter } from 'node:events';
import type { Socket } from 'node:net';
import { Readable } from 'node:stream';
import Fastify, { type RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { takeArchives } from '../../src/server/archive-bodies.ts';
import { BODY_LIMITS } from '../../src/server/body-limits.ts';
import { limitLines } from '../../src/server/lines-a-device.ts';
import { listen, PortError } from '../../src/server/listen.ts';
import { valueInShort } from '../../src/server/value-in-short.ts';
import { type TestApp, testApp } from '../support/test-app.ts';

const registered: RouteOptions[] = [];
let test: TestApp;
beforeAll(async () => {
	test = await testApp({ share: true, onRoute: (route) => void registered.push(route) });
});
afterAll(() => test?.close());

const own = { host: 'localhost:4810' };
const TAR = { 'content-type': 'application/x-tar' };
const ask = async (method: string, url: string, headers: object, payload?: string | Buffer) => {
	const answer = await test.app.inject({
		method: method as 'POST',
		url,
		headers: { ...own, ...headers },
		...(payload === undefined ? {} : { payload }),
	});
	return { status: answer.statusCode, text: answer.payload };
};

describe('bodies of a kind that a route does not take', () => {
	it.each([
		['an archive', TAR],
		['a table', { 'content-type': 'text/csv' }],
		['a picture', { 'content-type': 'image/png' }],
		['a form', { 'content-type': 'multipart/form-data; boundary=x' }],
		['text', { 'content-type': 'text/plain' }],
	])('%s is never a fault of the program, whichever the route', async (_what, type) => {
		const faults: string[] = [];
		let asked = 0;
		for (const { method, url } of registered)
			for (const one of [method].flat()) {
				if (!['POST', 'PUT', 'PATCH', 'DELETE'].includes(one)) continue;
				const { status } = await ask(one, url.replaceAll(/:\w+/g, 'x'), type, 'no such thing');
				asked++;
				if (status >= 500) faults.push(`${one} ${url}: ${status}`);
			}
		expect(asked).toBeGreaterThan(40);
		expect(faults).toEqual([]);
	});

	it('an archive from a device that was not paired is refused where it is not for one', async () => {
		const answer = await test.app.inject({
			method: 'POST',
			url: '/api/pair',
			remoteAddress: '192.168.1.20',
			headers: { host: test.services.sharing!.names()[0]!, ...TAR },
			payload: '{"code":"12345678"}',
		});
		expect([answer.statusCode, JSON.parse(answer.payload).error.code]).toEqual([400, 'bad-request']);
	});

	it('an archive that says it is larger than any home is refused before it comes', async () => {
		const headers = { ...TAR, 'content-length': String(BODY_LIMITS.archive + 1) };
		expect((await ask('POST', '/api/restore', headers, 'x')).status).toBe(413);
	});

	it.each([
		[4, null],
		[5, 'too-large'],
	])('an archive that does not say how large it is is cut off at its limit of 4: %s bytes', async (bytes, code) => {
		const app = Fastify();
		takeArchives(app);
		const refusal = new Promise<string | null>((resolve) => {
			app.post('/api/restore', { bodyLimit: 4 }, async ({ body }) => {
				await (body as Readable).toArray().then(
					() => resolve(null),
					(error: { code: string }) => resolve(error.code),
				);
				return {};
			});
		});
		const payload = Readable.from([Buffer.alloc(3), Buffer.alloc(bytes - 3)]);
		// What is cut off in the middle ends the request's own stream too.
		await app.inject({ method: 'POST', url: '/api/restore', headers: TAR, payload }).catch(() => {});
		expect(await refusal).toBe(code);
		await app.close();
	});
});

describe('bodies nested deeper than the stack', () => {
	const nested = (open: string, close: string, deep: number) => `${open.repeat(deep)}1${close.repeat(deep)}`;
	it.each([
		['/api/garments', `{"name":${nested('[', ']', 60_000)}}`],
		['/api/garments', `{"name":${nested('{"a":', '}', 40_000)}}`],
		['/api/wears', nested('[', ']', 100_000)],
	])('are refused at %s with a sentence', async (url, payload) => {
		const { status, text } = await ask('POST', url, { 'content-type': 'application/json' }, payload);
		expect(status).toBe(400);
		expect(JSON.parse(text).error.message.length).toBeLessThan(300);
	});
});

describe('what a person is told', () => {
	it('of a fault is that there was one, and of a full disk that it is full; never what the program says of it', async () => {
		const decide = vi.spyOn(test.services.store, 'decide');
		for (const [error, status, code] of [
			[new Error('secret'), 500, 'internal'],
			[Object.assign(new Error('secret'), { code: 'SQLITE_FULL' }), 507, 'disk-full'],
			[Object.assign(new Error('secret'), { code: 'ENOSPC' }), 507, 'disk-full'],
			[new Error('database or disk is full'), 507, 'disk-full'],
		] as const) {
			decide.mockRejectedValueOnce(error);
			const json = { 'content-type': 'application/json' };
			const answer = await ask('POST', '/api/garments', json, '{"name":"Coat"}');
			expect([answer.status, JSON.parse(answer.text).error.code]).toEqual([status, code]);
			expect(answer.text).not.toContain('secret');
		}
		decide.mockRestore();
	});

	it('of a value that it sent are its first eighty letters', () => {
		expect(valueInShort('n'.repeat(200))).toBe(`"${'n'.repeat(79)}`);
	});

	it('of a port that only the system may use is one that anybody may', async () => {
		const app = { listen: () => Promise.reject(Object.assign(new Error(), { code: 'EACCES' })) };
		const refused = await listen(app as never, 80, '127.0.0.1').catch((error: unknown) => error);
		expect(refused).toBeInstanceOf(PortError);
		const [, offered] = /--port (\d+)/.exec((refused as Error).message)!;
		expect(Number(offered)).toBeGreaterThanOrEqual(1024);
	});
});

describe('addresses that are none', () => {
	it.each(['/api/%zz', '/season/%ff/sort', '/api/garments/%'])(
		'%s is refused in the words of the interface',
		async (url) => {
			const { status, text } = await ask('GET', url, {});
			expect(status).toBe(400);
			expect(JSON.parse(text)).toEqual({ error: { code: 'bad-request', message: expect.stringContaining(url) } });
		},
	);
});

class FakeLine extends EventEmitter {
	readonly remoteAddress: string;
	destroyed = false;
	constructor(remoteAddress: string) {
		super();
		this.remoteAddress = remoteAddress;
	}
	destroy() {
		this.destroyed = true;
		this.emit('close');
	}
}

describe('lines that other devices hold open', () => {
	const serverWithLines = () => {
		const server = new EventEmitter();
		limitLines(server as never, 3, 5);
		const open = (remoteAddress: string) => {
			const socket = new FakeLine(remoteAddress);
			server.emit('connection', socket as unknown as Socket);
			return socket;
		};
		return open;
	};

	it('are ended beyond what one device needs, and free again once it closes some', () => {
		const open = serverWithLines();
		const lines = Array.from({ length: 4 }, () => open('192.168.1.20'));
		expect(lines.map(({ destroyed }) => destroyed)).toEqual([false, false, false, true]);
		expect(open('192.168.1.21').destroyed).toBe(false);
		lines[0]!.destroy();
		expect(open('192.168.1.20').destroyed).toBe(false);
		expect(open('192.168.1.20').destroyed).toBe(true);
	});

	it('are ended beyond what all may hold together, and never those of this computer', () => {
		const open = serverWithLines();
		const ended = Array.from({ length: 7 }, (_, n) => open(`192.168.1.${n}`)).filter(({ destroyed }) => destroyed);
		expect(ended).toHaveLength(2);
		for (const here of ['127.0.0.1', '::1', '::ffff:127.0.0.1'])
			for (let n = 0; n < 10; n++) expect(open(here).destroyed).toBe(false);
	});
});
