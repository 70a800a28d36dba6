import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ROUTES_WITH_TURNS } from '../../../src/server/hosted/turns-at-work.ts';
import { type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { cutOut } from '../../support/pictures.ts';
import { startPostgres } from '../../support/postgres.ts';
import { multipartBody } from '../../support/test-app.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of turns at work skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

type Newcomer = Awaited<ReturnType<HostedTest['newcomer']>>;

describe.skipIf(!postgres.ok)('much that one person asks for at once', () => {
	if (!postgres.ok) return;
	const MANY = 14;
	const registered: RouteOptions[] = [];
	let test: HostedTest;
	let ada: Newcomer;
	let bo: Newcomer;
	/** A photo in the home of each. */
	const photos = new Map<Newcomer, string>();

	beforeAll(async () => {
		test = await hostedTestApp({
			connectionString: await postgres.newDatabase(),
			onRoute: (route) => void registered.push(route),
		});
		ada = await test.newcomer('Ada');
		bo = await test.newcomer('Bo');
		for (const one of [ada, bo]) {
			const picture = { name: 'coat.png', bytes: await cutOut([40, 20, 10]) };
			const { payload, headers } = multipartBody({ purpose: 'garment' }, [picture]);
			const sent = await one.ask('POST', `/homes/${one.home}/api/photos`, payload, headers);
			photos.set(one, sent.body.items[0].photoId);
		}
	});
	afterAll(() => test?.close());

	const at = (one: Newcomer) => `/homes/${one.home}/api/photos/${photos.get(one)}`;
	const pick = (one: Newcomer) => one.ask('GET', `${at(one)}/at?x=200&y=200`);
	const tryLight = (one: Newcomer) =>
		one.ask('POST', `${at(one)}/light-trial`, { neutrals: [{ x: 200, y: 200, lightness: 95 }] });

	it.each([
		['light trials', tryLight],
		['colours picked', pick],
	] as const)('%s: somebody else is answered after a few of them', async (_, ask) => {
		let answered = 0;
		const adas = Array.from({ length: MANY }, () => ask(ada).finally(() => answered++));
		while (answered === 0) await new Promise(setImmediate);
		const before = answered;
		expect((await ask(bo)).status).toBe(200);
		// Of what was on its way a reader had one, one waited for it, and a few more may have followed meanwhile.
		expect(answered - before).toBeLessThan(MANY / 2);
		// Whoever waits for too long is told to come back.
		for (const { status } of await Promise.all(adas)) expect([200, 503]).toContain(status);
	});

	it('is counted at routes that there are, with their heads', async () => {
		const there = new Set(registered.map(({ method, url }) => `${method} ${url}`));
		expect([...ROUTES_WITH_TURNS].filter((route) => !there.has(route))).toEqual([]);
		const season = { name: 'Autumn', yearPart: 'autumn', startsOn: '2026-09-01', endsOn: '2026-11-30' };
		const { id } = (await ada.ask('POST', `/homes/${ada.home}/api/seasons`, season)).body;
		for (const method of ['HEAD', 'GET'] as const)
			expect((await ada.ask(method, `/homes/${ada.home}/api/seasons/${id}/report`)).status).toBe(200);
	});

	it('is counted by what is worked on: refused requests, and those whose asker left, take no turn for good', async () => {
		for (let n = 0; n < 5; n++) {
			expect((await ada.ask('POST', `${at(ada)}/light-trial`, { neutrals: 'none' })).status).toBe(400);
			expect((await ada.ask('GET', `/homes/${ada.home}/api/photos/${'f'.repeat(64)}/at?x=1&y=1`)).status).toBe(404);
		}
		for (let n = 0; n < 5; n++) {
			const leaving = new AbortController();
			const left = test.app.inject({
				method: 'GET',
				url: `${at(ada)}/at?x=200&y=200`,
				headers: { host: test.origin.host, cookie: ada.cookie() },
				signal: leaving.signal,
			});
			await new Promise(setImmediate);
			leaving.abort();
			await left.catch(() => {});
		}
		expect((await pick(ada)).status).toBe(200);
		expect((await tryLight(ada)).status).toBe(200);
	});

	describe('over a line', () => {
		let address: string;
		const lines = new Set<AbortController>();
		beforeAll(async () => {
			address = await test.app.listen({ port: 0, host: '127.0.0.1' });
		});
		afterAll(() => {
			for (const line of lines) line.abort();
		});
		/** Sends a request and stays on its line; resolves once it is answered. */
		function line(who: Newcomer, method: string, path: string, init: RequestInit = {}) {
			const leaving = new AbortController();
			lines.add(leaving);
			const headers = { cookie: who.cookie(), ...init.headers };
			const answered = fetch(`${address}${path}`, { ...init, method, headers, signal: leaving.signal });
			return { answered, leave: () => leaving.abort() };
		}

		it('is one archive on its way in, and keeps nobody else waiting', async () => {
			const bring = (who: Newcomer, body: BodyInit) =>
				line(who, 'POST', '/api/host/homes/bring?name=Mine', {
					body,
					headers: { 'content-type': 'application/x-tar' },
					...{ duplex: 'half' },
				});
			const neverWhole = new ReadableStream({ start: (to) => to.enqueue(new Uint8Array(10_000)) });
			const first = bring(ada, neverWhole);
			const incoming = () =>
				existsSync(join(test.host.workFolder, 'incoming')) &&
				readdirSync(join(test.host.workFolder, 'incoming')).length > 0;
			while (!incoming()) await new Promise(setImmediate);
			let isSecondAnswered = false;
			const second = bring(ada, 'no archive').answered.finally(() => {
				isSecondAnswered = true;
			});
			expect((await bring(bo, 'no archive').answered).status).toBe(400);
			expect(isSecondAnswered).toBe(false);
			first.leave();
			await expect(first.answered).rejects.toThrow();
			expect((await second).status).toBe(400);
		});

		it('is 32 windows that listen, and the next one once one is closed', async () => {
			const listen = (who: Newcomer) =>
				line(who, 'GET', `/homes/${who.home}/api/events`, { headers: { accept: 'text/event-stream' } });
			const open = Array.from({ length: 32 }, () => listen(ada));
			for (const { answered } of open) expect((await answered).status).toBe(200);
			let isNextAnswered = false;
			const next = listen(ada).answered.finally(() => {
				isNextAnswered = true;
			});
			expect((await listen(bo).answered).status).toBe(200);
			expect(isNextAnswered).toBe(false);
			open[0]!.leave();
			expect((await next).status).toBe(200);
		});
	});
});
