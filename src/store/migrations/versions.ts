import type { Kysely, Migration } from 'kysely';
import { fieldsOf } from '../entry-state.ts';
import type { EntryRow, Tables } from '../schema.ts';
import { SHOWING_KINDS, shownPhotoIds } from '../shown-photos.ts';
import { textType } from './column-types.ts';

/** The tables as they were named then. */
type Then = Omit<Tables, 'shown_photos'> & {
	things: EntryRow;
	shown_photos: { photo_id: string; kind: string; thing_id: string };
};

/** Version 4: each thing has a version, each answered request is known by its key for a day, and things are found by the photos that they show. */
export const versions: Migration = {
	async up(db: Kysely<Tables>) {
		const text = textType(db);
		await db.schema
			.alterTable('things')
			.addColumn('version', 'integer', (column) => column.notNull().defaultTo(0))
			.execute();
		await db.schema
			.alterTable('things')
			.addColumn('field_versions', text, (column) => column.notNull().defaultTo('{}'))
			.execute();
		await db.schema.createIndex('things_by_version').on('things').column('version').execute();
		await db.schema
			.createTable('revisions')
			.addColumn('id', 'integer', (column) => column.primaryKey())
			.addColumn('newest', 'integer', (column) => column.notNull())
			.execute();
		await db.insertInto('revisions').values({ id: 1, newest: 0 }).execute();
		await db.schema
			.createTable('answers')
			.addColumn('key', text, (column) => column.primaryKey())
			.addColumn('request', text, (column) => column.notNull())
			.addColumn('answer', text, (column) => column.notNull())
			.addColumn('at', text, (column) => column.notNull())
			.execute();
		await db.schema.createIndex('answers_by_age').on('answers').column('at').execute();
		await db.schema
			.createTable('shown_photos')
			.addColumn('photo_id', text, (column) => column.notNull())
			.addColumn('kind', text, (column) => column.notNull())
			.addColumn('thing_id', text, (column) => column.notNull())
			.addPrimaryKeyConstraint('shown_photos_key', ['photo_id', 'kind', 'thing_id'])
			.execute();
		await db.schema.createIndex('shown_photos_by_thing').on('shown_photos').columns(['kind', 'thing_id']).execute();
		await findEverything(db as unknown as Kysely<Then>);
		await db.schema.alterTable('photos').addColumn('taken_at', text).execute();
		await db.schema.alterTable('photos').addColumn('light_group', text).execute();
		await db.schema.createIndex('photos_by_time').on('photos').column('taken_at').execute();
		await db.schema.createIndex('photos_by_light').on('photos').column('light_group').execute();
		await db.schema.createIndex('photos_by_status').on('photos').columns(['status', 'added_at', 'id']).execute();
		await findPhotos(db);
	},
};

/** Fills what things are found by; a body that cannot be read is left to the check at start. */
async function findEverything(db: Kysely<Then>): Promise<void> {
	const things = await db
		.selectFrom('things')
		.select(['kind', 'id', 'body'])
		.where('kind', 'in', SHOWING_KINDS)
		.execute();
	for (const { kind, id, body } of things) {
		const fields = readableFields(body);
		for (const photo_id of shownPhotoIds(fields))
			await db.insertInto('shown_photos').values({ photo_id, kind, thing_id: id }).execute();
	}
}

async function findPhotos(db: Kysely<Tables>): Promise<void> {
	const photos = await db.selectFrom('photos').select(['id', 'correction', 'reading']).execute();
	for (const { id, correction, reading } of photos) {
		const { lightGroup } = readableFields(correction);
		const { takenAt } = readableFields(reading ?? '{}');
		const text = (value: unknown) => (typeof value === 'string' ? value : null);
		await db
			.updateTable('photos')
			.set({ taken_at: text(takenAt), light_group: text(lightGroup) })
			.where('id', '=', id)
			.execute();
	}
}

function readableFields(body: string): Readonly<Record<string, unknown>> {
	try {
		return fieldsOf(body);
	} catch {
		return {};
	}
}
