import { createHash } from 'node:crypto';
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { MIGRATIONS, migrateToNewest } from '../../src/store/migrations/all.ts';
import { openHome } from '../../src/store/open-home.ts';
import { openSqlite } from '../../src/store/sqlite/sqlite-database.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const homes = new URL('../../fixtures/homes/', import.meta.url);
const storedVersions = readdirSync(homes).filter((name) => name.endsWith('.sql'));

function write(path: string, text: string): void {
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, text);
}

/** A home as the version that `fixtures/homes` names left it, with its photo files (fixtures/homes/README.md). */
function storedHome(version: string): string {
	const path = temporaryFolder();
	const connection = new DatabaseSync(join(path, 'dyelot.sqlite'));
	connection.exec(readFileSync(new URL(version, homes), 'utf8'));
	const maskName = version === 'v1.sql' ? 'mask' : 'mask-2';
	connection.close();
	for (const text of ['photo one of the stored home', 'photo two of the stored home']) {
		const id = createHash('sha256').update(text).digest('hex');
		write(join(path, 'photos', id.slice(0, 2), id), text);
		if (text.includes('one')) write(join(path, 'derived', id.slice(0, 2), `${id}.${maskName}.png`), 'its mask');
	}
	return path;
}

describe('a home of an earlier version', () => {
	it('is stored here for every version there was', () => {
		expect(storedVersions.sort()).toEqual(Object.keys(MIGRATIONS).map((_, index) => `v${index + 1}.sql`));
	});

	it.each(storedVersions)('%s opens with everything in it and can be worked with', async (version) => {
		const home = await openHome(storedHome(version), { now: () => new Date('2026-03-10T08:00:00.000Z') });
		const { store } = home;
		expect(home.findings).toEqual([]);
		expect((await store.seasons.get('s1'))?.name).toBe('Wet spring');
		expect(await store.garments.list()).toMatchObject([{ id: 'g1', name: 'Oilskin 🧥', place: 'stored' }]);
		expect((await store.bin()).map(({ name }) => name)).toEqual(['Linen shirt']);
		expect((await store.wears({ from: '2026-02-28' })).map(({ on }) => on)).toEqual(['2026-02-28']);
		expect(await store.pairWords()).toEqual([{ garmentA: 'g1', garmentB: 'g2', word: 'approved' }]);
		const photos = await store.photos.list();
		expect(photos.map(({ originalName }) => originalName).sort()).toEqual(['oilskin.jpg', 'مركب.jpg']);
		const corrected = photos.find(({ correction }) => correction.mask)!;
		expect(new TextDecoder().decode((await store.photos.derived(corrected.id, 'mask'))!)).toBe('its mask');
		expect(new TextDecoder().decode(await store.photos.original(corrected.id))).toBe('photo one of the stored home');
		expect(photos.find(({ status }) => status === 'failed')?.failure?.reason).toBe('damaged');
		expect((await store.undo())?.sentence).toBe('They go together');
		expect((await store.decisions(100)).length).toBe(7);
		await store.photos.saveCorrection(corrected.id, { mask: true }, new Uint8Array([1]));
		expect(await store.photos.derived(corrected.id, 'mask')).toEqual(Buffer.from([1]));
		await home.close();
	});

	it('is left exactly as it was when a migration fails halfway', async () => {
		const path = join(storedHome('v1.sql'), 'dyelot.sqlite');
		const dump = (connection: InstanceType<typeof DatabaseSync>) =>
			connection.prepare("SELECT name, sql FROM sqlite_master WHERE name NOT LIKE 'kysely%' ORDER BY name").all();
		const database = openSqlite(path);
		const before = dump(database.connection);
		const broken = {
			async up(db: Parameters<(typeof MIGRATIONS)[string]['up']>[0]) {
				await sql`create table half_done (id text)`.execute(db);
				await sql`drop table photos`.execute(db);
				throw new Error('stopped in the middle');
			},
		};
		await expect(
			migrateToNewest(database.db, { migrations: { ...MIGRATIONS, '0003-broken': broken } }),
		).rejects.toThrow('stopped in the middle');
		expect(dump(database.connection)).toEqual(before);
		await database.db.destroy();
	});
});
