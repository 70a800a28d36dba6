import { get, type IncomingMessage } from 'node:http';
import type { AddressInfo } from 'node:net';
import { Readable } from 'node:stream';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { directoryPhotoFiles } from '../../../src/store/directory-photo-files.ts';
import { addedPhoto } from '../../support/decided.ts';
import { type Browser, type HostedTest, hostedTestApp, PASSWORD, tokenOf } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of what has ended skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

type Newcomer = Awaited<ReturnType<HostedTest['newcomer']>>;

describe.skipIf(!postgres.ok)('what has ended on a host', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Newcomer;
	let bo: Newcomer;
	let port: number;
	const folder = temporaryFolder();
	beforeAll(async () => {
		test = await hostedTestApp({
			connectionString: await postgres.newDatabase(),
			filesOf: (home) => ({
				...directoryPhotoFiles(`${folder}/${home}`),
				// A download that nobody takes.
				openOriginal: async () => ({ sizeBytes: 1000, stream: new Readable({ read() {} }) }),
			}),
		});
		ada = await test.newcomer('Ada');
		bo = await test.newcomer('Bo');
		await test.app.listen({ port: 0, host: '127.0.0.1' });
		port = (test.app.server.address() as AddressInfo).port;
	});
	afterAll(() => test?.close());

	const ask = (browser: Browser, path: string, accept = '*/*') =>
		new Promise<IncomingMessage>((resolve, reject) => {
			const headers = { host: test.origin.host, cookie: browser.cookie(), accept };
			get({ host: '127.0.0.1', port, path, agent: false, headers }).once('response', resolve).once('error', reject);
		});
	/** A line of news that has said hello; `ended` once the server closes it, `heard` so far. */
	async function listening(browser: Browser, home: string) {
		const answer = await ask(browser, `/homes/${home}/api/events`, 'text/event-stream');
		expect(answer.statusCode).toBe(200);
		let heard = '';
		answer.setEncoding('utf8').on('data', (text: string) => {
			heard += text;
		});
		const ended = new Promise<void>((resolve) => answer.once('end', resolve));
		await new Promise((resolve) => answer.once('data', resolve));
		return { heard: () => heard, ended, leave: () => answer.destroy() };
	}
	async function signedIn(name: string): Promise<Browser> {
		const browser = test.browser();
		expect((await browser.ask('POST', '/api/host/sign-in', { name, password: PASSWORD })).status).toBe(200);
		return browser;
	}
	const sessionOf = async (browser: Browser): Promise<string> =>
		(await browser.ask('GET', '/api/host/account')).body.sessions.find(({ isThis }: { isThis: boolean }) => isThis).id;
	const invited = async (role: 'look' | 'plan') =>
		tokenOf((await bo.ask('POST', `/api/host/homes/${bo.home}/links`, { role })).body.link);
	const enter = (browser: Browser, token: string) => browser.ask('POST', '/api/host/join/home', { token });
	const adasId = async () => (await ada.ask('GET', '/api/host/account')).body.person.id;

	it('closes its lines of news at once: of a session that was ended, signed out, or whose password was changed', async () => {
		const ways: ((browser: Browser) => Promise<unknown>)[] = [
			async (browser) => bo.ask('DELETE', `/api/host/sessions/${await sessionOf(browser)}`),
			async (browser) => browser.ask('POST', '/api/host/sign-out'),
			async () => bo.ask('DELETE', '/api/host/sessions'),
			async () => bo.ask('PUT', '/api/host/password', { old: PASSWORD, password: PASSWORD }),
		];
		for (const end of ways) {
			const browser = await signedIn('Bo');
			const line = await listening(browser, bo.home);
			await end(browser);
			await line.ended;
		}
		const line = await listening(bo, bo.home);
		await bo.ask('DELETE', '/api/host/sessions');
		await bo.ask('POST', `/homes/${bo.home}/api/garments`, { name: 'Coat' });
		while (!line.heard().includes('changed')) await new Promise(setImmediate);
		line.leave();
	});

	it('closes the lines of whoever is put out of a home, or leaves it', async () => {
		for (const who of [bo, ada]) {
			await enter(ada, await invited('look'));
			const line = await listening(ada, bo.home);
			await who.ask('DELETE', `/api/host/homes/${bo.home}/members/${await adasId()}`);
			await line.ended;
		}
	});

	it('is no session whose page is left open for days: its line of news neither changes the token nor takes it for stolen', async () => {
		const browser = await signedIn('Ada');
		const cookie = browser.cookie();
		const id = await sessionOf(browser);
		const line = await listening(browser, ada.home);
		const age = (hours: number) =>
			test.host.accounts
				.updateTable('session')
				.set({ changed_at: new Date(Date.now() - hours * 3600_000).toISOString() })
				.where('id', '=', id)
				.execute();
		await age(25);
		await ada.ask('POST', `/homes/${ada.home}/api/garments`, { name: 'Coat' });
		while (!line.heard().includes('changed')) await new Promise(setImmediate);
		// The browser still shows the token that it has, and is given the next one.
		await age(25);
		browser.takeCookie(cookie);
		expect((await browser.ask('GET', '/api/host/account')).status).toBe(200);
		expect(browser.cookie()).not.toBe(cookie);
		await age(1);
		await ada.ask('POST', `/homes/${ada.home}/api/garments`, { name: 'Scarf' });
		while (line.heard().split('changed').length < 3) await new Promise(setImmediate);
		expect((await browser.ask('GET', '/api/host/account')).status).toBe(200);
		line.leave();
	});

	it('is the session before, where the same browser signs in again', async () => {
		const browser = await signedIn('Ada');
		const before = browser.cookie();
		await browser.ask('POST', '/api/host/sign-in', { name: 'Bo', password: PASSWORD });
		expect((await browser.ask('GET', '/api/host/account')).body.person.name).toBe('Bo');
		browser.takeCookie(before);
		expect((await browser.ask('GET', '/api/host/account')).status).toBe(401);
	});

	it('is kept nowhere: sessions that are over, and tries of long ago', async () => {
		const { accounts } = test.host;
		const long = new Date(Date.now() - 15 * 24 * 3600_000).toISOString();
		const lost = await signedIn('Ada');
		const id = await sessionOf(lost);
		await accounts.updateTable('session').set({ seen_at: long }).where('id', '=', id).execute();
		await test.browser().ask('POST', '/api/host/sign-in', { name: 'Somebody', password: PASSWORD });
		await accounts.updateTable('tries').set({ since: long }).where('key', '=', 'name:somebody').execute();
		await signedIn('Ada');
		const sessions = await accounts.selectFrom('session').select('id').execute();
		expect(sessions.map((one) => one.id)).not.toContain(id);
		const tries = await accounts.selectFrom('tries').select('key').execute();
		expect(tries.map(({ key }) => key)).not.toContain('name:somebody');
	});

	it('are the other links to a home, once somebody was put out of it', async () => {
		const [one, other] = [await invited('look'), await invited('plan')];
		expect((await enter(ada, one)).status).toBe(200);
		await bo.ask('DELETE', `/api/host/homes/${bo.home}/members/${await adasId()}`);
		expect((await enter(ada, other)).status).toBe(404);
	});

	it('is no right that somebody has: a link to look leaves whoever may plan as they are', async () => {
		const [plan, look] = [await invited('plan'), await invited('look')];
		await enter(ada, plan);
		await enter(ada, look);
		expect((await ada.ask('POST', `/homes/${bo.home}/api/garments`, { name: 'Hat' })).status).toBe(201);
	});

	it('is nobody’s download for that of another home', async () => {
		for (const one of [ada, bo]) {
			const { store } = await test.host.homeServices(one.home);
			const about = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: '2026-03-01T10:00:00.000Z' };
			await addedPhoto(store, new Uint8Array([1]), about);
		}
		const archive = (who: Newcomer) => ask(who, `/homes/${who.home}/api/backup`);
		const adas = await archive(ada);
		const bos = await archive(bo);
		expect([adas.statusCode, bos.statusCode]).toEqual([200, 200]);
		expect((await archive(ada)).statusCode).toBe(503);
		for (const one of [adas, bos]) one.on('error', () => {}).destroy();
	});
});
