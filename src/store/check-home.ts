import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { join } from 'node:path';
import type { Kysely } from 'kysely';
import type { Tables } from './schema.ts';

async function filesBelow(folder: string): Promise<string[]> {
	try {
		const entries = await readdir(folder, { recursive: true, withFileTypes: true });
		return entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
		throw error;
	}
}

const nameOf = (path: string) => path.slice(path.lastIndexOf('/') + 1).replace(/^.*\\/, '');

/**
 * Compares photo files with their rows and repairs what it can without deleting anything a user gave us: half-written temporary files go;
 * originals that no row names are moved to `found/`; photos whose file is missing are marked, and read photos whose derived
 * pictures are gone are queued again. One sentence for each finding.
 */
export async function checkHome(homePath: string, db: Kysely<Tables>): Promise<string[]> {
	const findings: string[] = [];
	const files = await filesBelow(join(homePath, 'photos'));
	const derived = await filesBelow(join(homePath, 'derived'));
	for (const part of [...files, ...derived].filter((path) => path.endsWith('.part'))) await rm(part, { force: true });

	const rows = await db.selectFrom('photos').select(['id', 'original_name', 'status']).execute();
	const known = new Set(rows.map(({ id }) => id));
	const originals = files.filter((path) => !path.endsWith('.part'));
	const orphans = originals.filter((path) => !known.has(nameOf(path)));
	if (orphans.length > 0) {
		await mkdir(join(homePath, 'found'), { recursive: true });
		for (const orphan of orphans) await rename(orphan, join(homePath, 'found', nameOf(orphan)));
		findings.push(
			`${orphans.length} photo files belonged to no photo (a stop in the middle of adding them): they are kept in the folder "found".`,
		);
	}

	const onDisk = new Set(originals.map(nameOf));
	const missing = rows.filter(({ id, status }) => !onDisk.has(id) && status !== 'failed');
	for (const { id } of missing) {
		const message =
			'Expected the original of this photo on disk; its file is missing. What was read of it is kept. Restore it from a backup, or add the photo again.';
		await db
			.updateTable('photos')
			.set({ failure: JSON.stringify({ reason: 'missing', message }), status: 'failed' })
			.where('id', '=', id)
			.execute();
	}
	if (missing.length > 0)
		findings.push(
			`${missing.length} photos have lost their file, for example "${missing[0]!.original_name}"; what was read of them is kept.`,
		);

	const shown = new Set(derived.map(nameOf));
	const unshown = rows.filter(
		({ id, status }) => status === 'read' && onDisk.has(id) && !shown.has(`${id}.thumb.webp`),
	);
	for (const { id } of unshown)
		await db.updateTable('photos').set({ status: 'waiting' }).where('id', '=', id).execute();
	if (unshown.length > 0) findings.push(`${unshown.length} photos had lost their small pictures: they are read again.`);
	return findings;
}
