import type { RouteOptions } from 'fastify';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { ASKING_ONLY, OPEN_ROUTES } from '../../../src/server/hosted/open-routes.ts';
import { type Browser, type HostedTest, hostedTestApp, tokenOf } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of isolation skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

type Newcomer = Awaited<ReturnType<HostedTest['newcomer']>>;
type Method = Parameters<Browser['ask']>[0];

describe.skipIf(!postgres.ok)('homes, seen from outside', () => {
	if (!postgres.ok) return;
	const registered: RouteOptions[] = [];
	let test: HostedTest;
	let owner: Newcomer;
	let other: Newcomer;
	let guest: Newcomer;
	/** Ids that name something in the owner's home. */
	const ids: Record<string, string> = {};

	beforeAll(async () => {
		test = await hostedTestApp({
			connectionString: await postgres.newDatabase(),
			onRoute: (route) => void registered.push(route),
		});
		owner = await test.newcomer('Ada');
		other = await test.newcomer('Bo');
		guest = await test.newcomer('Cleo');
		const at = `/homes/${owner.home}/api`;
		const season = { name: 'Autumn', yearPart: 'autumn', startsOn: '2026-09-01', endsOn: '2026-11-30' };
		ids.seasons = (await owner.ask('POST', `${at}/seasons`, season)).body.id;
		ids.garments = (await owner.ask('POST', `${at}/garments`, { name: 'The coat nobody may know of' })).body.id;
		const link = (await owner.ask('POST', `/api/host/homes/${owner.home}/links`, { role: 'look' })).body.link;
		await guest.ask('POST', '/api/host/join/home', { token: tokenOf(link) });
	});
	afterAll(() => test?.close());

	/** Every route of the running application that is not open, `METHOD address`. */
	const closed = () =>
		registered
			.flatMap(({ method, url }) => [method].flat().map((one) => [one as Method, url] as const))
			.filter(([method, url]) => !OPEN_ROUTES.has(`${method} ${url}`));
	const ofHome = () => closed().filter(([, url]) => !url.startsWith('/api/host/'));
	/** The address with ids that name something in the owner's home, where there is one. */
	const filled = (url: string) =>
		url
			.replace(':home', owner.home)
			.replace(/\/(\w[\w-]*)\/:(id|garmentId)/, (_, kind: string) => `/${kind}/${ids[kind] ?? 'x'}`)
			.replace(/:[^/]+/g, 'x')
			.replace('*', 'x');

	it('answer a stranger at no route, wherever it is asked', async () => {
		expect(closed().length).toBeGreaterThan(100);
		const letIn: string[] = [];
		for (const [method, url] of closed())
			for (const address of [filled(url), `/homes/${owner.home}${filled(url)}`]) {
				const { status, body } = await test.browser().ask(method, address);
				if (status !== 401 || JSON.stringify(body).includes('nobody may know'))
					letIn.push(`${method} ${address} ${status}`);
			}
		expect(letIn).toEqual([]);
	});

	it('are none at all to somebody of another home, at every route', async () => {
		expect(ofHome().length).toBeGreaterThan(80);
		const letIn: string[] = [];
		for (const [method, url] of ofHome())
			for (const address of [`/homes/${owner.home}${filled(url)}`, filled(url)]) {
				const { status, body } = await other.ask(method, address);
				if (status !== 404 || JSON.stringify(body).includes('nobody may know'))
					letIn.push(`${method} ${address} ${status}`);
			}
		expect(letIn).toEqual([]);
	});

	it('are the same answer whether they exist or not', async () => {
		const [theirs, none] = [owner.home, '00000000-0000-4000-8000-000000000000'];
		const ask = async (home: string) => (await other.ask('GET', `/homes/${home}/api/seasons`)).body.error.code;
		expect(await ask(theirs)).toBe(await ask(none));
	});

	it('hide their things from another home, even by their own ids', async () => {
		for (const kind of ['seasons', 'garments']) {
			const address = `/api/${kind}/${ids[kind]}`;
			expect((await owner.ask('GET', `/homes/${owner.home}${address}`)).status).toBe(200);
			expect((await other.ask('GET', `/homes/${other.home}${address}`)).status).toBe(404);
		}
	});

	it('are not to be decided about by others', async () => {
		const [member] = (await owner.ask('GET', `/api/host/homes/${owner.home}/members`)).body;
		const asked: [Method, string, object?][] = [
			['GET', `/api/host/homes/${owner.home}/members`],
			['POST', `/api/host/homes/${owner.home}/links`, { role: 'plan' }],
			['PATCH', `/api/host/homes/${owner.home}`, { name: 'Mine' }],
			['DELETE', `/api/host/homes/${owner.home}`],
			['DELETE', `/api/host/homes/${owner.home}/members/${member.person}`],
		];
		for (const [method, address, body] of asked)
			expect(`${method} ${(await other.ask(method, address, body)).status}`).toBe(`${method} 404`);
	});

	it('are changed by no guest who may only look, at any route', async () => {
		const changed: string[] = [];
		for (const [method, url] of ofHome()) {
			if (method === 'GET' || method === 'HEAD' || ASKING_ONLY.has(`${method} ${url}`)) continue;
			const { status } = await guest.ask(method, `/homes/${owner.home}${filled(url)}`);
			if (status !== 403) changed.push(`${method} ${url} ${status}`);
		}
		expect(changed).toEqual([]);
		expect((await guest.ask('GET', `/homes/${owner.home}/api/garments`)).body).toHaveLength(1);
	});

	it('are closed again to whoever was put out, in the same session, and so is their line of news', async () => {
		const members = (await owner.ask('GET', `/api/host/homes/${owner.home}/members`)).body;
		const { person } = members.find(({ name }: { name: string }) => name === 'Cleo');
		await owner.ask('DELETE', `/api/host/homes/${owner.home}/members/${person}`);
		expect((await guest.ask('GET', `/homes/${owner.home}/api/garments`)).status).toBe(404);
	});
});
