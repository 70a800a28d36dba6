import { randomBytes } from 'node:crypto';
import { afterAll, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { askForPasskey, personWithPasskey } from '../../../src/app/hosting/passkeys.ts';
import { type Browser, type HostedTest, hostedTestApp, tokenOf } from '../../support/hosted-app.ts';
import { PRESENT_ALONE, passkeyDevice } from '../../support/passkey-device.ts';
import { startPostgres } from '../../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of passkeys skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

type Device = ReturnType<typeof passkeyDevice>;

describe.skipIf(!postgres.ok)('a passkey', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	/** Each signed in by password, with a passkey on a device of their own. */
	let ada: Browser;
	let bo: Browser;
	let adas: Device;
	let bos: Device;
	const newDevice = () => passkeyDevice(test.origin);
	const ask = async (browser: Browser) => (await browser.ask('POST', '/api/host/passkeys/ask')).body;
	const askToSignIn = async () => (await test.browser().ask('POST', '/api/host/sign-in/passkey')).body;
	const show = (answer: object, browser = test.browser()) =>
		browser.ask('POST', '/api/host/sign-in/passkey/answer', answer);
	async function withPasskey(browser: Browser): Promise<Device> {
		const device = newDevice();
		const { status } = await browser.ask('POST', '/api/host/passkeys', device.made(await ask(browser)));
		expect(status).toBe(200);
		return device;
	}
	const refusal = { status: 403, body: { error: { code: 'wrong-sign-in' } } };
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
		bo = await test.newcomer('Bo');
		adas = await withPasskey(ada);
		bos = await withPasskey(bo);
	});
	// All of this comes from one address.
	beforeEach(() => test.host.accounts.deleteFrom('tries').execute());
	afterAll(() => test?.close());
	const nameIn = async (browser: Browser) => (await browser.ask('GET', '/api/host/account')).body.person?.name;

	it('signs in whoever holds it, without a name', async () => {
		const browser = test.browser();
		expect((await show(bos.shown(await askToSignIn()), browser)).status).toBe(200);
		expect(await nameIn(browser)).toBe('Bo');
	});

	it('lets somebody new in by a link', async () => {
		const [token, browser, device] = [tokenOf(await test.link()), test.browser(), newDevice()];
		const asked = (await browser.ask('POST', '/api/host/join/passkey', { token, name: 'Cleo' })).body;
		const joined = await browser.ask('POST', '/api/host/join', { token, name: 'Cleo', passkey: device.made(asked) });
		expect([joined.status, await nameIn(browser)]).toEqual([200, 'Cleo']);
	});

	// "If the credentialId is already known then the Relying Party SHOULD fail this registration ceremony": W3C Web Authentication, level 3, section 7.1.
	it('that is kept already is refused in words, whosever it is, and stays whose it was', async () => {
		const known = {
			status: 409,
			body: { error: { code: 'conflict', message: expect.stringMatching(/^Expected .+; .+\. /) } },
		};
		for (const browser of [ada, bo])
			expect(await browser.ask('POST', '/api/host/passkeys', adas.made(await ask(browser)))).toMatchObject(known);
		// Another key that goes by the same id.
		const copy = passkeyDevice(test.origin, { credentialId: Buffer.from(adas.id, 'base64url') });
		expect(await bo.ask('POST', '/api/host/passkeys', copy.made(await ask(bo)))).toMatchObject(known);
		expect((await bo.ask('GET', '/api/host/account')).body.passkeys).toHaveLength(1);
		expect(await show(copy.shown(await askToSignIn()))).toMatchObject(refusal);
		const browser = test.browser();
		await show(adas.shown(await askToSignIn()), browser);
		expect(await nameIn(browser)).toBe('Ada');
	});

	it('that is kept already lets nobody in as somebody new, and uses no link up', async () => {
		const [token, browser] = [tokenOf(await test.link()), test.browser()];
		const made = async (device: Device) =>
			device.made((await browser.ask('POST', '/api/host/join/passkey', { token, name: 'Dora' })).body);
		const join = async (device: Device) =>
			browser.ask(
				'POST',
				'/api/host/join',
				{ token, name: 'Dora', passkey: await made(device) },
				{ 'accept-language': 'de' },
			);
		const taken = await join(adas);
		expect([taken.status, taken.body.error.message]).toEqual([
			409,
			expect.stringMatching(/^Erwartet wurde ein Passkey, der hier neu ist/),
		]);
		expect((await join(newDevice())).status).toBe(200);
	});

	describe('answers what it was asked', () => {
		it('once', async () => {
			const answer = adas.shown(await askToSignIn());
			expect((await show(answer)).status).toBe(200);
			expect(await show(answer)).toMatchObject(refusal);
			const [first, second] = await (async () => {
				const again = adas.shown(await askToSignIn());
				return Promise.all([show(again), show(again)]);
			})();
			expect([first.status, second.status].sort()).toEqual([200, 403]);
		});

		it('once, even where the first answer was none', async () => {
			const asked = await askToSignIn();
			expect(await show(newDevice().shown(asked))).toMatchObject(refusal);
			expect(await show(adas.shown(asked))).toMatchObject(refusal);
		});

		it('and nothing that was asked elsewhere', async () => {
			const [here, there] = [await askToSignIn(), await askToSignIn()];
			expect(await show({ ...adas.shown(there), id: here.id })).toMatchObject(refusal);
			const ofNobody = { id: 'no-such', options: { challenge: randomBytes(32).toString('base64url') } };
			expect(await show(adas.shown(ofNobody))).toMatchObject(refusal);
		});

		it('within five minutes', async () => {
			const later = (ms: number) => ({ ...test.host, now: () => new Date(Date.now() + ms) });
			const shown = async (ms: number) =>
				personWithPasskey(later(ms), test.origin, adas.shown(await askForPasskey(test.host, test.origin)));
			expect((await shown(4 * 60_000)).name).toBe('Ada');
			await expect(shown(5 * 60_000 + 1000)).rejects.toMatchObject({ code: 'wrong-sign-in' });
		});

		it('to nobody but whoever was asked', async () => {
			const add = (browser: Browser, answer: object) => browser.ask('POST', '/api/host/passkeys', answer);
			const another = test.browser();
			await show(adas.shown(await askToSignIn()), another);
			const [token, other] = [tokenOf(await test.link()), tokenOf(await test.link())];
			const ofLink = async () =>
				(await test.browser().ask('POST', '/api/host/join/passkey', { token, name: 'Edda' })).body;
			// Another person's, another session's of the same person, a link's, and one that asked for a sign-in.
			expect(await add(bo, newDevice().made(await ask(ada)))).toMatchObject(refusal);
			expect(await add(another, newDevice().made(await ask(ada)))).toMatchObject(refusal);
			expect(await add(bo, newDevice().made(await ofLink()))).toMatchObject(refusal);
			expect(await add(bo, newDevice().made(await askToSignIn()))).toMatchObject(refusal);
			const join = (link: string, passkey: object) =>
				test.browser().ask('POST', '/api/host/join', { token: link, name: 'Edda', passkey });
			expect(await join(other, newDevice().made(await ofLink()))).toMatchObject(refusal);
			expect(await join(token, newDevice().made(await ask(ada)))).toMatchObject(refusal);
			expect(await show(adas.shown(await ask(ada)))).toMatchObject(refusal);
			// The link is still good for whoever answers it.
			expect((await join(token, newDevice().made(await ofLink()))).status).toBe(200);
		});

		it('by its own key', async () => {
			const asOther = { ...bos.shown(await askToSignIn()) };
			const { response } = asOther;
			expect(await show({ ...asOther, response: { ...response, id: adas.id, rawId: adas.id } })).toMatchObject(refusal);
		});

		it('at our own address, and to whoever was looked at', async () => {
			const at = new URL('https://elsewhere.example.net');
			expect(await show(adas.shown(await askToSignIn(), { at }))).toMatchObject(refusal);
			expect(await show(adas.shown(await askToSignIn(), { flags: PRESENT_ALONE }))).toMatchObject(refusal);
		});
	});

	// A counter of 32 bits that does not grow tells of a copy: W3C Web Authentication, section 6.1.1.
	it('counts its uses up to 32 bits, and one that counts from lower on is refused as a copy', async () => {
		const worn = passkeyDevice(test.origin, { uses: 2 ** 32 - 3 });
		expect((await ada.ask('POST', '/api/host/passkeys', worn.made(await ask(ada)))).status).toBe(200);
		expect((await show(worn.shown(await askToSignIn()))).status).toBe(200);
		await test.host.accounts
			.updateTable('passkey')
			.set({ counter: 2 ** 32 - 1 })
			.where('id', '=', worn.id)
			.execute();
		expect(await show(worn.shown(await askToSignIn()))).toMatchObject(refusal);
	});
});
