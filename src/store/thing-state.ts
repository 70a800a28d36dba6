import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './schema.ts';
import { noteShownPhotos } from './shown-photos.ts';

export type Connection = Kysely<Tables> | Transaction<Tables>;

/** What a thing was at one moment; null = it did not exist. */
export type State = { readonly body: string; readonly binnedAt: string | null } | null;

/** Which thing: its kind, and its id among those of its kind. */
export type ThingKey = { readonly kind: string; readonly id: string };

/** A user's correction of a photo: decided and taken back like a thing, kept in the photo's own row. Its body: `{correction, mask}`. */
export const CORRECTION = 'correction';

/** A thing as it lies in the database. */
export type Stored = {
	readonly state: State;
	/** The revision that changed it last; 0 where there is none. */
	readonly version: number;
	/** The revision that changed each field last; `*` is the one that made the thing. */
	readonly fieldVersions: Readonly<Record<string, number>>;
};

const NOTHING: Stored = { state: null, version: 0, fieldVersions: {} };

/** The thing as it is now. */
export async function storedOf(db: Connection, { kind, id }: ThingKey): Promise<Stored> {
	if (kind === CORRECTION) return storedCorrection(db, id);
	const row = await db
		.selectFrom('things')
		.select(['body', 'binned_at', 'version', 'field_versions'])
		.where('kind', '=', kind)
		.where('id', '=', id)
		.executeTakeFirst();
	if (!row) return NOTHING;
	const fieldVersions = JSON.parse(row.field_versions) as Record<string, number>;
	return { state: { body: row.body, binnedAt: row.binned_at }, version: row.version, fieldVersions };
}

async function storedCorrection(db: Connection, id: string): Promise<Stored> {
	const row = await db
		.selectFrom('photos')
		.select(['correction', 'mask', 'version'])
		.where('id', '=', id)
		.executeTakeFirst();
	if (!row) return NOTHING;
	const body = JSON.stringify({ correction: JSON.parse(row.correction), mask: row.mask });
	return { state: { body, binnedAt: null }, version: row.version, fieldVersions: {} };
}

type Fields = Readonly<Record<string, unknown>>;

/** The fields of a body; none where it is no object. */
export function fieldsOf(body: string): Fields {
	const parsed = JSON.parse(body) as unknown;
	return parsed !== null && typeof parsed === 'object' && !Array.isArray(parsed) ? (parsed as Fields) : {};
}

/** Names of the fields in which two bodies differ. */
export function differingFields(one: string, other: string): string[] {
	const [a, b] = [fieldsOf(one), fieldsOf(other)];
	const names = new Set([...Object.keys(a), ...Object.keys(b)]);
	return [...names].filter((name) => JSON.stringify(a[name]) !== JSON.stringify(b[name]));
}

function fieldVersionsAfter({ state, fieldVersions }: Stored, body: string, version: number): Record<string, number> {
	if (state === null) return { '*': version };
	const changed = differingFields(state.body, body).map((name) => [name, version] as const);
	return { ...fieldVersions, ...Object.fromEntries(changed) };
}

/** Brings a thing into a state, as part of the change that `version` numbers. */
export async function setState(
	db: Connection,
	{ kind, id }: ThingKey,
	before: Stored,
	after: State,
	version: number,
): Promise<void> {
	if (kind === CORRECTION) return setCorrection(db, id, after);
	if (after === null) {
		await db.deleteFrom('things').where('kind', '=', kind).where('id', '=', id).execute();
		await noteShownPhotos(db, { kind, id }, {});
		return;
	}
	const row = {
		body: after.body,
		binned_at: after.binnedAt,
		version,
		field_versions: JSON.stringify(fieldVersionsAfter(before, after.body, version)),
	};
	await db
		.insertInto('things')
		.values({ kind, id, ...row })
		.onConflict((conflict) => conflict.columns(['kind', 'id']).doUpdateSet(row))
		.execute();
	if (before.state?.body !== after.body) await noteShownPhotos(db, { kind, id }, fieldsOf(after.body));
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
