import type { Kysely, Migration } from 'kysely';
import type { Tables } from '../schema.ts';
import { textType } from './column-types.ts';

/** Devices that were paired, so that they are known again after a restart. */
export const pairings: Migration = {
	async up(db: Kysely<Tables>) {
		const text = textType(db);
		await db.schema
			.createTable('pairings')
			.addColumn('id', text, (column) => column.primaryKey())
			.addColumn('token_hash', text, (column) => column.notNull().unique())
			.addColumn('device', text, (column) => column.notNull())
			.addColumn('paired_at', text, (column) => column.notNull())
			.addColumn('seen_at', text, (column) => column.notNull())
			.execute();
	},
};
