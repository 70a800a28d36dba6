import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type HostedTest, hostedTestApp, PASSWORD, tokenOf } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';
import { testApp } from '../../support/test-app.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of odd text on a host skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const ODD = 'co\u0000at \\u0000';
const KEPT = 'coat \\u0000';

it('text is kept whole but for what cannot be written', async () => {
	const test = await testApp({ homePath: temporaryFolder() });
	const { id, name } = (await test.send('POST', '/api/garments', { name: ODD })).body;
	expect(name).toBe(KEPT);
	await test.send('PATCH', `/api/garments/${id}`, { notes: ODD });
	expect((await test.get(`/api/garments/${id}`)).body.notes).toBe(KEPT);
	await test.close();
});

describe.skipIf(!postgres.ok)('text that cannot be written', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Awaited<ReturnType<HostedTest['newcomer']>>;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
	});
	afterAll(() => test?.close());

	it('is left out of what is sent to a host', async () => {
		const token = tokenOf(await test.link());
		const bo = test.browser();
		expect((await bo.ask('POST', '/api/host/join', { token, name: 'B\u0000o', password: PASSWORD })).status).toBe(200);
		expect((await bo.ask('GET', '/api/host/account')).body.person.name).toBe('Bo');
		const made = await ada.ask('POST', `/homes/${ada.home}/api/garments`, { name: ODD });
		expect([made.status, made.body.name]).toEqual([201, KEPT]);
	});

	it('is refused in an address', async () => {
		for (const address of ['/api/host/sessions/%00', `/api/host/homes/${ada.home}/members/%00`]) {
			const { status, body } = await ada.ask('DELETE', address);
			expect([status, body.error.code]).toEqual([400, 'bad-request']);
		}
		expect((await ada.ask('GET', `/homes/${ada.home}/api/garments/%00`)).status).toBe(400);
	});
});
