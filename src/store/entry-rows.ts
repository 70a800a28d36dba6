import {
	CORRECTION,
	type Connection,
	differingFields,
	type EntryKey,
	fieldsOf,
	NOTHING,
	type State,
	type Stored,
} from './entry-state.ts';
import { isShowing, noteShownPhotos, type ShownNow, shownPhotoIds } from './shown-photos.ts';

/** Entries in one statement: 500 rows of seven values stay far below what SQLite (32,766) and PostgreSQL (65,535) take. */
export const MOST_AT_ONCE = 500;

/** One entry as it was, and as it is to be. */
export type Setting = { readonly entry: EntryKey; readonly before: Stored; readonly after: State };

/** How an entry is told from all others. */
export const keyOf = ({ kind, id }: EntryKey): string => `${kind} ${id}`;

function byKind<T extends { readonly entry: EntryKey }>(all: readonly T[]): ReadonlyMap<string, T[]> {
	const kinds = new Map<string, T[]>();
	for (const one of all) {
		const others = kinds.get(one.entry.kind);
		if (others) others.push(one);
		else kinds.set(one.entry.kind, [one]);
	}
	return kinds;
}

/** The entries as they are now, by {@link keyOf}; at most {@link MOST_AT_ONCE}. */
export async function storedOfAll(db: Connection, entries: readonly EntryKey[]): Promise<ReadonlyMap<string, Stored>> {
	const found = new Map<string, Stored>();
	for (const [kind, ofKind] of byKind(entries.map((entry) => ({ entry })))) {
		const ids = ofKind.map(({ entry }) => entry.id);
		const rows = kind === CORRECTION ? await storedCorrections(db, ids) : await storedEntries(db, kind, ids);
		for (const [id, stored] of rows) found.set(keyOf({ kind, id }), stored);
	}
	return found;
}

/** The entry as it is now. */
export async function storedOf(db: Connection, entry: EntryKey): Promise<Stored> {
	return (await storedOfAll(db, [entry])).get(keyOf(entry)) ?? NOTHING;
}

async function storedEntries(db: Connection, kind: string, ids: readonly string[]): Promise<[string, Stored][]> {
	const rows = await db
		.selectFrom('entries')
		.select(['id', 'body', 'binned_at', 'version', 'field_versions'])
		.where('kind', '=', kind)
		.where('id', 'in', ids)
		.execute();
	return rows.map(({ id, body, binned_at, version, field_versions }) => {
		const fieldVersions = JSON.parse(field_versions) as Record<string, number>;
		return [id, { state: { body, binnedAt: binned_at }, version, fieldVersions }];
	});
}

async function storedCorrections(db: Connection, ids: readonly string[]): Promise<[string, Stored][]> {
	const rows = await db
		.selectFrom('photos')
		.select(['id', 'correction', 'mask', 'version'])
		.where('id', 'in', ids)
		.execute();
	return rows.map(({ id, correction, mask, version }) => {
		const body = JSON.stringify({ correction: JSON.parse(correction), mask });
		return [id, { state: { body, binnedAt: null }, version, fieldVersions: {} }];
	});
}

function fieldVersionsAfter({ state, fieldVersions }: Stored, body: string, version: number): Record<string, number> {
	if (state === null) return { '*': version };
	const changed = differingFields(state.body, body).map((name) => [name, version] as const);
	return { ...fieldVersions, ...Object.fromEntries(changed) };
}

/** Brings entries into their states, as part of the change that `version` numbers; at most {@link MOST_AT_ONCE}, each entry once. */
export async function setStates(db: Connection, settings: readonly Setting[], version: number): Promise<void> {
	for (const [kind, ofKind] of byKind(settings))
		if (kind === CORRECTION) for (const { entry, after } of ofKind) await setCorrection(db, entry.id, after);
		else await setEntries(db, kind, ofKind, version);
}

async function setEntries(db: Connection, kind: string, settings: readonly Setting[], version: number): Promise<void> {
	const gone = settings.filter(({ after }) => after === null).map(({ entry }) => entry.id);
	if (gone.length > 0) await db.deleteFrom('entries').where('kind', '=', kind).where('id', 'in', gone).execute();
	const rows = settings.flatMap(({ entry, before, after }) =>
		after === null
			? []
			: {
					kind,
					id: entry.id,
					body: after.body,
					binned_at: after.binnedAt,
					version,
					field_versions: JSON.stringify(fieldVersionsAfter(before, after.body, version)),
				},
	);
	if (rows.length > 0)
		await db
			.insertInto('entries')
			.values(rows)
			.onConflict((conflict) =>
				conflict.columns(['kind', 'id']).doUpdateSet(({ ref }) => ({
					body: ref('excluded.body'),
					binned_at: ref('excluded.binned_at'),
					version: ref('excluded.version'),
					field_versions: ref('excluded.field_versions'),
				})),
			)
			.execute();
	if (isShowing(kind)) await noteShownPhotos(db, kind, settings.flatMap(nowShown));
}

/** Drops an entry for good, with the note of what it showed; no decision, so that nothing brings it back. */
export async function dropEntry(db: Connection, { kind, id }: EntryKey): Promise<void> {
	await db.deleteFrom('entries').where('kind', '=', kind).where('id', '=', id).execute();
	await db.deleteFrom('shown_photos').where('kind', '=', kind).where('entry_id', '=', id).execute();
}

/** Nothing to look for in bodies that show no photo: of many entries reading each takes long. */
const SHOWS_NONE = '"photoIds":[]';

/** What an entry shows now, where its body changed. */
function nowShown({ entry, before, after }: Setting): ShownNow[] {
	if (before.state?.body === after?.body) return [];
	const photoIds = after === null || after.body.includes(SHOWS_NONE) ? [] : shownPhotoIds(fieldsOf(after.body));
	return [{ id: entry.id, photoIds, isNew: before.state === null }];
}

/** A changed correction makes the photo wait to be read again. */
async function setCorrection(db: Connection, id: string, after: State): Promise<void> {
	if (after === null) return;
	const { correction, mask } = fieldsOf(after.body) as { correction: { lightGroup?: string }; mask: string | null };
	await db
		.updateTable('photos')
		.set(({ eb }) => ({
			correction: JSON.stringify(correction),
			mask,
			light_group: correction.lightGroup ?? null,
			version: eb('version', '+', 1),
			status: 'waiting' as const,
			failure: null,
		}))
		.where('id', '=', id)
		.execute();
}
