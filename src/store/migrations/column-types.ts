import { type Kysely, PostgresAdapter, type RawBuilder, sql } from 'kysely';
import type { Tables } from '../schema.ts';

/** Whether the tables are those of many homes. */
export const isPostgres = (db: Kysely<Tables>): boolean => db.getExecutor().adapter instanceof PostgresAdapter;

/** Text that both databases order alike, by code point: PostgreSQL would otherwise sort by the language of its host. */
export const textType = (db: Kysely<Tables>): 'text' | RawBuilder<unknown> =>
	isPostgres(db) ? sql`text collate "C"` : 'text';

/** Type of a number that the database counts up by itself. SQLite needs its own word beside it. */
export const countedType = (db: Kysely<Tables>): 'integer' | 'serial' => (isPostgres(db) ? 'serial' : 'integer');
