import { closeSync, cpSync, openSync, readFileSync, statSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { DATABASE_FILE, DamagedHomeError, openHome } from '../../src/store/open-home.ts';
import type { Store } from '../../src/store/store.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { aReading, aSwatch, OAT } from '../support/build-wardrobe.ts';
import { addedPhoto, putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';

const PAGE_BYTES = 4096;
/** Part of all damages that may stay unnoticed when pages are exchanged whole. */
const ASTRAY_UNNOTICED = 0.01;

const open = (path: string) => openHome(path, { now: () => new Date('2026-03-01T08:00:00Z') });

/** How a page comes back wrong: never written, noise, or the content of another page (a write that went astray). */
const DAMAGES = ['zeros', 'noise', 'another page'] as const;

async function lifeIn(homePath: string): Promise<void> {
	const home = await open(homePath);
	for (let i = 0; i < 120; i++)
		await putGarments(
			home.store,
			garmentDetails({ id: `g${i}`, name: `Piece ${i}`, notes: 'n'.repeat(i * 20) }),
			`Added ${i}`,
		);
	for (let i = 0; i < 10; i++) {
		const at = `2026-03-01T08:00:0${i}.000Z`;
		const about = { originalName: `${i}.jpg`, mediaType: 'image/jpeg', addedAt: at };
		const { id } = await addedPhoto(home.store, new TextEncoder().encode(`photo ${i}`), about);
		await home.store.photos.saveReading(id, { ...aReading([aSwatch(OAT)]), text: 'r'.repeat(6000), i } as never, {
			thumb: new Uint8Array([i]),
			display: new Uint8Array([i]),
		});
	}
	await home.close();
}

/** All that the store tells of a home. */
const toldBy = async (store: Store) => ({
	garments: await store.garments.list(),
	photos: await store.photos.list(),
	decisions: await store.decisions(1000),
	bin: await store.bin(),
});

/** Damages one page of a copy of the database at a time and opens it. */
export async function damagedPages(most: number): Promise<Figures> {
	const whole = temporaryFolder();
	await lifeIn(whole);
	const home = await open(whole);
	const truth = await toldBy(home.store);
	await home.close();
	const bytes = readFileSync(join(whole, DATABASE_FILE));
	const pages = statSync(join(whole, DATABASE_FILE)).size / PAGE_BYTES;
	const random = seededRandom('damaged pages');
	const cases = Array.from({ length: pages }, (_, page) => DAMAGES.map((damage) => ({ page, damage }))).flat();
	const chosen = cases.filter(
		(_, index) => Math.floor((index * most) / cases.length) !== Math.floor(((index - 1) * most) / cases.length),
	);
	const [unclear, unsaid, astray, deleted]: string[][] = [[], [], [], []];
	let refused = 0;
	let mended = 0;
	for (const { page, damage } of chosen) {
		const where = `page ${page + 1} of ${pages}, ${damage}`;
		const path = temporaryFolder();
		cpSync(whole, path, { recursive: true });
		const other = Math.floor(random() * pages) * PAGE_BYTES;
		const content = {
			zeros: () => Buffer.alloc(PAGE_BYTES),
			noise: () => Buffer.from(Array.from({ length: PAGE_BYTES }, () => Math.floor(random() * 256))),
			'another page': () => bytes.subarray(other, other + PAGE_BYTES),
		}[damage]();
		if (content.equals(bytes.subarray(page * PAGE_BYTES, (page + 1) * PAGE_BYTES))) continue;
		const file = openSync(join(path, DATABASE_FILE), 'r+');
		writeSync(file, content, 0, PAGE_BYTES, page * PAGE_BYTES);
		closeSync(file);
		const damaged = readFileSync(join(path, DATABASE_FILE));
		try {
			const opened = await open(path);
			const told = await toldBy(opened.store);
			const findings = opened.findings.length;
			await opened.close();
			if (findings > 0) mended++;
			else if (!isDeepStrictEqual(told, truth)) (damage === 'another page' ? astray! : unsaid!).push(where);
		} catch (error) {
			if (error instanceof DamagedHomeError) refused++;
			else unclear!.push(`${where}: ${(error as Error).message}`);
			if (!readFileSync(join(path, DATABASE_FILE)).equals(damaged)) deleted!.push(where);
		}
	}
	return {
		figures: [
			noneOf(
				`of ${chosen.length} databases with a damaged page, opened without a word and with something changed`,
				unsaid!,
			),
			// A whole page in the place of another can fit its neighbours by chance; SQLite's pages carry no checksum that would tell.
			{
				what: 'the same, where a whole page came to stand in the place of another',
				found: String(astray!.length),
				asked: `${Math.floor(chosen.length * ASTRAY_UNNOTICED)} or fewer`,
				met: astray!.length <= chosen.length * ASTRAY_UNNOTICED,
			},
			noneOf('failed without a sentence for the user', unclear!),
			noneOf('refused, but changed by the attempt', deleted!),
			atLeast('refused with a sentence, or mended and said so', refused + mended, 1),
		],
	};
}
