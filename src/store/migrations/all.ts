import type { Kysely, Migration } from 'kysely';
import { Migrator } from 'kysely';
import { say } from '../../language/speak.ts';
import type { Tables } from '../schema.ts';
import { entries } from './entries.ts';
import { first } from './first.ts';
import { pairings } from './pairings.ts';
import { second } from './second.ts';
import { versions } from './versions.ts';

/** Every schema version in order; a new one is added at the end and never changed again. */
export const MIGRATIONS: Readonly<Record<string, Migration>> = {
	'0001-first': first,
	'0002-second': second,
	'0003-pairings': pairings,
	'0004-versions': versions,
	'0005-entries': entries,
};

/** The home was made by a later program than this one. */
export class NewerHomeError extends Error {}

const refusal = () => new NewerHomeError(say('home.later'));

/** The refusal of a home where the given migrations were applied, or null where this program knows them all. */
export const newerHome = (applied: readonly string[]): NewerHomeError | null =>
	applied.every((name) => Object.hasOwn(MIGRATIONS, name)) ? null : refusal();

/** Whether the home that has these migrations lacks some of this program's; a database that has none yet is a new one. */
export const isOlderHome = (applied: readonly string[]): boolean =>
	applied.length > 0 && Object.keys(MIGRATIONS).some((name) => !applied.includes(name));

const errorOf = (error: unknown): Error => (error instanceof Error ? error : new Error(String(error)));

/**
 * Brings the database to the newest version, all or nothing. `schema` is the PostgreSQL schema that holds the home's tables. Throws
 * `NewerHomeError` where the home is newer than this program.
 */
export async function migrateToNewest(
	db: Kysely<Tables>,
	{ schema, migrations = MIGRATIONS }: { readonly schema?: string; readonly migrations?: typeof MIGRATIONS } = {},
): Promise<void> {
	const migrator = new Migrator({
		db,
		provider: { getMigrations: async () => ({ ...migrations }) },
		...(schema === undefined ? {} : { migrationTableSchema: schema }),
	});
	const { error } = await migrator.migrateToLatest();
	if (!error) return;
	throw /corrupted migrations/.test(errorOf(error).message) ? refusal() : errorOf(error);
}
