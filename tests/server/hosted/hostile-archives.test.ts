import { createWriteStream, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { writeBackup } from '../../../src/store/backup.ts';
import { openHome } from '../../../src/store/open-home.ts';
import { photoIdOf } from '../../../src/store/photo-files.ts';
import { addedPhoto, putGarments } from '../../support/decided.ts';
import { garmentDetails } from '../../support/garment-details.ts';
import { type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';
import { temporaryFolder } from '../../support/temporary-home.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of hostile archives skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const BYTES = new Uint8Array([1, 2, 3]);

/** An archive of a home whose database somebody has altered. */
async function archiveWith(alter: string): Promise<Buffer> {
	const folder = temporaryFolder();
	const path = join(folder, 'home');
	const home = await openHome(path, { now: () => new Date() });
	await putGarments(home.store, garmentDetails({ id: 'g1' }), 'Added');
	const about = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: '2026-03-01T10:00:00.000Z' };
	await addedPhoto(home.store, BYTES, about);
	await home.close();
	const database = new DatabaseSync(join(path, 'dyelot.sqlite'));
	database.exec(alter);
	database.close();
	await writeBackup(path, createWriteStream(join(folder, 'home.tar')));
	return readFileSync(join(folder, 'home.tar'));
}

const ENDLESS = 'with recursive n(i) as (select 1 union all select i + 1 from n) select';

const PATH_AS_OUTLINE = {
	kind: 'correction',
	id: photoIdOf(BYTES),
	before: null,
	after: { body: JSON.stringify({ mask: '../../x' }) },
};

const ALTERED: Readonly<Record<string, string>> = {
	'things that never end': `alter table entries rename to before; create view entries as ${ENDLESS} 'garment' as kind, i as id, '{}' as body, 1 as version, null as binned_at, '{}' as field_versions from n`,
	'work that never ends at every change': `create trigger slow after update on photos begin select count(*) from (${ENDLESS} i from n); end; update photos set size_bytes = 3 where 0`,
	'a column that is not ours': 'alter table entries add column more text',
	'a photo whose id is a path': `update photos set id = '../../../../etc/passwd'`,
	'an outline whose name is a path': `update photos set mask = '../../x'`,
	'a decision that names a path': `update decisions set changes = '${JSON.stringify([PATH_AS_OUTLINE])}'`,
	'decisions that are none': `update decisions set changes = '{}'`,
	'text where a number belongs': `update photos set size_bytes = 'many'`,
	'an index over what takes long': `create index slow on entries (length(printf('%.*c', 900000000, id)))`,
};

describe.skipIf(!postgres.ok)('an archive that somebody has altered', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let ada: Awaited<ReturnType<HostedTest['newcomer']>>;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		ada = await test.newcomer('Ada');
	});
	afterAll(() => test?.close());
	const bring = (archive: Buffer) =>
		ada.ask('POST', '/api/host/homes/bring?name=Altered', archive, { 'content-type': 'application/x-tar' });

	it('that nobody has altered is taken', async () => {
		const one = await test.newcomer('Cleo');
		const { status } = await one.ask('POST', '/api/host/homes/bring?name=Own', await archiveWith(''), {
			'content-type': 'application/x-tar',
		});
		expect(status).toBe(201);
	});

	it.each(Object.entries(ALTERED))('to hold %s is refused, and no home is made of it', async (_what, alter) => {
		const { status, body } = await bring(await archiveWith(alter));
		expect([status, body.error?.code]).toEqual([400, 'bad-request']);
		expect(body.error.message).not.toMatch(/\/tmp|bring-in-/);
		expect((await ada.ask('GET', '/api/host/homes')).body).toHaveLength(1);
	});

	it('to name another home holds nothing of it, and brings nothing into it', async () => {
		const bo = await test.newcomer('Bo');
		await bo.ask('POST', `/homes/${bo.home}/api/garments`, { name: 'Coat' });
		const archive = await archiveWith(
			`alter table entries add column home text; update entries set home = '${bo.home}'; alter table photos add column home text; update photos set home = '${bo.home}'`,
		);
		const { status } = await bring(archive);
		expect(status).toBe(400);
		expect((await bo.ask('GET', `/homes/${bo.home}/api/garments`)).body).toHaveLength(1);
		expect((await bo.ask('GET', `/homes/${bo.home}/api/photos`)).body).toEqual([]);
	});
});
