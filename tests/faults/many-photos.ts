import { createHash } from 'node:crypto';
import { createWriteStream } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { writeBackup } from '../../src/store/backup.ts';
import { openHome } from '../../src/store/open-home.ts';
import { restoreBackup } from '../../src/store/restore.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { photoFilesOf, rowsOf } from '../support/home-contents.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';

const open = (path: string) => openHome(path, { now: () => new Date('2026-03-01T08:00:00Z') });

async function storedRows(homePath: string): Promise<unknown> {
	const home = await open(homePath);
	const rows = rowsOf(home);
	await home.close();
	return rows;
}

/** A home of so many small photos with their readings and garments, backed up and restored elsewhere. */
export async function manyPhotos(photos: number): Promise<Figures> {
	const from = join(temporaryFolder(), 'home');
	const home = await open(from);
	for (let index = 0; index < photos; index++) {
		// Small files of every length, the same on every run: their bytes are not read as pictures here.
		const bytes = createHash('shake256', { outputLength: 600 + (index % 3000) })
			.update(`photo ${index}`)
			.digest();
		const about = { originalName: `${index}.jpg`, mediaType: 'image/jpeg', addedAt: '2026-03-01T08:00:00Z' };
		const { id } = await addedPhoto(home.store, bytes, about);
		if (index % 4 === 0) {
			await home.store.photos.saveReading(id, { ...aReading([aSwatch(OAT)]), index } as never, {
				thumb: bytes.subarray(0, 200),
				display: bytes.subarray(0, 400),
			});
			await putGarments(home.store, garmentDetails({ id: `g${index}`, photoIds: [id] }), `Added ${index}`);
		}
	}
	const archive = join(temporaryFolder(), 'home.tar');
	const changed = await writeBackup(from, createWriteStream(archive));
	await home.close();
	const to = join(temporaryFolder(), 'home');
	await restoreBackup(archive, to, () => new Date());
	const [before, after] = [await photoFilesOf(from), await photoFilesOf(to)];
	const differing = [...before].filter(([path, digest]) => after.get(path) !== digest).map(([path]) => path);
	return {
		figures: [
			atLeast('photos in the home', [...before.keys()].filter((path) => path.startsWith('/photos')).length, photos),
			noneOf('photo files that the restored home lacks or holds otherwise', differing),
			noneOf(
				'files that only the restored home has',
				[...after.keys()].filter((path) => !before.has(path)),
			),
			noneOf(
				'tables that differ',
				isDeepStrictEqual(await storedRows(from), await storedRows(to)) ? [] : ['rows differ'],
			),
			noneOf('originals reported as changed', changed),
		],
	};
}
