import type { DatabaseSync } from '@photostructure/sqlite';
import { say } from '../language/speak.ts';
import { BadArchiveError } from './archive.ts';
import { MIGRATIONS, migrateToNewest } from './migrations/all.ts';
import { isPhotoId, isPictureName } from './photo-files.ts';
import { closeSqlite, openSqlite } from './sqlite/sqlite-database.ts';

type Connection = InstanceType<typeof DatabaseSync>;
type Row = Readonly<Record<string, unknown>>;

/** The rows of 10,000 photos and their decisions take a third of it; they pass through the memory of a server. */
const MOST_DATABASE_BYTES = 256 * 1024 * 1024;

/** What makes up a database, part by part, as it was written. */
function formOf(connection: Connection): readonly string[] {
	const parts = connection.prepare('SELECT sql FROM sqlite_master WHERE sql IS NOT NULL ORDER BY name').all();
	return (parts as { sql: string }[]).map(({ sql }) => sql.replaceAll(/["\s]+/g, ' ').toLowerCase());
}

/** The form that this program itself gives a database with these migrations. */
async function ownForm(names: readonly string[]): Promise<readonly string[]> {
	const { db, connection } = openSqlite(':memory:');
	try {
		await migrateToNewest(db, { migrations: Object.fromEntries(names.map((name) => [name, MIGRATIONS[name]!])) });
		return formOf(connection);
	} finally {
		closeSqlite(connection);
	}
}

/**
 * Refuses a database of somebody else's that is not, to the letter, of a form that this program gave it once, or names photos that could be paths:
 * a view, a trigger or a computed column would be work of theirs that never ends, done on this machine. Nothing else of it may have been used
 * before. Throws `BadArchiveError`.
 */
export async function requireOwnForm(connection: Connection, sizeBytes: number, archive: string): Promise<void> {
	const refusal = (what: string) =>
		new BadArchiveError(say('archives.otherInside', { archive, what: what.slice(0, 100) }));
	if (sizeBytes > MOST_DATABASE_BYTES) throw refusal(`${sizeBytes} B`);
	const found = formOf(connection);
	const names = Object.keys(MIGRATIONS);
	let newest: readonly string[] = [];
	for (let count = 1; count <= names.length; count++) {
		newest = await ownForm(names.slice(0, count));
		if (newest.join(';') !== found.join(';')) continue;
		const rows = connection.prepare('SELECT name FROM kysely_migration ORDER BY name').all() as { name: string }[];
		if (rows.map(({ name }) => name).join(';') !== names.slice(0, count).join(';')) throw refusal('kysely_migration');
		for (const { id, mask } of connection.prepare('SELECT * FROM photos').iterate() as Iterable<Row>) {
			if (!isPhotoId(id)) throw refusal(String(id));
			if (typeof mask === 'string' && !isPictureName(mask)) throw refusal(mask);
		}
		return;
	}
	throw refusal(found.find((part) => !newest.includes(part)) ?? `${found.length} < ${newest.length}`);
}
