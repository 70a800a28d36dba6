import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { filesBelow } from '../../src/store/files-below.ts';
import type { OpenHome } from '../../src/store/open-home.ts';

/** SHA-256 of every photo file of a home by its place in it, in order of the places. */
export async function photoFilesOf(homePath: string): Promise<Map<string, string>> {
	const files = [
		...(await filesBelow(join(homePath, 'photos'))),
		...(await filesBelow(join(homePath, 'derived'))),
	].sort();
	return new Map(
		files.map((path) => [path.slice(homePath.length), createHash('sha256').update(readFileSync(path)).digest('hex')]),
	);
}

/** Every row of every table of a home's database, as it is stored. */
export function rowsOf({ database: { connection } }: OpenHome): unknown {
	const tables = connection.prepare("SELECT name FROM sqlite_master WHERE type = 'table' ORDER BY name").all() as {
		name: string;
	}[];
	return tables.map(({ name }) => [name, connection.prepare(`SELECT * FROM "${name}" ORDER BY 1, 2`).all()]);
}
