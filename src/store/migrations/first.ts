import type { Kysely, Migration } from 'kysely';
import type { Tables } from '../schema.ts';
import { countedType, textType } from './column-types.ts';

/** Version 1: things, decisions, photos. */
export const first: Migration = {
	async up(db: Kysely<Tables>) {
		const text = textType(db);
		const counted = countedType(db);
		await db.schema
			.createTable('things')
			.addColumn('kind', text, (column) => column.notNull())
			.addColumn('id', text, (column) => column.notNull())
			.addColumn('body', text, (column) => column.notNull())
			.addColumn('binned_at', text)
			.addPrimaryKeyConstraint('things_key', ['kind', 'id'])
			.execute();
		await db.schema
			.createTable('decisions')
			.addColumn('id', counted, (column) =>
				counted === 'serial' ? column.primaryKey() : column.primaryKey().autoIncrement(),
			)
			.addColumn('at', text, (column) => column.notNull())
			.addColumn('sentence', text, (column) => column.notNull())
			.addColumn('changes', text, (column) => column.notNull())
			.addColumn('undone', 'integer', (column) => column.notNull().defaultTo(0))
			.execute();
		await db.schema
			.createTable('photos')
			.addColumn('id', text, (column) => column.primaryKey())
			.addColumn('original_name', text, (column) => column.notNull())
			.addColumn('media_type', text, (column) => column.notNull())
			.addColumn('size_bytes', 'integer', (column) => column.notNull())
			.addColumn('added_at', text, (column) => column.notNull())
			.addColumn('status', text, (column) => column.notNull())
			.addColumn('failure', text)
			.addColumn('correction', text, (column) => column.notNull())
			.addColumn('version', 'integer', (column) => column.notNull())
			.addColumn('reading', text)
			.execute();
	},
};
