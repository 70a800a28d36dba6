import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { afterAll, afterEach, describe, expect, it } from 'vitest';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import { NewerHomeError } from '../../src/store/migrations/all.ts';
import { objectPhotoFiles } from '../../src/store/object-photo-files.ts';
import type { PhotoFiles } from '../../src/store/photo-files.ts';
import { NotYourHomeError, openHostedHomes, schemaOf } from '../../src/store/postgres/hosted-homes.ts';
import { openPhotoQueue, type PhotoQueue, type PhotoTask } from '../../src/store/postgres/photo-queue.ts';
import { putGarments, undone } from '../support/decided.ts';
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
	const inObjects = (homeId: string) => objectPhotoFiles(objects.settings, homeId);

	async function homes(filesOf: (homeId: string) => PhotoFiles = inFolder, clock = now) {
		const opened = await openHostedHomes({ connectionString, filesOf, now: clock, maxConnections: 4 });
		closing.push(() => opened.close());
		return opened;
	}
	// One for all: a server takes about a hundred connections.
	const making = homes();
	let made = 0;
	async function newHome(owner: string) {
		const id = `home-${made++}`;
		await (await making).createHome(owner, { id, name: 'Wardrobe', createdAt: SUITE_TIME });
		return id;
	}

	for (const [place, filesOf] of [
		['a folder', inFolder],
		['an object store', inObjects],
	] as const) {
		const opened = homes(filesOf);
		describeStore(`PostgreSQL with photos in ${place}`, async () => {
			const id = await newHome('ada');
			const open = async (clock?: () => Date) => {
				const store = await (clock ? await homes(filesOf, clock) : await opened).open('ada', id);
				return { store, close: () => store.close() };
			};
			return { open };
		});
	}

	describe('homes of several people in one database', () => {
		it('are seen by their own person only', async () => {
			const all = await homes();
			const [mine, other] = [await newHome('bo'), await newHome('cleo')];
			const store = await all.open('bo', mine);
			await putGarments(store, garmentDetails({ id: 'g1' }), 'Added');
			const photo = await store.photos.add(new Uint8Array([1, 2, 3]), {
				originalName: 'a.jpg',
				mediaType: 'image/jpeg',
				addedAt: SUITE_TIME,
			});
			const elsewhere = await all.open('cleo', other);
			expect(await elsewhere.garments.list()).toEqual([]);
			expect(await elsewhere.decisions(10)).toEqual([]);
			expect(await elsewhere.photos.get(photo.id)).toBeNull();
			await expect(elsewhere.photos.original(photo.id)).rejects.toThrow();
			expect(await undone(elsewhere)).toBeNull();
			await expect(all.open('cleo', mine)).rejects.toThrow(NotYourHomeError);
			await expect(all.open('cleo', 'no such home')).rejects.toThrow(NotYourHomeError);
			expect((await all.homesOf('cleo')).map(({ id }) => id)).toEqual([other]);
		});

		it('kept by one person for several people are apart as well', async () => {
			const all = await homes();
			const [one, two] = [await newHome('dora'), await newHome('dora')];
			await putGarments(await all.open('dora', one), garmentDetails({ id: 'g1' }), 'Added');
			expect(await (await all.open('dora', two)).garments.list()).toEqual([]);
			expect(await all.homesOf('dora')).toHaveLength(2);
		});

		it('have names that cannot reach out of their place', async () => {
			const all = await homes();
			const id = 'x"; drop schema public cascade; --';
			await all.createHome('eve', { id, name: 'x', createdAt: SUITE_TIME });
			await putGarments(await all.open('eve', id), garmentDetails({ id: 'g1' }), 'Added');
			expect(await (await all.open('eve', id)).garments.list()).toHaveLength(1);
			expect(schemaOf(id)).toMatch(/^home_[0-9a-f]{40}$/);
		});

		it('are opened by two servers at the same moment, and decisions of both are kept', async () => {
			const [one, two] = [await homes(), await homes()];
			const id = await newHome('finn');
			const stores = await Promise.all([one.open('finn', id), two.open('finn', id)]);
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

		it('made by a later program are refused with a sentence', async () => {
			const all = await homes();
			const id = await newHome('gus');
			await all.open('gus', id);
			const client = new pg.Client({ connectionString });
			await client.connect();
			await client.query(
				`insert into ${schemaOf(id)}.kysely_migration (name, timestamp) values ('9999-later', '2030')`,
			);
			await client.end();
			await expect(all.open('gus', id)).rejects.toThrow(NewerHomeError);
		});
	});

	describe('photos to be read, as jobs', () => {
		const task = (photoId: string): PhotoTask => ({ owner: 'ada', homeId: 'home-0', photoId });
		const opened: PhotoQueue[] = [];
		// A worker left over would take the next test's photos.
		afterEach(async () => {
			for (const queue of opened.splice(0)) await queue.close();
		});
		const newQueue = async () => {
			const queue = await openPhotoQueue({
				connectionString,
				report: (error) => {
					throw error;
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
				await worker.work(async ({ photoId }) => {
					done.push(photoId);
					if (done.length === photos.length) allDone();
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
			await worker.work(async ({ photoId }) => {
				if (photoId !== 'unlucky') return;
				if (++tries === 1) throw new Error('the worker broke');
				second();
			});
			await again;
			expect(tries).toBe(2);
		});
	});
});
