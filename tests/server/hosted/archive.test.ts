import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { openHome } from '../../../src/store/open-home.ts';
import { restoreBackup } from '../../../src/store/restore.ts';
import { type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { cutOut } from '../../support/pictures.ts';
import { startPostgres } from '../../support/postgres.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';
import { multipartBody } from '../../support/test-app.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of homes as archives skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

describe.skipIf(!postgres.ok)('a home as an archive', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Awaited<ReturnType<HostedTest['newcomer']>>;
	let archive: Buffer;
	const now = () => new Date();
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
		const { payload, headers } = multipartBody({ purpose: 'garment' }, [
			{ name: 'jumper.png', bytes: await cutOut([40, 20, 30]) },
		]);
		const sent = await ada.ask('POST', `/homes/${ada.home}/api/photos`, payload, headers);
		expect(sent.status).toBe(202);
		const { entryId } = sent.body.items[0];
		for (const notes of ['first', 'second'])
			expect((await ada.ask('PATCH', `/homes/${ada.home}/api/garments/${entryId}`, { notes })).status).toBe(200);
		const response = await test.app.inject({
			method: 'GET',
			url: `/homes/${ada.home}/api/backup`,
			headers: { host: test.origin.host, cookie: ada.cookie() },
		});
		expect(response.statusCode).toBe(200);
		archive = response.rawPayload;
	});
	afterAll(() => test?.close());

	it('is restored by the single form, with its decisions to be taken back', async () => {
		const folder = temporaryFolder();
		writeFileSync(join(folder, 'home.tar'), archive);
		await restoreBackup(join(folder, 'home.tar'), join(folder, 'home'), now);
		const { store, close } = await openHome(join(folder, 'home'), { now });
		const [garment] = await store.garments.list();
		expect(garment?.notes).toBe('second');
		expect((await store.photos.original(garment!.photoIds[0]!)).length).toBeGreaterThan(100);
		await store.undo();
		expect((await store.garments.list())[0]?.notes).toBe('first');
		await close();
	});

	it('is brought in again as a home of its own, whole', async () => {
		const tar = { 'content-type': 'application/x-tar' };
		const brought = await ada.ask('POST', '/api/host/homes/bring?name=Brought', archive, tar);
		expect(brought.status).toBe(201);
		const at = `/homes/${brought.body.id}/api`;
		const [garment] = (await ada.ask('GET', `${at}/garments`)).body;
		expect(garment.notes).toBe('second');
		expect((await ada.ask('GET', `${at}/photos/${garment.photoIds[0]}/original`)).status).toBe(200);
		expect((await ada.ask('POST', `${at}/undo`)).status).toBe(200);
		expect((await ada.ask('GET', `${at}/garments`)).body[0].notes).toBe('first');
		// The home that it came from is as it was.
		expect((await ada.ask('GET', `/homes/${ada.home}/api/garments`)).body[0].notes).toBe('second');
	});

	it('that is none is refused, and no home is made of it', async () => {
		const before = (await ada.ask('GET', '/api/host/homes')).body.length;
		const tar = { 'content-type': 'application/x-tar' };
		const cut = archive.subarray(0, archive.length / 2);
		for (const bytes of [Buffer.from('no archive'), cut]) {
			const { status, body } = await ada.ask('POST', '/api/host/homes/bring?name=None', bytes, tar);
			expect(status).toBe(400);
			expect(body.error.message).not.toMatch(/\/tmp|bring-in-/);
		}
		expect((await ada.ask('GET', '/api/host/homes')).body).toHaveLength(before);
	});
});
