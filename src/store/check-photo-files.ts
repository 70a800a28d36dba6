import { readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, join } from 'node:path';
import type { Kysely } from 'kysely';
import { keptWords } from '../language/kept-sentence.ts';
import { PART_ENDING } from './durable-write.ts';
import { filesBelow } from './files-below.ts';
import { INCOMING_FOLDER } from './incoming-file.ts';
import { derivedKey, outlineOf, type PictureName } from './photo-files.ts';
import { makePrivateFolder } from './private-files.ts';
import type { PhotoRow, Tables } from './schema.ts';
import { unusedOutlines } from './unused-outlines.ts';

/** Folder of a home for photo files that no row names. */
export const FOUND_FOLDER = 'found';

/** Beginning of the folder in which a backup prepares its snapshot. */
export const BACKUP_WORK = '.backup-';

/** Drops what a stop in the middle of writing left: halves of files and snapshots that nobody was told of. */
async function sweep(homePath: string, files: readonly string[]): Promise<void> {
	for (const path of files) if (path.endsWith(PART_ENDING)) await rm(path, { force: true });
	for (const name of await readdir(homePath))
		if (name.startsWith(BACKUP_WORK) || name === INCOMING_FOLDER)
			await rm(join(homePath, name), { recursive: true, force: true });
}

/** Drops outlines drawn by hand that nothing points at any more. */
async function sweepOutlines(db: Kysely<Tables>, derived: readonly string[]): Promise<void> {
	const outlines = derived.flatMap((path) => {
		const outline = outlineOf(basename(path));
		return outline ? [{ ...outline, path }] : [];
	});
	for (const { path } of await unusedOutlines(db, outlines)) await rm(path, { force: true });
}

/** Moves originals that no row names to `found`. */
async function moveOrphans(homePath: string, orphans: readonly string[]): Promise<void> {
	if (orphans.length > 0) await makePrivateFolder(join(homePath, FOUND_FOLDER));
	for (const orphan of orphans) await rename(orphan, join(homePath, FOUND_FOLDER, basename(orphan)));
}

async function sizesOf(files: readonly string[]): Promise<Map<string, number>> {
	return new Map(await Promise.all(files.map(async (path) => [basename(path), (await stat(path)).size] as const)));
}

type Row = Pick<PhotoRow, 'id' | 'original_name' | 'size_bytes' | 'status' | 'failure' | 'mask'>;
type Amiss = 'missing' | 'changed' | 'unmasked' | 'unshown' | 'back';

/** Pictures of a photo that the page cannot do without. */
const SHOWN = ['thumb', 'display'] as const satisfies readonly PictureName[];

/** What is amiss with one photo's files; `sizes` of originals by id, `pictures` = names of derived files. null = nothing. */
function amissWith(row: Row, sizes: ReadonlyMap<string, number>, pictures: ReadonlySet<string>): Amiss | null {
	const size = sizes.get(row.id);
	if (size === undefined) return 'missing';
	if (size !== row.size_bytes) return 'changed';
	if (row.mask && !pictures.has(basename(derivedKey(row.id, row.mask as PictureName)))) return 'unmasked';
	if (row.failure !== null) {
		const { reason } = JSON.parse(row.failure) as { reason: string };
		return reason === 'missing' || reason === 'changed' ? 'back' : null;
	}
	const isShown = SHOWN.every((name) => pictures.has(basename(derivedKey(row.id, name))));
	return row.status === 'read' && !isShown ? 'unshown' : null;
}

const AGAIN = { status: 'waiting', failure: null } as const;
const marked = (reason: 'missing' | 'changed') => ({
	status: 'failed' as const,
	failure: JSON.stringify({ reason, message: keptWords(`lostPhotos.${reason}`) }),
});

/** How a row is put right, for each fault. */
const REPAIRS: Readonly<Record<Amiss, () => Partial<PhotoRow>>> = {
	missing: () => marked('missing'),
	changed: () => marked('changed'),
	unmasked: () => ({ ...AGAIN, mask: null }),
	unshown: () => AGAIN,
	back: () => AGAIN,
};

/**
 * Compares photo files with their rows and repairs what it can without deleting anything a user gave us: half-written temporary files go;
 * originals that no row names are moved to `found`; photos whose file is missing or of another length are marked, and freed again once it is
 * back; photos whose small pictures or mask are gone are queued again. One sentence for each finding.
 */
export async function checkPhotoFiles(homePath: string, db: Kysely<Tables>): Promise<string[]> {
	const files = await filesBelow(join(homePath, 'photos'));
	const derived = await filesBelow(join(homePath, 'derived'));
	await sweep(homePath, [...files, ...derived]);

	const rows: Row[] = await db
		.selectFrom('photos')
		.select(['id', 'original_name', 'size_bytes', 'status', 'failure', 'mask'])
		.execute();
	const photoIds = new Set(rows.map(({ id }) => id));
	const originals = files.filter((path) => !path.endsWith(PART_ENDING));
	const orphans = originals.filter((path) => !photoIds.has(basename(path)));
	const sizes = await sizesOf(originals.filter((path) => photoIds.has(basename(path))));
	const pictures = new Set(derived.map((path) => basename(path)));
	await sweepOutlines(db, derived);
	await moveOrphans(homePath, orphans);

	const found = new Map<Amiss, string[]>();
	await db.transaction().execute(async (trx) => {
		for (const row of rows) {
			const amiss = amissWith(row, sizes, pictures);
			if (!amiss) continue;
			found.set(amiss, [...(found.get(amiss) ?? []), row.original_name]);
			await trx.updateTable('photos').set(REPAIRS[amiss]()).where('id', '=', row.id).execute();
		}
	});
	// Nothing to say where a photo is well again.
	const findings = [...found].flatMap(([amiss, names]) =>
		amiss === 'back' ? [] : [keptWords(`photoChecks.${amiss}`, { count: names.length, name: names[0]! })],
	);
	if (orphans.length === 0) return findings;
	return [keptWords('photoChecks.orphans', { count: orphans.length, folder: FOUND_FOLDER }), ...findings];
}
