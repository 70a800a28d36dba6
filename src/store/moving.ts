import { setImmediate as letOthersIn } from 'node:timers/promises';
import { sql } from 'kysely';
import { type Change, nextRevision, partsOf, sameState, toldOf } from './carry-out.ts';
import { changesFrom, changesText } from './changes-text.ts';
import { keyOf, MOST_AT_ONCE, type Setting, setStates, storedOfAll } from './entry-rows.ts';
import { type Connection, differingFields, fieldsOf, NOTHING, type State } from './entry-state.ts';
import type { ChangedEntry, Decision } from './store.ts';

/**
 * The state that leads an entry from `from` to `to`, where it is `current` meanwhile: only what the decision changed is moved, so that what the
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

/** The decision that moves next. */
const nextToMove = (db: Connection, which: 'undo' | 'redo') =>
	db
		.selectFrom('decisions')
		.where('undone', '=', which === 'undo' ? 0 : 1)
		.orderBy('id', which === 'undo' ? 'desc' : 'asc')
		.limit(1);

/** Bytes of the changes that would move next; 0 where there are none. */
export async function sizeOfNext(db: Connection, which: 'undo' | 'redo'): Promise<number> {
	const row = await nextToMove(db, which).select(sql<number>`octet_length(changes)`.as('size')).executeTakeFirst();
	return Number(row?.size ?? 0);
}

/** Takes back the newest decision, or does the oldest that was taken back again; null where there is none. */
export async function moveIn(
	trx: Connection,
	which: 'undo' | 'redo',
): Promise<{ readonly decision: Decision; readonly changed: readonly ChangedEntry[] } | null> {
	const row = await nextToMove(trx, which).selectAll().executeTakeFirst();
	if (!row) return null;
	const changes = changesFrom(row.changes);
	const revision = await nextRevision(trx);
	const moved: Change[] = [];
	for (const part of partsOf(which === 'undo' ? changes.reverse() : changes)) {
		const stored = await storedOfAll(trx, part);
		const settings: Setting[] = [];
		for (const change of part) {
			const current = stored.get(keyOf(change)) ?? NOTHING;
			const [from, to] = which === 'undo' ? [change.after, change.before] : [change.before, change.after];
			const target = movedState(current.state, from, to);
			settings.push({ entry: change, before: current, after: target });
			const [before, after] = which === 'undo' ? [target, current.state] : [current.state, target];
			moved.push({ kind: change.kind, id: change.id, before, after });
		}
		await setStates(trx, settings, revision);
		if (part.length === MOST_AT_ONCE) await letOthersIn();
	}
	// Moving it the other way later brings back what is there now, with what was noted since it was decided.
	const kept = which === 'undo' ? [...moved].reverse() : moved;
	await trx
		.updateTable('decisions')
		.set({ undone: which === 'undo' ? 1 : 0, changes: await changesText(kept, which === 'undo' ? 'undone' : 'done') })
		.where('id', '=', row.id)
		.execute();
	const decision = { id: row.id, at: row.at, sentence: row.sentence, undone: which === 'undo' };
	return { decision, changed: moved.map((change) => toldOf(change, change.after ?? change.before)) };
}
