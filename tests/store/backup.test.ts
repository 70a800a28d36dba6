import { createReadStream, createWriteStream, existsSync, readdirSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { PassThrough } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import tar from 'tar-stream';
import { describe, expect, it } from 'vitest';
import { spoken } from '../../src/language/kept-sentence.ts';
import { BadArchiveError } from '../../src/store/archive.ts';
import { writeBackup } from '../../src/store/backup.ts';
import { openHome } from '../../src/store/open-home.ts';
import { restoreBackup } from '../../src/store/restore.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, corrected, putGarments, undone } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { photoFilesOf, rowsOf } from '../support/home-contents.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const at = '2026-03-01T08:00:00.000Z';
const NOW = () => new Date(at);
const open = (path: string) => openHome(path, { now: NOW });
const about = { originalName: 'coat.jpg', mediaType: 'image/jpeg', addedAt: at };
const photo = (text: string) => new TextEncoder().encode(text);

/** A home with garments, a corrected photo and something in `found`, still open. */
async function lived() {
	const path = temporaryFolder();
	const home = await open(path);
	await putGarments(home.store, garmentDetails({ id: 'g1', name: 'Oilskin 🧥' }), 'Added');
	await putGarments(home.store, garmentDetails({ id: 'g1', name: 'Oilskin' }), 'Named it anew');
	const { id } = await addedPhoto(home.store, photo('one'), about);
	await corrected(home.store, id, { mask: true }, photo('its mask'));
	await home.store.photos.saveReading(id, aReading([aSwatch(OAT)]), {
		thumb: photo('its thumbnail'),
		display: photo('its large copy'),
	});
	return { path, home, id };
}

async function archiveOf(path: string): Promise<string> {
	const archive = join(temporaryFolder(), 'home.tar');
	await writeBackup(path, createWriteStream(archive));
	return archive;
}

/** The archive with one of its entries changed, dropped or added. */
async function rewritten(
	archive: string,
	change: (name: string, content: Buffer) => { name: string; content: Buffer }[],
): Promise<string> {
	const pack = tar.pack();
	const to = join(temporaryFolder(), 'changed.tar');
	const written = pipeline(pack, createWriteStream(to));
	const extract = tar.extract();
	const reading = pipeline(createReadStream(archive), extract);
	for await (const entry of extract) {
		const chunks: Buffer[] = [];
		for await (const chunk of entry as AsyncIterable<Buffer>) chunks.push(chunk);
		for (const { name, content } of change(entry.header.name, Buffer.concat(chunks))) pack.entry({ name }, content);
	}
	await reading;
	pack.finalize();
	await written;
	return to;
}

describe('a backup', () => {
	it('taken while the program runs restores every row and every file, bit for bit', async () => {
		const { path, home } = await lived();
		const archive = await archiveOf(path);
		const target = join(temporaryFolder(), 'restored');
		expect(await restoreBackup(archive, target, NOW)).toEqual({ files: 5, findings: [] });
		const restored = await open(target);
		expect(restored.findings).toEqual([]);
		expect(rowsOf(restored)).toEqual(rowsOf(home));
		expect(await photoFilesOf(target)).toEqual(await photoFilesOf(path));
		expect((await undone(restored.store))?.sentence).toBe('Corrected a photo');
		expect((await undone(restored.store))?.sentence).toBe('Named it anew');
		await restored.close();
		await home.close();
	});

	it('says at restoring what has another form and is set aside, and the restored home then has nothing to say', async () => {
		const { path, home } = await lived();
		await putGarments(home.store, garmentDetails({ id: 'g2', name: 'Whole' }), 'Added');
		home.database.connection.exec(`UPDATE entries SET body = '{"id":"g1"}' WHERE id = 'g1'`);
		const target = join(temporaryFolder(), 'restored');
		const { findings } = await restoreBackup(await archiveOf(path), target, NOW);
		expect(findings.map(spoken)).toEqual([
			expect.stringMatching(/^This version of Dyelot cannot use 1 entry \(garment "g1": .* set aside/),
		]);
		const restored = await open(target);
		expect(restored.findings).toEqual([]);
		expect((await restored.store.garments.list()).map(({ name }) => name)).toEqual(['Whole']);
		await restored.close();
		await home.close();
	});

	it('holds one moment: what is added while it is written belongs to the next', async () => {
		const { path, home } = await lived();
		const stream = new PassThrough();
		const archive = join(temporaryFolder(), 'home.tar');
		const writing = Promise.all([writeBackup(path, stream), pipeline(stream, createWriteStream(archive))]);
		for (let index = 0; index < 30; index++) {
			await addedPhoto(home.store, photo(`later ${index}`), about);
			await putGarments(home.store, garmentDetails({ id: `later-${index}` }), 'Added later');
		}
		await writing;
		const target = join(temporaryFolder(), 'restored');
		await restoreBackup(archive, target, NOW);
		const restored = await open(target);
		expect(restored.findings).toEqual([]);
		for (const { id } of await restored.store.photos.list()) await restored.store.photos.original(id);
		await restored.close();
		await home.close();
		expect(readdirSync(path).filter((name) => name.startsWith('.backup'))).toEqual([]);
	});

	it('says which originals are no longer the bytes they were added as', async () => {
		const { path, home, id } = await lived();
		writeFileSync(join(path, 'photos', id.slice(0, 2), id), 'ONE');
		expect(await writeBackup(path, createWriteStream(join(temporaryFolder(), 'a.tar')))).toEqual([
			`photos/${id.slice(0, 2)}/${id}`,
		]);
		await home.close();
	});

	it('that cannot be written fails and leaves nothing behind in the home', async () => {
		const { path, home } = await lived();
		await expect(writeBackup(path, createWriteStream('/nowhere/at/all.tar'))).rejects.toThrow(/ENOENT/);
		expect(readdirSync(path).filter((name) => name.startsWith('.backup'))).toEqual([]);
		await home.close();
	});

	it('holds an entry that a tar program lists', async () => {
		const { path, home } = await lived();
		const names: string[] = [];
		await rewritten(await archiveOf(path), (name, content) => {
			names.push(name);
			return [{ name, content }];
		});
		expect([names[0], names[1], names.at(-1)]).toEqual(['dyelot-home.json', 'dyelot.sqlite', 'checksums.json']);
		await home.close();
	});
});

describe('a restore', () => {
	type Entry = { name: string; content: Buffer };
	const same = (name: string, content: Buffer): Entry[] => [{ name, content }];
	const bad: readonly [string, (archive: string) => Promise<string>, RegExp][] = [
		[
			'cut off',
			async (archive) => {
				truncateSync(archive, 30_000);
				return archive;
			},
			/whole archive|cut off/,
		],
		[
			'without its checksums',
			(archive) => rewritten(archive, (name, content) => (name === 'checksums.json' ? [] : same(name, content))),
			/cut off/,
		],
		[
			'with a changed photo',
			(archive) =>
				rewritten(archive, (name, content) => same(name, name.startsWith('photos/') ? Buffer.from('two') : content)),
			/it is changed/,
		],
		[
			'with a missing photo',
			(archive) => rewritten(archive, (name, content) => (name.startsWith('photos/') ? [] : same(name, content))),
			/it is missing/,
		],
		[
			'with a file that leads out of the home',
			(archive) =>
				rewritten(archive, (name, content) =>
					name === 'checksums.json' ? [...same('../outside', content), ...same(name, content)] : same(name, content),
				),
			/holds "..\/outside"/,
		],
		[
			'with a file that it does not list',
			(archive) =>
				rewritten(archive, (name, content) =>
					name === 'checksums.json'
						? [...same(`photos/aa/${'a'.repeat(64)}`, content), ...same(name, content)]
						: same(name, content),
				),
			/it holds 6/,
		],
		[
			'of a later form',
			(archive) =>
				rewritten(archive, (name, content) =>
					same(name, name === 'dyelot-home.json' ? Buffer.from('{"format":"dyelot-home","version":99}') : content),
				),
			/has form 99/,
		],
		[
			'of a later program',
			async () => {
				const { path, home } = await lived();
				home.database.connection.exec("INSERT INTO kysely_migration VALUES ('9999-later', '2030')");
				const archive = await archiveOf(path);
				await home.close();
				return archive;
			},
			/made by a later one/,
		],
		[
			'that is something else',
			async () => {
				const path = join(temporaryFolder(), 'letter.tar');
				writeFileSync(path, 'Dear archive,\n'.repeat(500));
				return path;
			},
			/whole archive|begins with something else/,
		],
		[
			'that is empty',
			async () => {
				const path = join(temporaryFolder(), 'empty.tar');
				writeFileSync(path, '');
				return path;
			},
			/cut off|begins with/,
		],
	];

	it.each(bad)('of an archive %s is refused and changes nothing', async (_what, spoil, message) => {
		const { path, home } = await lived();
		const archive = await spoil(await archiveOf(path));
		await home.close();
		const parent = temporaryFolder();
		const failed = restoreBackup(archive, join(parent, 'restored'), NOW);
		await expect(failed).rejects.toThrow(BadArchiveError);
		await expect(failed).rejects.toThrow(message);
		expect(readdirSync(parent)).toEqual([]);
	});

	it('into a home that holds something is refused', async () => {
		const { path, home } = await lived();
		const archive = await archiveOf(path);
		await expect(restoreBackup(archive, path, NOW)).rejects.toThrow(/empty folder/);
		expect(await home.store.garments.list()).toHaveLength(1);
		await home.close();
	});

	it('of an archive that is not there says so', async () => {
		await expect(restoreBackup('/nowhere.tar', join(temporaryFolder(), 'x'), NOW)).rejects.toThrow(
			/^Expected an archive made by .+ there is no such file or folder\.$/,
		);
		expect(existsSync('/nowhere.tar')).toBe(false);
	});
});
