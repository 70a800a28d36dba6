import { copyFileSync, existsSync, renameSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { createEventHub } from '../../src/app/events.ts';
import { judgeHere } from '../../src/app/judging.ts';
import type { Services } from '../../src/app/services.ts';
import { buildApp } from '../../src/server/app.ts';
import { ownEntrance } from '../../src/server/entrance.ts';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import { receiveFile } from '../../src/store/incoming-file.ts';
import { migrateToNewest } from '../../src/store/migrations/all.ts';
import { sqlStore } from '../../src/store/sql-store.ts';
import { closeSqlite, openSqlite, type SqliteDatabase } from '../../src/store/sqlite/sqlite-database.ts';
import type { Store } from '../../src/store/store.ts';
import { furnish } from '../support/decision-requests.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const NOW = new Date('2026-03-01T09:00:00.000Z');
const WRITING: ReadonlySet<string> = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/** The whole application over a database file that is put back as it was before each request. */
export async function openStage() {
	const folder = temporaryFolder();
	const [template, path] = [join(folder, 'template.sqlite'), join(folder, 'now.sqlite')];
	const files = directoryPhotoFiles(folder);
	let database: SqliteDatabase | null = null;
	let store: Store | null = null;
	let ids = 0;
	const open = (at: string) => {
		database = openSqlite(at);
		store = sqlStore(database.db, files, () => NOW);
		ids = 0;
	};
	const close = () => {
		if (database) closeSqlite(database.connection);
		database = null;
	};
	open(template);
	await migrateToNewest(database!.db);
	const furnished = await furnish(store!);
	close();
	const current = new Proxy({} as Store, { get: (_, name) => store![name as keyof Store] });
	const routes: string[] = [];
	const services = {
		store: current,
		jobs: { enqueue: async () => {}, cancelWaiting: async () => [], settled: async () => {}, close: async () => {} },
		events: createEventHub(),
		sharing: null,
		judge: judgeHere,
		beside: null,
		backup: null,
		restore: null,
		receive: (from) => receiveFile(from, join(folder, 'incoming')),
		findings: [],
		now: () => NOW,
		newId: () => `new-${++ids}`,
		sharedLight: async () => null,
		followLight: async () => {},
		followGrounds: async () => {},
	} as Partial<Services> as Services;
	const app = await buildApp(ownEntrance(services), {
		onRoute: ({ method, url }) => {
			for (const one of [method].flat()) if (WRITING.has(one)) routes.push(`${one} ${url}`);
		},
	});
	return {
		app,
		routes,
		furnished,
		/** Puts the home back as it was furnished. */
		putBack() {
			close();
			copyFileSync(template, path);
			open(path);
		},
		/** Closes and starts again. */
		startAgain() {
			close();
			open(path);
		},
		/** Keeps what a kill at this moment would leave on disk: the database and the log that was written beside it. */
		keepAs(name: string) {
			for (const ending of ['', '-wal'])
				if (existsSync(path + ending)) copyFileSync(path + ending, join(folder, name + ending));
		},
		/** Starts again on what was kept under that name. */
		startFrom(name: string) {
			close();
			for (const ending of ['', '-wal', '-shm']) rmSync(path + ending, { force: true });
			for (const ending of ['', '-wal']) {
				const kept = join(folder, name + ending);
				if (existsSync(kept)) renameSync(kept, path + ending);
			}
			open(path);
		},
		dump: () => dumpOf(database!),
		close: async () => {
			await app.close();
			close();
		},
	};
}

export type Stage = Awaited<ReturnType<typeof openStage>>;

/** Not a line-up that holds nothing but the order of the season's gaps, which the program notes by itself. */
const DECIDED = `not (kind = 'line-up'
	and json_array_length(body, '$.garmentIds') + json_array_length(body, '$.mustKeep') + json_array_length(body, '$.neverUse') = 0)`;

/** All that was decided. What the program reads and notes by itself is no part of it. */
export type Dump = { readonly rows: string; readonly wardrobe: string };

function dumpOf({ connection }: SqliteDatabase): Dump {
	const all = (sql: string) => connection.prepare(sql).all();
	const wardrobe = [
		all(
			`select kind, id, json_remove(body, '$.gapIds') as body, binned_at from entries where ${DECIDED} order by kind, id`,
		).map(sameWhateverTheOrder),
		// A photo that came in stays when what showed it is taken back; nothing was decided about it.
		all("select id, correction, mask from photos where correction <> '{}' or mask is not null order by id"),
	];
	const rows = [
		wardrobe,
		all(`select kind, id, version from entries where ${DECIDED} order by kind, id`),
		all('select * from decisions order by id'),
		all('select key, request, answer from answers order by key'),
		all('select * from shown_photos order by photo_id, kind, entry_id'),
		// Whether it was read; one whose light was corrected waits for a moment, with what was read of it.
		all('select id, reading is not null as is_read from photos order by id'),
	];
	return { rows: JSON.stringify(rows), wardrobe: JSON.stringify(wardrobe) };
}

/** A row whose JSON has its fields in order. */
const sameWhateverTheOrder = (row: unknown): unknown =>
	Object.fromEntries(
		Object.entries(row as Record<string, unknown>).map(([name, value]) => [
			name,
			name === 'body'
				? Object.entries(JSON.parse(String(value)) as object).sort(([a], [b]) => (a < b ? -1 : 1))
				: value,
		]),
	);
