import { fieldWord } from '../language/field-word.ts';
import { say } from '../language/speak.ts';
import type { HomeReads, VersionedKind } from '../store/store.ts';
import { UserError } from './errors.ts';

/** An entry that was changed by somebody else since it was seen: which fields, and what it is now. */
export type StaleEntry = {
	readonly kind: VersionedKind | 'photo';
	readonly id: string;
	readonly fields: readonly string[];
	readonly now: object;
};

/** The refusal of a change to entries that are no longer as they were seen. `details.changed` says what changed. */
export function staleError(entries: readonly StaleEntry[]): UserError {
	const told = entries
		.slice(0, 3)
		.map(({ kind, fields, now }) => {
			const { name, title } = now as { name?: string; title?: string };
			const what = say(`nouns.${kind}`);
			const parts = fields.map(fieldWord).join(', ') || say('refusals.something');
			return name || title
				? say('refusals.staleNamed', { what, name: name || title || '', fields: parts })
				: say('refusals.staleEntry', { what, fields: parts });
		})
		.join('; ');
	return new UserError('stale', say('refusals.stale', { told }), { details: { changed: entries } });
}

/** What the program notes by itself of a line-up: nobody's change, so it makes none stale. */
const NOTED_BY_ITSELF: readonly string[] = ['gapIds'];

/** What changed of an entry since the version that was seen; null where nothing did, or no version was told. */
export async function changedSinceSeen(
	home: HomeReads,
	kind: VersionedKind,
	id: string,
	entry: { readonly version: number },
	seen: number | undefined,
): Promise<StaleEntry | null> {
	if (seen === undefined || seen === entry.version) return null;
	const fields = await home.changesSince(kind, id, seen);
	if (fields.length > 0 && fields.every((field) => NOTED_BY_ITSELF.includes(field))) return null;
	return { kind, id, fields, now: entry };
}

/** Refuses a change to an entry that is no longer as it was seen; `seen` undefined = the caller takes it as it is. */
export async function refuseStale(
	home: HomeReads,
	kind: VersionedKind,
	id: string,
	entry: { readonly version: number },
	seen: number | undefined,
): Promise<void> {
	const stale = await changedSinceSeen(home, kind, id, entry, seen);
	if (stale) throw staleError([stale]);
}
