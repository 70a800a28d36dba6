import { type Kysely, type Migration, sql } from 'kysely';
import type { Tables } from '../schema.ts';
import { textType } from './column-types.ts';

/** Version 2: masks under a name of their own, a place for rows that cannot be read, and quick finding of what can be done again. */
export const second: Migration = {
	async up(db: Kysely<Tables>) {
		const text = textType(db);
		await db.schema.alterTable('photos').addColumn('mask', text).execute();
		// Until now a mask had one name for ever.
		await db.updateTable('photos').set({ mask: 'mask' }).where(sql<boolean>`correction like '%"mask":true%'`).execute();
		await db.schema
			.createTable('set_aside')
			.addColumn('source', text, (column) => column.notNull())
			.addColumn('id', text, (column) => column.notNull())
			.addColumn('body', text, (column) => column.notNull())
			.addColumn('at', text, (column) => column.notNull())
			.execute();
		await db.schema.createIndex('decisions_undone').on('decisions').columns(['undone', 'id']).execute();
	},
};
