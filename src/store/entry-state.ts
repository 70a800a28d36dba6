import type { Kysely, Transaction } from 'kysely';
import type { Tables } from './schema.ts';

export type Connection = Kysely<Tables> | Transaction<Tables>;

/** What an entry was at one moment; null = it did not exist. */
export type State = { readonly body: string; readonly binnedAt: string | null } | null;

/** Which entry: its kind, and its id among those of its kind. */
export type EntryKey = { readonly kind: string; readonly id: string };

/** A user's correction of a photo: decided and taken back like an entry, kept in the photo's own row. Its body: `{correction, mask}`. */
export const CORRECTION = 'correction';

/** An entry as it lies in the database. */
export type Stored = {
	readonly state: State;
	/** The revision that changed it last; 0 where there is none. */
	readonly version: number;
	/** The revision that changed each field last; `*` is the one that made the entry. */
	readonly fieldVersions: Readonly<Record<string, number>>;
};

/** An entry that is not there. */
export const NOTHING: Stored = { state: null, version: 0, fieldVersions: {} };

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
