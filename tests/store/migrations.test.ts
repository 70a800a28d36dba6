import { createHash } from 'node:crypto';
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { sql } from 'kysely';
import { describe, expect, it } from 'vitest';
import { spoken } from '../../src/language/kept-sentence.ts';
import { BEFORE_UPDATE } from '../../src/store/before-update.ts';
import { MIGRATIONS, migrateToNewest } from '../../src/store/migrations/all.ts';
import { openHome } from '../../src/store/open-home.ts';
import { openSqlite } from '../../src/store/sqlite/sqlite-database.ts';
import { corrected, undone } from '../support/decided.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const homes = new URL('../../fixtures/homes/', import.meta.url);
const NOW = () => new Date('2026-03-10T08:00:00.000Z');
const isNewest = (version: string) => version === `v${Object.keys(MIGRATIONS).length}.sql`;
const storedVersions = readdirSync(homes).filter((name) => name.endsWith('.sql'));

function write(path: string, text: string): void {
	mkdirSync(dirname(path), { recursive: true });
	writeFileSync(path, text);
}

/** The name that the program of each version gave the mask. */
const maskNames: Readonly<Record<string, string>> = {
	'v1.sql': 'mask',
	'v2.sql': 'mask-2',
	'v3.sql': 'mask-2',
	'v4.sql': 'mask-406517504a18aa53',
	'v5.sql': 'mask-406517504a18aa53',
};

/** A home as the version that `fixtures/homes` names left it, with its photo files (fixtures/homes/README.md). */
function storedHome(version: string): string {
	const path = temporaryFolder();
	const connection = new DatabaseSync(join(path, 'dyelot.sqlite'));
	connection.exec(readFileSync(new URL(version, homes), 'utf8'));
	connection.close();
	for (const text of ['photo one of the stored home', 'photo two of the stored home']) {
		const id = createHash('sha256').update(text).digest('hex');
		write(join(path, 'photos', id.slice(0, 2), id), text);
		if (text.includes('one'))
			write(join(path, 'derived', id.slice(0, 2), `${id}.${maskNames[version]}.png`), 'its mask');
	}
	return path;
}

describe('a home of an earlier version', () => {
	it('is stored here for every version there was', () => {
		expect(storedVersions.sort()).toEqual(Object.keys(MIGRATIONS).map((_, index) => `v${index + 1}.sql`));
	});

	it.each(storedVersions)('%s opens with everything in it and can be worked with', async (version) => {
		const home = await openHome(storedHome(version), { now: NOW });
		const { store } = home;
		expect(home.findings).toHaveLength(isNewest(version) ? 0 : 1);
		expect((await store.seasons.get('s1'))?.name).toBe('Wet spring');
		expect(await store.garments.list()).toMatchObject([{ id: 'g1', name: 'Oilskin 🧥', place: 'stored' }]);
		expect((await store.bin()).map(({ name }) => name)).toEqual(['Linen shirt']);
		expect((await store.wears({ from: '2026-02-28' })).map(({ on }) => on)).toEqual(['2026-02-28']);
		expect(await store.pairWords()).toEqual([{ garmentA: 'g1', garmentB: 'g2', word: 'approved' }]);
		const photos = await store.photos.list();
		expect(photos.map(({ originalName }) => originalName).sort()).toEqual(['oilskin.jpg', 'مركب.jpg']);
		const photo = photos.find(({ correction }) => correction.mask)!;
		expect(new TextDecoder().decode((await store.photos.derived(photo.id, 'mask'))!)).toBe('its mask');
		expect(new TextDecoder().decode(await store.photos.original(photo.id))).toBe('photo one of the stored home');
		expect(photos.find(({ status }) => status === 'failed')?.failure?.reason).toBe('damaged');
		expect((await undone(store))?.sentence).toBe('They go together');
		// Since version 4 correcting a photo is a decision too.
		expect((await store.decisions(100)).length).toBe(version < 'v4' ? 7 : 8);
		expect((await store.garments.get('g1'))?.version).toBe(version < 'v4' ? 0 : 3);
		await corrected(store, photo.id, { mask: true }, new Uint8Array([1]));
		expect(await store.photos.derived(photo.id, 'mask')).toEqual(Buffer.from([1]));
		await home.close();
	});

	it.each(storedVersions)('%s leaves its database as it was beside the new one, once, and says so', async (version) => {
		const path = storedHome(version);
		const rows = (connection: InstanceType<typeof DatabaseSync>) =>
			[version < 'v5' ? 'things' : 'entries', 'decisions', 'photos', 'kysely_migration'].map((table) =>
				connection.prepare(`SELECT * FROM ${table} ORDER BY 1, 2`).all(),
			);
		const old = new DatabaseSync(join(path, 'dyelot.sqlite'));
		const before = rows(old);
		old.close();
		const home = await openHome(path, { now: NOW });
		await home.close();
		if (isNewest(version)) {
			expect(existsSync(join(path, BEFORE_UPDATE))).toBe(false);
			return;
		}
		const [kept, ...others] = readdirSync(join(path, BEFORE_UPDATE));
		expect(others).toEqual([]);
		expect(home.findings.map(spoken)).toEqual([expect.stringContaining(`${BEFORE_UPDATE}/${kept}`)]);
		const copy = new DatabaseSync(join(path, BEFORE_UPDATE, kept!));
		expect(rows(copy)).toEqual(before);
		copy.close();
		const again = await openHome(path, { now: NOW });
		expect(again.findings).toEqual([]);
		await again.close();
		// What the sentence says: put back, it is the home of before, and is brought up to date again.
		rmSync(join(path, 'dyelot.sqlite'));
		renameSync(join(path, BEFORE_UPDATE, kept!), join(path, 'dyelot.sqlite'));
		const back = await openHome(path, { now: NOW });
		expect(back.findings).toHaveLength(1);
		expect(await back.store.garments.count()).toBe(1);
		await back.close();
	});

	it('says of what its program set aside where it lies now', async () => {
		const path = storedHome('v4.sql');
		const old = new DatabaseSync(join(path, 'dyelot.sqlite'));
		old.exec(
			"INSERT INTO set_aside VALUES ('things/garment', 'g3', '{}', '2026-03-01'), ('photos', 'p1', '{}', '2026-03-01')",
		);
		old.close();
		const { database, close } = await openHome(path, { now: NOW });
		const sources = database.connection.prepare('SELECT source FROM set_aside ORDER BY source').all();
		expect(sources).toEqual([{ source: 'entries/garment' }, { source: 'photos' }]);
		await close();
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
			migrateToNewest(database.db, { migrations: { ...MIGRATIONS, '9999-broken': broken } }),
		).rejects.toThrow('stopped in the middle');
		expect(dump(database.connection)).toEqual(before);
		await database.db.destroy();
	});
});
