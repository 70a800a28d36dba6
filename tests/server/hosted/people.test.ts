import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type HostedTest, hostedTestApp, PASSWORD, tokenOf } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of people and homes skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

describe.skipIf(!postgres.ok)('people and homes', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Awaited<ReturnType<HostedTest['newcomer']>>;
	let bo: Awaited<ReturnType<HostedTest['newcomer']>>;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
		bo = await test.newcomer('Bo');
	});
	afterAll(() => test?.close());

	it('begin with a link for the host, which lets one person in', async () => {
		const empty = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		const [one, other] = [await empty.link(), await empty.link()];
		const join = (link: string, name: string) =>
			empty.browser().ask('POST', '/api/host/join', { token: tokenOf(link), name, password: PASSWORD });
		const answers = await Promise.all([join(one, 'Ada'), join(one, 'Bo'), join(other, 'Cleo')]);
		expect(answers.map(({ status }) => status).sort()).toEqual([200, 404, 404]);
		await empty.close();
	});

	it('come in by a link that is good once, with a home of their own', async () => {
		const link = (await ada.ask('POST', '/api/host/people/links')).body.link;
		const join = (name: string) =>
			test.browser().ask('POST', '/api/host/join', { token: tokenOf(link), name, password: PASSWORD });
		expect((await join('Cleo')).status).toBe(200);
		const again = await join('Dora');
		expect([again.status, again.body.error.code]).toEqual([404, 'not-found']);
		expect(new URL(link).pathname).toBe('/join');
	});

	it('have names of their own, however they are written', async () => {
		const token = tokenOf((await ada.ask('POST', '/api/host/people/links')).body.link);
		const taken = await test.browser().ask('POST', '/api/host/join', { token, name: 'ＡDA', password: PASSWORD });
		expect(taken.status).toBe(409);
		// The link is still good.
		const other = await test.browser().ask('POST', '/api/host/join', { token, name: 'Ada B', password: PASSWORD });
		expect(other.status).toBe(200);
	});

	it('are let in by the host alone', async () => {
		expect((await bo.ask('POST', '/api/host/people/links')).status).toBe(404);
		expect((await bo.ask('GET', '/api/host/people')).status).toBe(404);
		expect((await ada.ask('GET', '/api/host/people')).body.map(({ name }: { name: string }) => name)).toContain('Bo');
	});

	it('work in their own home as in the single form', async () => {
		const season = { name: 'Autumn', yearPart: 'autumn', startsOn: '2026-09-01', endsOn: '2026-11-30' };
		const made = await bo.ask('POST', `/homes/${bo.home}/api/seasons`, season);
		expect(made.status).toBe(201);
		expect((await bo.ask('GET', `/homes/${bo.home}/api/seasons`)).body).toHaveLength(1);
		expect((await ada.ask('GET', `/homes/${ada.home}/api/seasons`)).body).toHaveLength(0);
	});

	it('may be let into another home to look, then to plan, and put out again', async () => {
		const cold = { name: 'Winter', yearPart: 'winter', startsOn: '2026-12-01', endsOn: '2027-02-28' };
		const invite = async (role: 'look' | 'plan') =>
			tokenOf((await bo.ask('POST', `/api/host/homes/${bo.home}/links`, { role })).body.link);
		const seasons = `/homes/${bo.home}/api/seasons`;
		expect((await ada.ask('GET', seasons)).status).toBe(404);
		expect((await ada.ask('POST', '/api/host/join/home', { token: await invite('look') })).body).toEqual({
			home: bo.home,
		});
		expect((await ada.ask('GET', seasons)).status).toBe(200);
		const refused = await ada.ask('POST', seasons, cold);
		expect([refused.status, refused.body.error.code]).toEqual([403, 'only-looking']);
		await ada.ask('POST', '/api/host/join/home', { token: await invite('plan') });
		expect((await ada.ask('POST', seasons, cold)).status).toBe(201);
		// A guest decides nothing about the home itself.
		expect((await ada.ask('GET', `/homes/${bo.home}/api/backup`)).status).toBe(403);
		expect((await ada.ask('POST', `/api/host/homes/${bo.home}/links`, { role: 'plan' })).status).toBe(403);
		expect((await ada.ask('DELETE', `/api/host/homes/${bo.home}`)).status).toBe(403);
		const members = (await bo.ask('GET', `/api/host/homes/${bo.home}/members`)).body;
		const guest = members.find(({ name }: { name: string }) => name === 'Ada');
		expect(guest.role).toBe('plan');
		expect((await bo.ask('DELETE', `/api/host/homes/${bo.home}/members/${guest.person}`)).status).toBe(200);
		expect((await ada.ask('GET', seasons)).status).toBe(404);
	});

	it('keep their last owner', async () => {
		const [member] = (await bo.ask('GET', `/api/host/homes/${bo.home}/members`)).body;
		expect((await bo.ask('DELETE', `/api/host/homes/${bo.home}/members/${member.person}`)).status).toBe(409);
	});

	it('are known by name and password, and nothing tells which of them was wrong', async () => {
		const signIn = (name: string, password: string) =>
			test.browser().ask('POST', '/api/host/sign-in', { name, password });
		expect((await signIn('bo', PASSWORD)).status).toBe(200);
		const [wrong, nobody] = [await signIn('Bo', 'navy sage oat rust'), await signIn('Nobody', PASSWORD)];
		expect(wrong.status).toBe(403);
		expect(nobody.body).toEqual(wrong.body);
	});

	it('cannot be guessed at for ever', async () => {
		await test.newcomer('Finn');
		const statuses: number[] = [];
		for (let tries = 0; tries < 12; tries++) {
			const { status } = await test
				.browser()
				.ask('POST', '/api/host/sign-in', { name: 'Finn', password: `wrong words ${tries} here` });
			statuses.push(status);
		}
		expect(statuses).toEqual([...Array(10).fill(403), 429, 429]);
	});

	it('choose no password that is short, plain, or their name', async () => {
		const token = tokenOf(await test.link());
		for (const password of ['too short', 'aaaaaaaaaaaaaaaaaaaa', 'gustav is my name gustav'])
			expect((await test.browser().ask('POST', '/api/host/join', { token, name: 'Gustav', password })).status).toBe(
				400,
			);
	});

	// Each stands in the list of common passwords of OWASP SecLists (10-million-password-list-top-1000000.txt).
	it('choose no password that many have, however it is written', async () => {
		const token = tokenOf(await test.link());
		for (const password of ['1qaz2wsx3edc4rfv', 'PasswordPassword', 'qwerty 123456789', '1234567890987654321']) {
			const { status, body } = await test.browser().ask('POST', '/api/host/join', { token, name: 'Ida', password });
			expect([status, body.error.message]).toEqual([400, expect.stringContaining('commonest')]);
		}
		const changed = await bo.ask('PUT', '/api/host/password', { old: PASSWORD, password: 'qazwsxedcrfvtgb' });
		expect(changed.status).toBe(400);
		expect(
			(await test.browser().ask('POST', '/api/host/join', { token, name: 'Ida', password: PASSWORD })).status,
		).toBe(200);
	});

	it('own several homes, take one away for good, and nothing of it stays', async () => {
		const made = (await bo.ask('POST', '/api/host/homes', { name: 'For Tilda' })).body;
		const garment = { name: 'Coat' };
		expect((await bo.ask('POST', `/homes/${made.id}/api/garments`, garment)).status).toBe(201);
		expect((await bo.ask('DELETE', `/api/host/homes/${made.id}`)).status).toBe(200);
		expect((await bo.ask('GET', `/homes/${made.id}/api/garments`)).status).toBe(404);
		const left = await test.host.database.homeTables(made.id).selectFrom('entries').selectAll().execute();
		expect(left).toEqual([]);
	});

	it('go with the homes that nobody else owns', async () => {
		const gone = await test.newcomer('Hedda');
		const [person] = (await ada.ask('GET', '/api/host/people')).body.filter(
			({ name }: { name: string }) => name === 'Hedda',
		);
		expect((await ada.ask('DELETE', `/api/host/people/${person.id}`)).status).toBe(200);
		expect((await gone.ask('GET', '/api/host/account')).status).toBe(401);
		expect((await test.browser().ask('POST', '/api/host/sign-in', { name: 'Hedda', password: PASSWORD })).status).toBe(
			403,
		);
	});
});
