import { spawn } from 'node:child_process';
import { mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { describe, expect, it } from 'vitest';
import { spoken } from '../../src/language/kept-sentence.ts';
import { inLanguage } from '../../src/language/speak.ts';
import { HomeInUseError } from '../../src/store/home-lock.ts';
import { NewerHomeError } from '../../src/store/migrations/all.ts';
import { DamagedHomeError, openHome } from '../../src/store/open-home.ts';
import { defaultHomePath } from '../../src/store/paths.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, corrected, putGarments, undone } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const at = '2026-03-01T08:00:00.000Z';
const open = (path: string) => openHome(path, { now: () => new Date(at) });
const bytes = new TextEncoder().encode('a photo, as far as the store is concerned');
const about = { originalName: 'coat.jpg', mediaType: 'image/jpeg', addedAt: at };

/** Another process that opens the home and holds it until killed. */
async function holdElsewhere(path: string) {
	const program = `
		const { openHome } = await import(${JSON.stringify(new URL('../../src/store/open-home.ts', import.meta.url).href)});
		await openHome(process.argv[1], { now: () => new Date() });
		console.log('open');
		setInterval(() => {}, 1000);`;
	const child = spawn(process.execPath, ['--import', 'tsx', '--input-type=module', '-e', program, path], {
		stdio: ['ignore', 'pipe', 'inherit'],
	});
	await new Promise<void>((resolve, reject) => {
		child.stdout.once('data', () => resolve());
		child.once('exit', (code) => reject(new Error(`the holder ended with ${code}`)));
	});
	return {
		kill: () =>
			new Promise<void>((resolve) => {
				child.removeAllListeners('exit');
				child.once('exit', () => resolve());
				child.kill('SIGKILL');
			}),
	};
}

describe('a home', () => {
	it('lies where the platform keeps data of programs', () => {
		// XDG Base Directory Specification 0.8; Apple File System Programming Guide; Windows known folder LocalAppData
		expect(defaultHomePath({ XDG_DATA_HOME: '/data' }, 'linux')).toBe('/data/dyelot');
		expect(defaultHomePath({}, 'linux')).toMatch(/\.local\/share\/dyelot$/);
		expect(defaultHomePath({}, 'darwin')).toMatch(/Library\/Application Support\/Dyelot$/);
		expect(defaultHomePath({ LOCALAPPDATA: '/local' }, 'win32')).toBe('/local/Dyelot');
	});

	it('is refused to a second program while the first holds it, and free once that was killed', async () => {
		const path = temporaryFolder();
		const holder = await holdElsewhere(path);
		await expect(open(path)).rejects.toThrow(HomeInUseError);
		await holder.kill();
		await (await open(path)).close();
	});

	it('is refused a second time in the same program', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		await expect(open(path)).rejects.toThrow(/in use by another Dyelot/);
		await home.close();
		await (await open(path)).close();
	});

	it('is one database file again once closed, with nothing left to merge', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		await putGarments(home.store, garmentDetails({ id: 'g1' }), 'Added');
		await home.store.garments.list();
		await home.close();
		expect(readdirSync(path).filter((name) => name.startsWith('dyelot'))).toEqual(['dyelot.sqlite']);
	});

	it('writes so that an answered change is on disk', async () => {
		const home = await open(temporaryFolder());
		const pragma = (name: string) => Object.values(home.database.connection.prepare(`PRAGMA ${name}`).get() ?? {})[0];
		// https://sqlite.org/pragma.html#pragma_synchronous: 2 is FULL
		expect([pragma('journal_mode'), pragma('synchronous')]).toEqual(['wal', 2]);
		await home.close();
	});

	it('made by a later program is refused with a sentence and left as it is', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		home.database.connection.exec("INSERT INTO kysely_migration (name, timestamp) VALUES ('9999-later', '2030-01-01')");
		await home.close();
		const before = readFileSync(join(path, 'dyelot.sqlite'));
		await expect(open(path)).rejects.toThrow(NewerHomeError);
		expect(readFileSync(join(path, 'dyelot.sqlite'))).toEqual(before);
	});

	it('whose database is something else is refused with a sentence', async () => {
		const path = temporaryFolder();
		writeFileSync(join(path, 'dyelot.sqlite'), 'this is no database, and long enough to be taken for one'.repeat(100));
		await expect(open(path)).rejects.toThrow(DamagedHomeError);
	});
});

describe('start-up', () => {
	it('moves photo files without a row to "found" and drops half-written ones', async () => {
		const path = temporaryFolder();
		await (await open(path)).close();
		const folder = join(path, 'photos', 'ab');
		mkdirSync(folder, { recursive: true });
		mkdirSync(join(path, '.backup-left'));
		writeFileSync(join(folder, 'ab'.padEnd(64, '0')), 'orphan');
		writeFileSync(join(folder, '.1234.part'), 'half');
		const home = await open(path);
		expect(home.findings.map(spoken)).toEqual([expect.stringContaining('1 photo file belonged to no photo')]);
		expect(readdirSync(join(path, 'found'))).toEqual(['ab'.padEnd(64, '0')]);
		expect(readdirSync(folder)).toEqual([]);
		expect(readdirSync(path)).not.toContain('.backup-left');
		await home.close();
		const again = await open(path);
		expect(again.findings).toEqual([]);
		await again.close();
	});

	it('marks a photo whose file is missing, says so each time, and frees it once the file is back', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await addedPhoto(home.store, bytes, about);
		await home.close();
		const file = join(path, 'photos', id.slice(0, 2), id);
		renameSync(file, join(path, 'elsewhere'));
		for (let time = 0; time < 2; time++) {
			const again = await open(path);
			expect(spoken(again.findings[0]!)).toContain('coat.jpg');
			expect((await again.store.photos.get(id))?.failure?.reason).toBe('missing');
			await again.close();
		}
		renameSync(join(path, 'elsewhere'), file);
		const healed = await open(path);
		expect(healed.findings).toEqual([]);
		expect(await healed.store.photos.get(id)).toMatchObject({ status: 'waiting', failure: null });
		await healed.close();
	});

	it('marks a photo whose file was cut short; the same photo added again mends it', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await addedPhoto(home.store, bytes, about);
		await home.close();
		writeFileSync(join(path, 'photos', id.slice(0, 2), id), bytes.slice(0, 5));
		const again = await open(path);
		expect((await again.store.photos.get(id))?.failure?.reason).toBe('changed');
		await addedPhoto(again.store, bytes, about);
		expect(await again.store.photos.original(id)).toEqual(Buffer.from(bytes));
		await again.close();
	});

	it('has photos read again whose small pictures or outline are gone', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await addedPhoto(home.store, bytes, about);
		await corrected(home.store, id, { mask: true }, bytes);
		await home.store.photos.saveReading(id, aReading([aSwatch(OAT)]), { thumb: bytes, display: bytes });
		const other = await addedPhoto(home.store, bytes.slice(1), about);
		await home.store.photos.saveReading(other.id, aReading([aSwatch(OAT)]), { thumb: bytes, display: bytes });
		await home.close();
		const derived = join(path, 'derived', id.slice(0, 2));
		rmSync(join(derived, readdirSync(derived).find((name) => name.startsWith(`${id}.mask-`))!));
		rmSync(join(path, 'derived', other.id.slice(0, 2), `${other.id}.thumb.webp`));
		const again = await open(path);
		expect(again.findings).toHaveLength(2);
		expect((await again.store.photos.list()).map(({ status }) => status)).toEqual(['waiting', 'waiting']);
		expect(await again.store.photos.derived(id, 'mask')).toBeNull();
		await again.close();
	});

	it('drops outlines that nothing points at, and keeps those of photos and of decisions', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await addedPhoto(home.store, bytes, about);
		const names: string[] = [];
		for (const drawn of [bytes, bytes.slice(1), bytes.slice(2)]) {
			await corrected(home.store, id, { mask: true }, drawn);
			names.push((await home.store.photos.maskOf(id))!);
		}
		// Taken back, the last can be done again; kept for a correction that was never made, the other never will be.
		await undone(home.store);
		const lost = await home.store.photos.keepMask(id, bytes.slice(3));
		await home.close();
		const again = await open(path);
		const left = readdirSync(join(path, 'derived', id.slice(0, 2))).map((name) => name.split('.')[1]);
		expect(left.sort()).toEqual([...names].sort());
		expect(left).not.toContain(lost);
		await again.close();
	});

	it('sets rows aside that cannot be read, and shows all others', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		await putGarments(home.store, garmentDetails({ id: 'g1' }), 'Added');
		await putGarments(home.store, garmentDetails({ id: 'g2' }), 'Added');
		const { id } = await addedPhoto(home.store, bytes, about);
		home.database.connection.exec(`
			UPDATE entries SET body = '{"name":"cut o' WHERE id = 'g1';
			UPDATE decisions SET changes = '[{' WHERE id = 2;
			UPDATE photos SET reading = '{', status = 'read'`);
		await home.close();
		const again = await open(path);
		expect(again.findings).toHaveLength(3);
		expect((await again.store.garments.list()).map((garment) => garment.id)).toEqual(['g2']);
		expect(await again.store.photos.get(id)).toMatchObject({ status: 'waiting', reading: null });
		expect((await undone(again.store))?.sentence).toBe('Added');
		await again.close();
		const connection = new DatabaseSync(join(path, 'dyelot.sqlite'));
		expect(
			connection
				.prepare('SELECT body FROM set_aside ORDER BY source')
				.all()
				.map((row) => row.body),
		).toEqual(['[{', '{"name":"cut o', '{"correction":"{}","reading":"{","failure":null}']);
		connection.close();
	});

	it('sets entries aside whose JSON has another form, says so, and shows the rest', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		for (const id of ['g1', 'g2', 'g3']) await putGarments(home.store, garmentDetails({ id }), 'Added');
		const { id: photoId } = await addedPhoto(home.store, bytes, about);
		await home.store.photos.saveReading(photoId, aReading([aSwatch(OAT)]), { thumb: bytes, display: bytes });
		await home.close();
		const connection = new DatabaseSync(join(path, 'dyelot.sqlite'));
		connection.exec(`UPDATE entries SET body = json_set(body, '$.photoIds', 'none') WHERE id = 'g1'`);
		connection.exec(`UPDATE entries SET body = '{"id":"g2"}' WHERE id = 'g2'`);
		connection.exec(`UPDATE photos SET reading = '{"swatches":"red"}'`);
		connection.close();
		const again = await open(path);
		expect((await again.store.garments.list()).map(({ id }) => id)).toEqual(['g3']);
		expect(again.findings).toHaveLength(2);
		expect(spoken(again.findings[0]!)).toMatch(
			/ 2 entries, such as garment "g1" \(“photos” is missing or written otherwise\)/,
		);
		// Each reader is told in a language of their own, whoever started the program.
		expect(inLanguage('de', () => spoken(again.findings[0]!))).toMatch(
			/ 2 Einträge .*Kleidungsstück „g1“ \(„Fotos“ fehlt oder ist anders geschrieben\)/,
		);
		expect((await again.store.photos.get(photoId))?.status).toBe('waiting');
		await again.close();
		const quiet = await open(path);
		expect(quiet.findings).toEqual([]);
		await quiet.close();
	});
});
