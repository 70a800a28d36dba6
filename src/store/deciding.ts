import type { Transaction } from 'kysely';
import { say } from '../language/speak.ts';
import { carryOut, changedBy, type Edits } from './carry-out.ts';
import { changesText } from './changes-text.ts';
import type { Connection } from './entry-state.ts';
import type { Tables } from './schema.ts';
import type { Asked, ChangedEntry, Outcome } from './store.ts';

/** How long an answer is kept for a request that comes once more. */
const ANSWER_KEPT_MS = 24 * 3600 * 1000;

/** The same key came with another request. */
export class KeyReusedError extends Error {}

/** Runs everything that belongs together in one transaction; where several programs share a database, one after the other. */
export type InTurn = <T>(act: (trx: Transaction<Tables>) => Promise<T>) => Promise<T>;

/** Carries out edits, and then those that follow from them, as one decision that can be taken back. */
export async function decideIn(
	trx: Connection,
	edits: Edits,
	sentence: string,
	at: string,
	following: () => Promise<Edits | null> = async () => null,
): Promise<readonly ChangedEntry[]> {
	const done = await carryOut(trx, edits, at);
	const more = await following();
	const changes = more ? [...done, ...(await carryOut(trx, more, at))] : done;
	if (changes.length === 0) return [];
	// A new decision ends what could have been done again.
	await trx.deleteFrom('decisions').where('undone', '=', 1).execute();
	await trx
		.insertInto('decisions')
		.values({ at, sentence, changes: await changesText(changes, 'done'), undone: 0 })
		.execute();
	return changedBy(changes);
}

/** Answers a request that came before as it was answered then; carries out any other and keeps its answer. */
export async function once<T>(
	trx: Connection,
	{ key, request }: Asked,
	now: Date,
	act: () => Promise<Omit<Outcome<T>, 'repeated'>>,
): Promise<Outcome<T>> {
	if (key === null) return { ...(await act()), repeated: false };
	const earliest = new Date(now.getTime() - ANSWER_KEPT_MS).toISOString();
	const before = await trx
		.selectFrom('answers')
		.select(['request', 'answer'])
		.where('key', '=', key)
		.where('at', '>=', earliest)
		.executeTakeFirst();
	if (before && before.request !== request) throw new KeyReusedError(say('home.keyReused', { key: key.slice(0, 40) }));
	if (before) return { answer: JSON.parse(before.answer) as T, changed: [], repeated: true };
	const { answer, changed } = await act();
	await trx.deleteFrom('answers').where('at', '<', earliest).execute();
	await trx
		.insertInto('answers')
		.values({ key, request, answer: JSON.stringify(answer ?? null), at: now.toISOString() })
		.execute();
	return { answer, changed, repeated: false };
}
