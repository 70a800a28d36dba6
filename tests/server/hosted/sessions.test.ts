import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { recognise } from '../../../src/app/hosting/sessions.ts';
import { hashOfToken } from '../../../src/app/token.ts';
import { type Browser, type HostedTest, hostedTestApp, PASSWORD } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of sessions skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const HOURS = 3600 * 1000;
const DAYS = 24 * HOURS;

describe.skipIf(!postgres.ok)('sessions', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Browser;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
	});
	afterAll(() => test?.close());

	async function signedIn(): Promise<Browser> {
		const browser = test.browser();
		await browser.ask('POST', '/api/host/sign-in', { name: 'Ada', password: PASSWORD });
		return browser;
	}
	const tokenIn = (browser: Browser) => browser.cookie().split('=')[1]!;
	/** Recognises a token as at a later moment. */
	const later = (token: string, ms: number) =>
		recognise({ ...test.host, now: () => new Date(Date.now() + ms) }, token, null);

	it('are kept in a cookie that no script and no other site can use, and as a hash alone', async () => {
		const fresh = test.browser();
		const { headers } = await fresh.ask('POST', '/api/host/sign-in', { name: 'Ada', password: PASSWORD });
		expect(String(headers['set-cookie'])).toMatch(/Path=\/; HttpOnly; SameSite=Strict$/);
		const rows = await test.host.accounts.selectFrom('session').selectAll().execute();
		expect(JSON.stringify(rows)).not.toContain(tokenIn(fresh));
		expect(rows.map(({ token_hash }) => token_hash)).toContain(hashOfToken(tokenIn(fresh)));
	});

	it('travel over encrypted lines alone where the address is encrypted', async () => {
		const encrypted = await hostedTestApp({
			connectionString: await postgres.newDatabase(),
			address: 'https://wardrobe.example.net',
		});
		const first = await encrypted.newcomer('Ada');
		expect(first.cookie()).toMatch(/^__Host-/);
		const { headers } = await first.ask('POST', '/api/host/sign-in', { name: 'Ada', password: PASSWORD });
		expect(String(headers['set-cookie'])).toMatch(/Secure/);
		expect(String(headers['strict-transport-security'])).toMatch(/max-age=31536000/);
		expect(String(headers['content-security-policy'])).toMatch(/default-src 'none'/);
		await encrypted.close();
	});

	it('are listed, and ended one by one or all at once', async () => {
		const [one, two] = [await signedIn(), await signedIn()];
		const { sessions } = (await ada.ask('GET', '/api/host/account')).body;
		expect(sessions.filter(({ isThis }: { isThis: boolean }) => isThis)).toHaveLength(1);
		const mine = (await one.ask('GET', '/api/host/account')).body.sessions.find(
			({ isThis }: { isThis: boolean }) => isThis,
		);
		await ada.ask('DELETE', `/api/host/sessions/${mine.id}`);
		expect((await one.ask('GET', '/api/host/account')).status).toBe(401);
		await ada.ask('DELETE', '/api/host/sessions');
		expect((await two.ask('GET', '/api/host/account')).status).toBe(401);
		expect((await ada.ask('GET', '/api/host/account')).status).toBe(200);
	});

	it('end when signed out: the cookie alone is worth nothing then', async () => {
		const browser = await signedIn();
		const cookie = browser.cookie();
		await browser.ask('POST', '/api/host/sign-out');
		browser.takeCookie(cookie);
		expect((await browser.ask('GET', '/api/host/account')).status).toBe(401);
	});

	it('get a new token after a day; the old one is good for a moment more, then gives the theft away', async () => {
		const old = tokenIn(await signedIn());
		const changed = await later(old, 25 * HOURS);
		expect(changed?.token).toBeTruthy();
		expect((await later(old, 25 * HOURS + 10_000))?.person.name).toBe('Ada');
		expect((await later(changed!.token!, 26 * HOURS))?.person.name).toBe('Ada');
		expect(await later(old, 27 * HOURS)).toBeNull();
		expect(await later(changed!.token!, 27 * HOURS)).toBeNull();
	});

	it('end after 14 days unused, and after 90 however much they are used', async () => {
		expect(await later(tokenIn(await signedIn()), 14 * DAYS + HOURS)).toBeNull();
		let token = tokenIn(await signedIn());
		for (let day = 1; day <= 90; day++) {
			const found = await later(token, day * DAYS + day * 60_000);
			if (day <= 89) expect(found?.person.name).toBe('Ada');
			token = found?.token ?? token;
		}
		expect(await later(token, 91 * DAYS)).toBeNull();
	});

	it('that began long ago change nothing of what somebody signs in with', async () => {
		const browser = await signedIn();
		const { sessions, person } = (await browser.ask('GET', '/api/host/account')).body;
		const { id } = sessions.find(({ isThis }: { isThis: boolean }) => isThis);
		expect((await browser.ask('POST', '/api/host/passkeys/ask')).status).toBe(200);
		const before = await test.host.accounts.selectFrom('person').select('password').executeTakeFirstOrThrow();
		const long = new Date(Date.now() - 2 * HOURS).toISOString();
		await test.host.accounts.updateTable('session').set({ signed_in_at: long }).where('id', '=', id).execute();
		await test.host.accounts.updateTable('person').set({ password: null }).where('id', '=', person.id).execute();
		const answers = [
			await browser.ask('POST', '/api/host/passkeys/ask'),
			await browser.ask('POST', '/api/host/passkeys', { id: 'x', response: { id: 'x', response: {} } }),
			await browser.ask('DELETE', '/api/host/passkeys/x'),
			await browser.ask('PUT', '/api/host/password', { password: 'plum moss ink cream' }),
		];
		await test.host.accounts.updateTable('person').set(before).where('id', '=', person.id).execute();
		expect(answers.map(({ status }) => status)).toEqual([409, 409, 409, 409]);
	});

	it('of everybody else end when the password is changed, which takes the one of now', async () => {
		const thief = await signedIn();
		const wrong = await ada.ask('PUT', '/api/host/password', {
			old: 'not the right words',
			password: 'plum moss ink cream',
		});
		expect(wrong.status).toBe(403);
		expect(
			(await ada.ask('PUT', '/api/host/password', { old: PASSWORD, password: 'plum moss ink cream' })).status,
		).toBe(200);
		expect((await thief.ask('GET', '/api/host/account')).status).toBe(401);
		expect((await ada.ask('GET', '/api/host/account')).status).toBe(200);
	});

	it('are begun by no request of another site', async () => {
		const foreign = { origin: 'https://elsewhere.example.net', 'sec-fetch-site': 'cross-site' };
		const { status, body } = await test
			.browser()
			.ask('POST', '/api/host/sign-in', { name: 'Ada', password: PASSWORD }, foreign);
		expect([status, body.error.code]).toEqual([403, 'foreign-origin']);
	});
});
