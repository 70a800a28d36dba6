import { existsSync, mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { HomeInUseError } from '../../src/store/home-lock.ts';
import { NewerHomeError } from '../../src/store/migrations/all.ts';
import { DamagedHomeError, openHome } from '../../src/store/open-home.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const at = '2026-03-01T08:00:00.000Z';
const now = () => new Date(at);
const open = (path: string) => openHome(path, { now });
const bytes = new TextEncoder().encode('a photo, as far as the store is concerned');
const about = { originalName: 'coat.jpg', mediaType: 'image/jpeg', addedAt: at };

describe('a home', () => {
	it('gives back what was put in, after closing and opening again', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		await home.store.garments.put(garmentDetails({ id: 'g1', name: 'Mantel 🧥 מעיל' }), 'Added a coat');
		await home.close();
		const again = await open(path);
		expect((await again.store.garments.get('g1'))?.name).toBe('Mantel 🧥 מעיל');
		expect(again.findings).toEqual([]);
		await again.close();
	});

	it('is refused to a second program while the first holds it', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		// The lock names a process that runs and is not this one: the parent.
		writeFileSync(join(path, 'in-use'), String(process.ppid));
		await expect(open(path)).rejects.toThrow(HomeInUseError);
		await home.close();
	});

	it('is opened when the program that held it was killed', async () => {
		const path = temporaryFolder();
		await (await open(path)).close();
		writeFileSync(join(path, 'in-use'), '999999999');
		await (await open(path)).close();
		expect(existsSync(join(path, 'in-use'))).toBe(false);
	});

	it('made by a later program is refused with a sentence and left as it is', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		home.database.connection.exec("INSERT INTO kysely_migration (name, timestamp) VALUES ('9999-later', '2030-01-01')");
		await home.close();
		await expect(open(path)).rejects.toThrow(NewerHomeError);
	});

	it('whose database is damaged is refused with a sentence', async () => {
		const path = temporaryFolder();
		writeFileSync(join(path, 'dyelot.sqlite'), 'this is no database, and long enough to be taken for one'.repeat(100));
		await expect(open(path)).rejects.toThrow(DamagedHomeError);
	});
});

describe('decisions', () => {
	it('can be taken back and done again, in order', async () => {
		const home = await open(temporaryFolder());
		const { store } = home;
		await store.garments.put(garmentDetails({ id: 'g1', place: 'rail' }), 'Added');
		await store.garments.put(garmentDetails({ id: 'g1', place: 'stored' }), 'Stored the shirt');
		expect((await store.undo())?.sentence).toBe('Stored the shirt');
		expect((await store.garments.get('g1'))?.place).toBe('rail');
		await store.undo();
		expect(await store.garments.get('g1')).toBeNull();
		await store.redo();
		await store.redo();
		expect((await store.garments.get('g1'))?.place).toBe('stored');
		expect(await store.redo()).toBeNull();
		await home.close();
	});

	it('made anew end what could have been done again', async () => {
		const home = await open(temporaryFolder());
		const { store } = home;
		await store.garments.put(garmentDetails({ id: 'g1' }), 'Added one');
		await store.undo();
		await store.garments.put(garmentDetails({ id: 'g2' }), 'Added another');
		expect(await store.redo()).toBeNull();
		expect((await store.garments.list()).map(({ id }) => id)).toEqual(['g2']);
		await home.close();
	});

	it('that change nothing are not noted', async () => {
		const home = await open(temporaryFolder());
		await home.store.garments.put(garmentDetails({ id: 'g1' }), 'Added');
		await home.store.garments.put(garmentDetails({ id: 'g1' }), 'Changed nothing');
		expect((await home.store.decisions(10)).map(({ sentence }) => sentence)).toEqual(['Added']);
		await home.close();
	});
});

describe('the bin', () => {
	it('keeps a deleted garment and gives it back whole', async () => {
		const home = await open(temporaryFolder());
		const { store } = home;
		const coat = garmentDetails({ id: 'g1', name: 'Coat' });
		await store.garments.put(coat, 'Added');
		expect(await store.garments.remove('g1', 'Deleted')).toBe(true);
		expect(await store.garments.list()).toEqual([]);
		expect(await store.bin()).toEqual([{ id: 'g1', what: 'garment', name: 'Coat', deletedAt: at }]);
		expect(await store.restoreFromBin('g1')).toBe(true);
		expect(await store.garments.get('g1')).toEqual(coat);
		expect(await store.garments.remove('nobody', 'Deleted')).toBe(false);
		await home.close();
	});

	it('is emptied of what has lain in it for more than 90 days', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		await home.store.garments.put(garmentDetails({ id: 'g1' }), 'Added');
		await home.store.garments.remove('g1', 'Deleted');
		await home.close();
		const openAfter = (days: number) =>
			openHome(path, { now: () => new Date(now().getTime() + days * 24 * 3600 * 1000) });
		const soon = await openAfter(89);
		expect(await soon.store.bin()).toHaveLength(1);
		await soon.close();
		const late = await openAfter(91);
		expect(await late.store.bin()).toEqual([]);
		await late.close();
	});
});

describe('photos', () => {
	it('are stored once, by what is in them', async () => {
		const home = await open(temporaryFolder());
		const first = await home.store.photos.add(bytes, about);
		const second = await home.store.photos.add(bytes, {
			...about,
			originalName: 'other name.jpg',
			addedAt: '2026-04-01T00:00:00.000Z',
		});
		expect(second).toEqual(first);
		// SHA-256 (FIPS 180-4) of the same text by Python's hashlib.
		expect(first.id).toBe('ede06020a1e1669b535100d3581b2f3f6b0accac661d4815e1c7e1b27178e060');
		expect(await home.store.photos.original(first.id)).toEqual(Buffer.from(bytes));
		await home.close();
	});

	it('raise their version with each correction and wait to be read again', async () => {
		const home = await open(temporaryFolder());
		const { id } = await home.store.photos.add(bytes, about);
		const corrected = await home.store.photos.saveCorrection(id, { mask: true }, bytes);
		expect(corrected).toMatchObject({ version: 2, status: 'waiting', correction: { mask: true } });
		expect(await home.store.photos.derived(id, 'mask')).toEqual(Buffer.from(bytes));
		await home.store.photos.saveCorrection(id, {}, null);
		expect(await home.store.photos.derived(id, 'mask')).toBeNull();
		await home.close();
	});

	it('refuse an id that could be a path', async () => {
		const home = await open(temporaryFolder());
		await expect(home.store.photos.derived('../../../etc/passwd', 'thumb')).rejects.toThrow(TypeError);
		await home.close();
	});
});

describe('start-up', () => {
	it('moves photo files without a row to "found" and drops half-written ones', async () => {
		const path = temporaryFolder();
		await (await open(path)).close();
		const folder = join(path, 'photos', 'ab');
		mkdirSync(folder, { recursive: true });
		writeFileSync(join(folder, 'ab'.padEnd(64, '0')), 'orphan');
		writeFileSync(join(folder, '.1234.part'), 'half');
		const home = await open(path);
		expect(home.findings).toHaveLength(1);
		expect(readdirSync(join(path, 'found'))).toEqual(['ab'.padEnd(64, '0')]);
		expect(readdirSync(folder)).toEqual([]);
		await home.close();
	});

	it('marks a photo whose file is missing and keeps what was read of it', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await home.store.photos.add(bytes, about);
		await home.close();
		rmSync(join(path, 'photos', id.slice(0, 2), id));
		const again = await open(path);
		expect(again.findings[0]).toContain('coat.jpg');
		expect((await again.store.photos.get(id))?.failure?.reason).toBe('missing');
		await again.close();
	});
});
