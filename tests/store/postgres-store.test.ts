import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { sql } from 'kysely';
import pg from 'pg';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { spoken } from '../../src/language/kept-sentence.ts';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import { NewerHomeError } from '../../src/store/migrations/all.ts';
import { objectPhotoFiles } from '../../src/store/object-photo-files.ts';
import { openObjectStore } from '../../src/store/object-store.ts';
import { HOME_TABLES, withinAllHomes } from '../../src/store/postgres/apart.ts';
import { type HostedDatabase, openDatabase } from '../../src/store/postgres/database.ts';
import { openHomeStore } from '../../src/store/postgres/home-store.ts';
import { openPhotoQueue, type PhotoQueue, type PhotoTask } from '../../src/store/postgres/photo-queue.ts';
import { dropUnusedOutlines } from '../../src/store/unused-outlines.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, corrected, putGarments, undone } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { startObjectStore } from '../support/object-store.ts';
import { startPostgres } from '../support/postgres.ts';
import { describeStore, SUITE_TIME } from './store-suite.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`PostgreSQL tests skipped: ${postgres.reason}.`);

describe.skipIf(!postgres.ok)('hosted', async () => {
	if (!postgres.ok) return;
	const { connectionString } = postgres;
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-hosted-'));
	const objects = await startObjectStore(join(folder, 'objects'));
	const closing: (() => Promise<void>)[] = [];
	afterAll(async () => {
		for (const close of closing) await close();
		await objects.stop();
		postgres.stop();
		rmSync(folder, { recursive: true, force: true });
	});
	const now = () => new Date(SUITE_TIME);
	const inFolder = (homeId: string) => directoryPhotoFiles(join(folder, 'files', homeId));
	const inObjects = (homeId: string) => objectPhotoFiles(openObjectStore(objects.settings), homeId);

	async function database(): Promise<HostedDatabase> {
		const opened = await openDatabase({ connectionString, maxConnections: 4 });
		closing.push(() => opened.close());
		return opened;
	}
	// One for all: a server takes about a hundred connections.
	const opening = database();
	let made = 0;
	const newHome = () => `home-${made++}`;

	for (const [place, filesOf] of [
		['a folder', inFolder],
		['an object store', inObjects],
	] as const)
		describeStore(`PostgreSQL with photos in ${place}`, async () => {
			const id = newHome();
			return {
				open: async (clock: () => Date = now) => {
					const { store } = await openHomeStore(await opening, id, filesOf(id), clock);
					return { store, close: () => store.close() };
				},
			};
		});

	describe('homes of several people in one database', () => {
		const opened = async (id: string) => (await openHomeStore(await opening, id, inFolder(id), now)).store;

		it('know nothing of each other', async () => {
			const [mine, other] = [await opened(newHome()), await opened(newHome())];
			await putGarments(mine, garmentDetails({ id: 'g1' }), 'Added');
			const photo = await addedPhoto(mine, new Uint8Array([1, 2, 3]), {
				originalName: 'a.jpg',
				mediaType: 'image/jpeg',
				addedAt: SUITE_TIME,
			});
			expect(await other.garments.list()).toEqual([]);
			expect(await other.garments.get('g1')).toBeNull();
			expect(await other.decisions(10)).toEqual([]);
			expect(await other.photos.get(photo.id)).toBeNull();
			await expect(other.photos.original(photo.id)).rejects.toThrow();
			expect(await undone(other)).toBeNull();
			// The same id is another entry in another home, and the same photo another photo.
			await putGarments(other, garmentDetails({ id: 'g1', notes: 'mine' }), 'Added');
			expect((await mine.garments.get('g1'))?.notes).not.toBe('mine');
		});

		it('have names that mean nothing to the database', async () => {
			const id = `x'; drop schema dyelot cascade; --`;
			await putGarments(await opened(id), garmentDetails({ id: 'g1' }), 'Added');
			expect(await (await opened(id)).garments.list()).toHaveLength(1);
		});

		it('are kept apart by the database itself, whatever is asked of it', async () => {
			const [mine, other] = [newHome(), newHome()];
			await putGarments(await opened(mine), garmentDetails({ id: 'g1' }), 'Added');
			const hosted = await opening;
			for (const table of HOME_TABLES) {
				const { rows } = await sql<{ home: string }>`select distinct home from ${sql.table(table)}`.execute(
					hosted.homeTables(mine),
				);
				for (const row of rows) expect(row.home).toBe(mine);
			}
			const theirs = hosted.homeTables(other);
			await expect(sql`update entries set body = '{}'`.execute(theirs)).resolves.toMatchObject({ numAffectedRows: 0n });
			await expect(sql`delete from entries`.execute(theirs)).resolves.toMatchObject({ numAffectedRows: 0n });
			await expect(
				sql`insert into entries (home, kind, id, body) values (${mine}, 'garment', 'g2', '{}')`.execute(theirs),
			).rejects.toThrow(/row-level security/);
			// A connection that was told no home sees nothing at all.
			const nobodys = await sql`select * from entries`.execute(hosted.accounts.withPlugin(withinAllHomes));
			expect(nobodys.rows.filter((row) => (row as { home: string }).home !== other)).toEqual([]);
			expect(await (await opened(mine)).garments.list()).toHaveLength(1);
		});

		it('are opened by two servers at the same moment, and decisions of both are kept', async () => {
			const id = newHome();
			const servers = await Promise.all([database(), database()]);
			const homes = await Promise.all(servers.map((server) => openHomeStore(server, id, inFolder(id), now)));
			const stores = homes.map(({ store }) => store);
			await Promise.all(
				Array.from({ length: 20 }, (_, index) =>
					putGarments(stores[index % 2]!, garmentDetails({ id: 'g1', notes: String(index) }), `Changed ${index}`),
				),
			);
			expect(await stores[0]!.decisions(100)).toHaveLength(20);
			// Each decision saw the one before: taking all back passes every state and ends where nothing was.
			for (let left = 19; left > 0; left--) {
				await stores[left % 2]!.undo();
				expect(await stores[0]!.garments.get('g1')).not.toBeNull();
			}
			await stores[1]!.undo();
			expect(await stores[0]!.garments.get('g1')).toBeNull();
		});
	});

	describe('what start-up mends', () => {
		it('sets entries aside that have another form, says so from whichever server, and shows the rest', async () => {
			const id = newHome();
			const files = inFolder(id);
			const { store, findings } = await openHomeStore(await opening, id, files, now);
			expect(findings).toEqual([]);
			for (const one of ['g1', 'g2', 'g3']) await putGarments(store, garmentDetails({ id: one }), 'Added');
			const tables = (await opening).homeTables(id);
			await sql`update entries set body = '{"id":"g1","photoIds":"none"}' where id = 'g1'`.execute(tables);
			await sql`update entries set body = 'cut o' where id = 'g2'`.execute(tables);
			const servers = [await database(), await database()];
			for (const server of servers) {
				const again = await openHomeStore(server, id, files, now);
				expect((await again.store.garments.list()).map((garment) => garment.id)).toEqual(['g3']);
				expect(again.findings.map(spoken)).toEqual([
					expect.stringMatching(/^This version of Dyelot cannot use 2 entries, such as garment "g[12]".* set aside/),
				]);
			}
			const later = () => new Date(Date.parse(SUITE_TIME) + 31 * 24 * 3600 * 1000);
			expect((await openHomeStore(await opening, id, files, later)).findings).toEqual([]);
			expect((await openHomeStore(await opening, newHome(), files, now)).findings).toEqual([]);
		});

		it.each([
			['a folder', inFolder],
			['an object store', inObjects],
		])('drops outlines in %s that nothing points at once they are a day old', async (_place, filesOf) => {
			const id = newHome();
			const files = filesOf(id);
			const { store } = await openHomeStore(await opening, id, files, now);
			const about = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: SUITE_TIME };
			const photo = (await addedPhoto(store, new Uint8Array([1, 2, 3]), about)).id;
			await corrected(store, photo, { mask: true }, new Uint8Array([1]));
			await corrected(store, photo, { mask: true }, new Uint8Array([2]));
			await undone(store);
			await store.photos.keepMask(photo, new Uint8Array([3]));
			await store.photos.saveReading(photo, aReading([aSwatch(OAT)]), { thumb: new Uint8Array([4]) });
			const left = async () => (await files.outlines()).length;
			const tables = (await opening).homeTables(id);
			// Files bear the time of this machine.
			await dropUnusedOutlines(tables, files, new Date());
			expect(await left()).toBe(3);
			await dropUnusedOutlines(tables, files, new Date(Date.now() + 25 * 3600 * 1000));
			expect(await left()).toBe(2);
			const outline = async () => [...((await store.photos.derived(photo, 'mask')) ?? [])];
			expect(await outline()).toEqual([1]);
			await store.redo();
			expect(await outline()).toEqual([2]);
		});
	});

	it.each([true, false])(
		'a database of before is brought along with all its homes; login a superuser: %s',
		async (isSuper) => {
			const url = new URL(await postgres.newDatabase());
			const keeper = new pg.Client({ connectionString: url.href });
			await keeper.connect();
			if (!isSuper) {
				await keeper.query(`create role plain login; grant create on database ${url.pathname.slice(1)} to plain`);
				url.username = 'plain';
			}
			await (await openDatabase({ connectionString: url.href })).close();
			// What version 5 calls otherwise, called as before.
			await keeper.query(`set search_path = dyelot; delete from kysely_migration where name = '0005-entries';
			alter table entries rename to things; alter table shown_photos rename column entry_id to thing_id`);
			for (const home of ['one', 'two'])
				await keeper.query(`insert into things (home, kind, id, body) values ('${home}', 'season', 's1', '{"name":"Of ${home}"}');
				insert into set_aside (home, source, id, body, at) values ('${home}', 'things/garment', 'g1', '{}', '2026-03-01')`);
			const brought = await openDatabase({ connectionString: url.href });
			for (const home of ['one', 'two']) {
				const tables = brought.homeTables(home);
				expect(await tables.selectFrom('entries').select('body').execute()).toEqual([
					{ body: `{"name":"Of ${home}"}` },
				]);
				const aside = await tables.selectFrom('set_aside').select('source').execute();
				expect(aside).toEqual([{ source: 'entries/garment' }]);
			}
			await brought.close();
			await keeper.end();
		},
	);

	it('a database made by a later program is refused with a sentence', async () => {
		const later = await postgres.newDatabase();
		await (await openDatabase({ connectionString: later })).close();
		const client = new pg.Client({ connectionString: later });
		await client.connect();
		await client.query("insert into dyelot.kysely_migration (name, timestamp) values ('9999-later', '2030')");
		await client.end();
		await expect(openDatabase({ connectionString: later })).rejects.toThrow(NewerHomeError);
	});

	describe('photos to be read, as jobs', () => {
		const task = (photoId: string): PhotoTask => ({ homeId: 'home-0', photoId });
		const opened: PhotoQueue[] = [];
		// A worker left over would take the next test's photos.
		afterEach(async () => {
			for (const queue of opened.splice(0)) await queue.close();
		});
		const BROKE = 'the worker broke';
		const newQueue = async (settings: { expireSeconds?: number; laterSeconds?: number } = {}) => {
			const queue = await openPhotoQueue({
				...settings,
				connectionString,
				report: (error) => {
					if (error.message !== BROKE) throw error;
				},
			});
			opened.push(queue);
			return queue;
		};

		it('are each done once by one of several workers, and queued once while they wait', async () => {
			const [server, one, two] = [await newQueue(), await newQueue(), await newQueue()];
			const photos = Array.from({ length: 12 }, (_, index) => `photo-${index}`);
			for (const photo of photos) expect(await server.enqueue(task(photo))).toBe(true);
			expect(await server.enqueue(task('photo-0'))).toBe(false);
			expect(await server.waiting()).toBe(12);
			const done: string[] = [];
			let allDone = () => {};
			const finished = new Promise<void>((resolve) => {
				allDone = resolve;
			});
			for (const worker of [one, two])
				worker.work({
					atOnce: 1,
					handler: async ({ photoId }) => {
						done.push(photoId);
						if (done.length === photos.length) allDone();
					},
					isPassing: () => false,
					onGivenUp: async () => {},
				});
			await finished;
			expect(done.sort()).toEqual([...photos].sort());
		});

		it('are given out again when the worker fails on them', async () => {
			const worker = await newQueue();
			let tries = 0;
			let second = () => {};
			const again = new Promise<void>((resolve) => {
				second = resolve;
			});
			await worker.enqueue(task('unlucky'));
			const handler = async ({ photoId }: PhotoTask) => {
				if (photoId !== 'unlucky') return;
				if (++tries === 1) throw new Error(BROKE);
				second();
			};
			worker.work({ atOnce: 1, handler, isPassing: () => false, onGivenUp: async () => {} });
			await again;
			expect(tries).toBe(2);
		});

		it('are given up after the third failure, and that is heard once', async () => {
			const worker = await newQueue();
			let tries = 0;
			const givenUp: PhotoTask[] = [];
			let heard = () => {};
			const hearing = new Promise<void>((resolve) => {
				heard = resolve;
			});
			await worker.enqueue(task('hopeless'));
			worker.work({
				atOnce: 2,
				handler: async () => {
					tries++;
					throw new Error(BROKE);
				},
				isPassing: () => false,
				onGivenUp: async (one) => {
					givenUp.push(one);
					heard();
				},
			});
			await hearing;
			expect(givenUp).toEqual([task('hopeless')]);
			expect(tries).toBe(3);
		});

		it('are tried until it passes where they failed for what is none of theirs', async () => {
			const worker = await newQueue({ laterSeconds: 0 });
			const givenUp: PhotoTask[] = [];
			let tries = 0;
			let passed = () => {};
			const passing = new Promise<void>((resolve) => {
				passed = resolve;
			});
			await worker.enqueue(task('unreached'));
			worker.work({
				atOnce: 1,
				handler: async () => {
					if (++tries <= 6) throw new Error(BROKE);
					passed();
				},
				isPassing: (error) => (error as Error).message === BROKE,
				onGivenUp: async (one) => void givenUp.push(one),
			});
			await passing;
			expect(givenUp).toEqual([]);
		});

		it('are told as given up by another where the process ends that was to tell it', async () => {
			const [one, other] = [await newQueue({ expireSeconds: 1 }), await newQueue({ expireSeconds: 1 })];
			const handler = async () => {
				throw new Error(BROKE);
			};
			const called = () => {
				let call = () => {};
				const heard = new Promise<void>((resolve) => {
					call = resolve;
				});
				return { call, heard };
			};
			const [taken, told, over] = [called(), called(), called()];
			await one.enqueue(task('lost-twice'));
			const gone = async () => {
				taken.call();
				await over.heard;
			};
			one.work({ atOnce: 1, handler, isPassing: () => false, onGivenUp: gone });
			await taken.heard;
			other.work({ atOnce: 1, handler, isPassing: () => false, onGivenUp: async () => told.call() });
			await told.heard;
			over.call();
		});

		it('are given out again where the database is away just as one is done, which is told and ends nothing', async () => {
			const told: string[] = [];
			const worker = await openPhotoQueue({
				connectionString,
				report: ({ message }) => told.push(message),
				expireSeconds: 1,
			});
			opened.push(worker);
			const admin = new pg.Client({ connectionString });
			await admin.connect();
			let tries = 0;
			let second = () => {};
			const again = new Promise<void>((resolve) => {
				second = resolve;
			});
			await worker.enqueue(task('in-between'));
			worker.work({
				atOnce: 1,
				handler: async () => {
					if (++tries === 2) return second();
					// As if the database were away: what the queue writes in is not there.
					await admin.query('alter schema dyelot_queue rename to dyelot_away');
				},
				isPassing: () => false,
				onGivenUp: async () => {},
			});
			await expect.poll(() => told.length, { timeout: 60_000 }).toBeGreaterThan(0);
			expect(told[0]).toContain('dyelot_queue');
			await admin.query('alter schema dyelot_away rename to dyelot_queue');
			await admin.end();
			await again;
			expect(tries).toBe(2);
		});

		it('are taken back out for one home alone', async () => {
			const queue = await newQueue();
			await queue.enqueue({ homeId: 'one', photoId: 'a' });
			await queue.enqueue({ homeId: 'one', photoId: 'b' });
			await queue.enqueue({ homeId: 'two', photoId: 'a' });
			expect((await queue.drop('one')).sort()).toEqual(['a', 'b']);
			expect(await queue.waiting()).toBe(1);
			expect(await queue.drop('two')).toEqual(['a']);
		});
	});
});
