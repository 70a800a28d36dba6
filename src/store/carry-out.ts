import { setImmediate as letOthersIn } from 'node:timers/promises';
import { keyOf, MOST_AT_ONCE, type Setting, setStates, storedOfAll } from './entry-rows.ts';
import { type Connection, type EntryKey, fieldsOf, NOTHING, type State } from './entry-state.ts';
import { insertPhoto } from './photo-rows.ts';
import type { ChangedEntry, NewPhoto } from './store.ts';

/** What a decision does to one entry: a new body, or `null` to take it away (to the bin, where it has one). */
export type EntryEdit = EntryKey & { readonly body: unknown };

/** What is done at once: edits of entries, and photos that come in with them. */
export type Edits = { readonly entries: readonly EntryEdit[]; readonly photos: readonly NewPhoto[] };

/** One entry before and after a decision. */
export type Change = EntryKey & { readonly before: State; readonly after: State };

/** Kinds that go to the bin when deleted; all others just go (the decision that took them away can be undone). */
const BINNED: ReadonlySet<string> = new Set(['garment', 'inspiration', 'wish', 'candidate', 'season']);

/** The number of the change that begins now. */
export async function nextRevision(trx: Connection): Promise<number> {
	const { newest } = await trx
		.updateTable('revisions')
		.set(({ eb }) => ({ newest: eb('newest', '+', 1) }))
		.where('id', '=', 1)
		.returning('newest')
		.executeTakeFirstOrThrow();
	return newest;
}

/** `at` is the decision's moment: what went to the bin together lies there with the same one. */
function afterEdit({ kind, body }: EntryEdit, before: State, at: string): State {
	if (body !== null) return { body: JSON.stringify(body), binnedAt: null };
	if (before === null || !BINNED.has(kind)) return null;
	// What lies in the bin already keeps its day.
	return before.binnedAt === null ? { body: before.body, binnedAt: at } : before;
}

export const sameState = (one: State, other: State): boolean =>
	one?.body === other?.body && one?.binnedAt === other?.binnedAt && (one === null) === (other === null);

/** What open pages hear of an entry. */
export const toldOf = (key: EntryKey, state: State): ChangedEntry => {
	// Most entries belong to no season, and of many entries reading each body takes long.
	const { seasonId } = state?.body.includes('"seasonId"') ? fieldsOf(state.body) : {};
	return { kind: key.kind, id: key.id, ...(typeof seasonId === 'string' ? { seasonId } : {}) };
};

/** Parts in which each entry stands once, small enough for one statement each. */
export function* partsOf<T extends EntryKey>(entries: readonly T[]): Generator<readonly T[]> {
	let part: T[] = [];
	let keys = new Set<string>();
	for (const entry of entries) {
		if (part.length === MOST_AT_ONCE || keys.has(keyOf(entry))) {
			yield part;
			part = [];
			keys = new Set();
		}
		part.push(entry);
		keys.add(keyOf(entry));
	}
	if (part.length > 0) yield part;
}

/** Carries out edits within a transaction; what is as wanted already is passed over. Other work has its turn between many. */
export async function carryOut(trx: Connection, { entries, photos }: Edits, at: string): Promise<readonly Change[]> {
	for (const photo of photos) await insertPhoto(trx, photo);
	const changes: Change[] = [];
	let revision = 0;
	for (const part of partsOf(entries)) {
		const stored = await storedOfAll(trx, part);
		const settings: Setting[] = [];
		for (const edit of part) {
			const before = stored.get(keyOf(edit)) ?? NOTHING;
			const after = afterEdit(edit, before.state, at);
			if (sameState(before.state, after)) continue;
			settings.push({ entry: edit, before, after });
			changes.push({ kind: edit.kind, id: edit.id, before: before.state, after });
		}
		if (settings.length === 0) continue;
		if (revision === 0) revision = await nextRevision(trx);
		await setStates(trx, settings, revision);
		if (part.length === MOST_AT_ONCE) await letOthersIn();
	}
	return changes;
}

/** What open pages hear of these changes. */
export const changedBy = (changes: readonly Change[]): ChangedEntry[] =>
	changes.map((change) => toldOf(change, change.after ?? change.before));
