import type { Transaction } from 'kysely';
import { insertPhoto } from './photo-rows.ts';
import type { Tables } from './schema.ts';
import type { Asked, ChangedThing, Decision, NewPhoto, Outcome } from './store.ts';
import {
	differingFields,
	fieldsOf,
	type State,
	type Stored,
	setState,
	storedOf,
	type ThingKey,
} from './thing-state.ts';

/** What a decision does to one thing: a new body, or `null` to take it away (to the bin, where it has one). */
export type ThingEdit = ThingKey & { readonly body: unknown };

/** What is done at once: edits of things, and photos that come in with them. */
export type Edits = { readonly things: readonly ThingEdit[]; readonly photos: readonly NewPhoto[] };

/** One thing before and after a decision. */
type Change = ThingKey & { readonly before: State; readonly after: State };

/** Kinds that go to the bin when deleted; all others just go (the decision that took them away can be undone). */
const BINNED: ReadonlySet<string> = new Set(['garment', 'inspiration', 'wish', 'candidate', 'season']);

/** How long an answer is kept for a request that comes once more. */
const ANSWER_KEPT_MS = 24 * 3600 * 1000;

/** The same key came with another request. */
export class KeyReusedError extends Error {}

/** What the newest decision changed can no longer be read. */
export class DamagedDecisionError extends Error {}

type Transactions = Transaction<Tables>;

/** Runs everything that belongs together in one transaction; where several programs share a database, one after the other. */
export type InTurn = <T>(act: (trx: Transactions) => Promise<T>) => Promise<T>;

/** The number of the change that begins now. */
async function nextRevision(trx: Transactions): Promise<number> {
	const { newest } = await trx
		.updateTable('revisions')
		.set(({ eb }) => ({ newest: eb('newest', '+', 1) }))
		.where('id', '=', 1)
		.returning('newest')
		.executeTakeFirstOrThrow();
	return newest;
}

/** `at` is the decision's moment: what went to the bin together lies there with the same one. */
function afterEdit({ kind, body }: ThingEdit, before: State, at: string): State {
	if (body !== null) return { body: JSON.stringify(body), binnedAt: null };
	if (before === null || !BINNED.has(kind)) return null;
	// What lies in the bin already keeps its day.
	return before.binnedAt === null ? { body: before.body, binnedAt: at } : before;
}

const sameState = (one: State, other: State): boolean =>
	one?.body === other?.body && one?.binnedAt === other?.binnedAt && (one === null) === (other === null);

const toldOf = (key: ThingKey, state: State): ChangedThing => {
	const { seasonId } = state === null ? {} : fieldsOf(state.body);
	return { kind: key.kind, id: key.id, ...(typeof seasonId === 'string' ? { seasonId } : {}) };
};

/** Carries out edits within a transaction; what is as wanted already is passed over. */
export async function carryOut(trx: Transactions, { things, photos }: Edits, at: string): Promise<readonly Change[]> {
	for (const photo of photos) await insertPhoto(trx, photo);
	const changes: Change[] = [];
	let revision = 0;
	for (const edit of things) {
		const before = await storedOf(trx, edit);
		const after = afterEdit(edit, before.state, at);
		if (sameState(before.state, after)) continue;
		if (revision === 0) revision = await nextRevision(trx);
		await setState(trx, edit, before, after, revision);
		changes.push({ kind: edit.kind, id: edit.id, before: before.state, after });
	}
	return changes;
}

/** What open pages hear of these changes. */
export const changedBy = (changes: readonly Change[]): ChangedThing[] =>
	changes.map((change) => toldOf(change, change.after ?? change.before));

/** Carries out edits as one decision that can be taken back. */
export async function decideIn(
	trx: Transactions,
	edits: Edits,
	sentence: string,
	at: string,
): Promise<readonly ChangedThing[]> {
	const changes = await carryOut(trx, edits, at);
	if (changes.length === 0) return [];
	// A new decision ends what could have been done again.
	await trx.deleteFrom('decisions').where('undone', '=', 1).execute();
	await trx
		.insertInto('decisions')
		.values({ at, sentence, changes: JSON.stringify(changes), undone: 0 })
		.execute();
	return changedBy(changes);
}

/** Answers a request that came before as it was answered then; carries out any other and keeps its answer. */
export async function once<T>(
	trx: Transactions,
	{ key, request }: Asked,
	now: Date,
	act: () => Promise<Omit<Outcome<T>, 'repeated'>>,
): Promise<Outcome<T>> {
	if (key === null) return { ...(await act()), repeated: false };
	const earliest = new Date(now.getTime() - ANSWER_KEPT_MS).toISOString();
	const known = await trx
		.selectFrom('answers')
		.select(['request', 'answer'])
		.where('key', '=', key)
		.where('at', '>=', earliest)
		.executeTakeFirst();
	if (known && known.request !== request)
		throw new KeyReusedError(
			`Expected a new key for a new request; the key "${key.slice(0, 40)}" came with another one before. Nothing was changed.`,
		);
	if (known) return { answer: JSON.parse(known.answer) as T, changed: [], repeated: true };
	const { answer, changed } = await act();
	await trx.deleteFrom('answers').where('at', '<', earliest).execute();
	await trx
		.insertInto('answers')
		.values({ key, request, answer: JSON.stringify(answer ?? null), at: now.toISOString() })
		.execute();
	return { answer, changed, repeated: false };
}

/**
 * The state that leads a thing from `from` to `to`, where it is `current` meanwhile: only what the decision changed is moved, so that what the
 * program noted since (a suggested name, the kind that a photo tells) stays.
 */
export function movedState(current: State, from: State, to: State): State {
	if (sameState(current, from) || to === null || current === null || from === null) return to;
	const fields = { ...fieldsOf(current.body) };
	const wanted = fieldsOf(to.body);
	for (const name of differingFields(from.body, to.body)) {
		if (name in wanted) fields[name] = wanted[name];
		else delete fields[name];
	}
	const binnedAt = from.binnedAt === to.binnedAt ? current.binnedAt : to.binnedAt;
	return { body: JSON.stringify(fields), binnedAt };
}

function readChanges(json: string): Change[] {
	const changes = JSON.parse(json) as Change[];
	const isState = (state: State) => state === null || typeof state?.body === 'string';
	const isWhole = (one: Change) => typeof one?.kind === 'string' && isState(one.before) && isState(one.after);
	if (!Array.isArray(changes) || !changes.every(isWhole))
		throw new DamagedDecisionError(
			'Expected to read what the last decision changed; it is not of the form that this program writes. It cannot be taken back.',
		);
	return changes;
}

/** Takes back the newest decision, or does the oldest that was taken back again; null where there is none. */
export async function moveIn(
	trx: Transactions,
	which: 'undo' | 'redo',
): Promise<{ readonly decision: Decision; readonly changed: readonly ChangedThing[] } | null> {
	const undone = which === 'undo' ? 0 : 1;
	const row = await trx
		.selectFrom('decisions')
		.selectAll()
		.where('undone', '=', undone)
		.orderBy('id', which === 'undo' ? 'desc' : 'asc')
		.limit(1)
		.executeTakeFirst();
	if (!row) return null;
	const changes = readChanges(row.changes);
	const revision = await nextRevision(trx);
	const moved: Change[] = [];
	for (const change of which === 'undo' ? changes.reverse() : changes) {
		const current: Stored = await storedOf(trx, change);
		const [from, to] = which === 'undo' ? [change.after, change.before] : [change.before, change.after];
		const target = movedState(current.state, from, to);
		await setState(trx, change, current, target, revision);
		const [before, after] = which === 'undo' ? [target, current.state] : [current.state, target];
		moved.push({ kind: change.kind, id: change.id, before, after });
	}
	// Moving it the other way later brings back what is there now, with what was noted since it was decided.
	const kept = which === 'undo' ? [...moved].reverse() : moved;
	await trx
		.updateTable('decisions')
		.set({ undone: 1 - undone, changes: JSON.stringify(kept) })
		.where('id', '=', row.id)
		.execute();
	const decision = { id: row.id, at: row.at, sentence: row.sentence, undone: which === 'undo' };
	return { decision, changed: moved.map((change) => toldOf(change, change.after ?? change.before)) };
}
