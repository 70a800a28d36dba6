import { type Kysely, type Migration, sql } from 'kysely';
import type { Tables } from '../schema.ts';
import { isPostgres } from './column-types.ts';

/** Version 5: what a person decides about is called an entry, in its table and wherever else it is named. */
export const entries: Migration = {
	async up(db: Kysely<Tables>) {
		// Not by the query builder: it puts the schema before the new name too, which PostgreSQL refuses.
		await sql`alter table things rename to entries`.execute(db);
		await db.schema.alterTable('shown_photos').renameColumn('thing_id', 'entry_id').execute();
		// Rows of all homes are changed, and the policy shows each home its own alone.
		if (isPostgres(db)) await sql`alter table set_aside no force row level security`.execute(db);
		await sql`update set_aside set source = replace(source, 'things/', 'entries/')`.execute(db);
		if (isPostgres(db)) await sql`alter table set_aside force row level security`.execute(db);
		else await renameIndexes(db);
	},
};

/** Where many homes are kept, indexes have names that the database gave them. */
async function renameIndexes(db: Kysely<Tables>): Promise<void> {
	await db.schema.dropIndex('things_by_version').execute();
	await db.schema.createIndex('entries_by_version').on('entries').column('version').execute();
	await db.schema.dropIndex('shown_photos_by_thing').execute();
	await db.schema.createIndex('shown_photos_by_entry').on('shown_photos').columns(['kind', 'entry_id']).execute();
}
