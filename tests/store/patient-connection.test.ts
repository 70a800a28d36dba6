import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { DATABASE_FILE, openHome } from '../../src/store/open-home.ts';
import { closeSqlite, openSqlite } from '../../src/store/sqlite/sqlite-database.ts';
import { putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

describe('while another program writes', () => {
	it('a decision and a single write wait, what is only read is answered, and all is done once the other has finished', async () => {
		const path = temporaryFolder();
		const { store, close } = await openHome(path, { now: () => new Date() });
		await putGarments(store, garmentDetails({ id: 'g1' }));
		const { connection } = openSqlite(join(path, DATABASE_FILE));
		connection.exec('BEGIN IMMEDIATE');
		const done: string[] = [];
		const deciding = putGarments(store, garmentDetails({ id: 'g2' })).then(() => done.push('decided'));
		const writing = store.photos
			.saveFailure('no photo', { reason: 'none', message: '' })
			.then(() => done.push('written'));
		// Each is answered, though both above wait for the right to write.
		for (let turn = 0; turn < 20; turn++) expect(await store.garments.count()).toBe(1);
		expect(done).toEqual([]);
		connection.exec('COMMIT');
		await Promise.all([deciding, writing]);
		expect(await store.garments.count()).toBe(2);
		closeSqlite(connection);
		await close();
	});
});
