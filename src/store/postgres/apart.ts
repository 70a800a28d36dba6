import { ColumnNode, type Kysely, type KyselyPlugin, type OnConflictNode, OperationNodeTransformer, sql } from 'kysely';
import type { Tables } from '../schema.ts';

/** The schema that holds all tables of this program. */
export const SCHEMA = 'dyelot';

/** The setting of a connection that says whose rows it may see. Unset, it sees none. */
export const HOME_SETTING = 'dyelot.home';

/** The key of each table within one home. */
const KEYS: Readonly<Record<keyof Tables, readonly string[]>> = {
	entries: ['kind', 'id'],
	decisions: ['id'],
	photos: ['id'],
	set_aside: [],
	pairings: ['id'],
	revisions: ['id'],
	answers: ['key'],
	shown_photos: ['photo_id', 'kind', 'entry_id'],
};

/** All tables of a home. */
export const HOME_TABLES = Object.keys(KEYS) as readonly (keyof Tables)[];

/** Columns by which rows of a home are looked for, beside its keys. */
const LOOKED_FOR: readonly (readonly [keyof Tables, readonly string[]])[] = [
	['entries', ['version']],
	['decisions', ['undone', 'id']],
	['answers', ['at']],
	['shown_photos', ['kind', 'entry_id']],
	['photos', ['taken_at']],
	['photos', ['light_group']],
	['photos', ['status', 'added_at', 'id']],
];

/**
 * Makes tables that were made for one home into tables for all of them: each row belongs to a home, is found by it first, and is seen, added
 * and changed only by a connection of that home. The database itself keeps them apart, so that no query can forget to.
 */
export async function keepHomesApart(db: Kysely<Tables>): Promise<void> {
	const { rows } = await sql<{ table: keyof Tables }>`select table_name as "table" from information_schema.columns
		where table_schema = ${SCHEMA} and column_name = 'home'`.execute(db);
	const done = new Set(rows.map(({ table }) => table));
	for (const name of HOME_TABLES) {
		if (done.has(name)) continue;
		const table = sql.table(`${SCHEMA}.${name}`);
		// The row that migrations put there for their one home.
		await sql`delete from ${table}`.execute(db);
		await sql`alter table ${table} add column home text collate "C" not null`.execute(db);
		await sql`alter table ${table} alter column home set default current_setting(${sql.lit(HOME_SETTING)})`.execute(db);
		const keys = await sql<{ key: string }>`select conname as key from pg_constraint
			where conrelid = ${`${SCHEMA}.${name}`}::regclass and contype in ('p', 'u')`.execute(db);
		for (const { key } of keys.rows) await sql`alter table ${table} drop constraint ${sql.ref(key)}`.execute(db);
		const key = KEYS[name];
		if (key.length > 0)
			await sql`alter table ${table} add primary key (home, ${sql.join(key.map((column) => sql.ref(column)))})`.execute(
				db,
			);
		const indexes = await sql<{ index: string }>`select indexrelid::regclass::text as index from pg_index
			where indrelid = ${`${SCHEMA}.${name}`}::regclass and not indisprimary`.execute(db);
		for (const { index } of indexes.rows) await sql`drop index ${sql.raw(index)}`.execute(db);
		if (name === 'pairings') await sql`alter table ${table} add unique (home, token_hash)`.execute(db);
		await sql`alter table ${table} enable row level security`.execute(db);
		await sql`alter table ${table} force row level security`.execute(db);
		await sql`create policy own_home on ${table}
			using (home = current_setting(${sql.lit(HOME_SETTING)}, true))`.execute(db);
		for (const [of, columns] of LOOKED_FOR)
			if (of === name)
				await sql`create index on ${table} (home, ${sql.join(columns.map((column) => sql.ref(column)))})`.execute(db);
	}
}

/** A key within one home is a key of all homes together with the home. */
class KeysOfAllHomes extends OperationNodeTransformer {
	protected override transformOnConflict(node: OnConflictNode): OnConflictNode {
		const inner = super.transformOnConflict(node);
		return inner.columns ? { ...inner, columns: [ColumnNode.create('home'), ...inner.columns] } : inner;
	}
}

const keys = new KeysOfAllHomes();

/** Queries made for the tables of one home, over those of all. */
export const withinAllHomes: KyselyPlugin = {
	transformQuery: ({ node }) => keys.transformNode(node),
	transformResult: async ({ result }) => result,
};
