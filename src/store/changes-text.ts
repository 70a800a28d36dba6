import { setImmediate as letOthersIn } from 'node:timers/promises';
import { say } from '../language/speak.ts';
import type { Change } from './carry-out.ts';
import type { EntryKey, State } from './entry-state.ts';

/** A change as a decision keeps it. What was made lies among the entries as long as the decision stands, so its body is not kept once more. */
type KeptChange = Change | (EntryKey & { readonly made: true });

/** What the newest decision changed can no longer be read. */
export class DamagedDecisionError extends Error {}

/** Changes written at once. */
const MOST_AT_ONCE = 500;

const kept = (change: Change): KeptChange =>
	change.before === null && change.after !== null ? { kind: change.kind, id: change.id, made: true } : change;

/** The changes as JSON, of a decision that stands or one that was taken back. Many are written in pieces, so that other work has its turn between. */
export async function changesText(changes: readonly Change[], standing: 'done' | 'undone'): Promise<string> {
	const pieces: string[] = [];
	for (let at = 0; at < changes.length; at += MOST_AT_ONCE) {
		const part = changes.slice(at, at + MOST_AT_ONCE);
		pieces.push(JSON.stringify(standing === 'done' ? part.map(kept) : part).slice(1, -1));
		if (at > 0) await letOthersIn();
	}
	return `[${pieces.join(',')}]`;
}

const isState = (state: State) => state === null || typeof state?.body === 'string';

/** Changes from their JSON; what a standing decision made has no state after it here. Throws {@link DamagedDecisionError}. */
export function changesFrom(json: string): Change[] {
	const changes = JSON.parse(json) as KeptChange[];
	const isWhole = (one: KeptChange) =>
		typeof one?.kind === 'string' && ('made' in one || (isState(one.before) && isState(one.after)));
	if (!Array.isArray(changes) || !changes.every(isWhole)) throw new DamagedDecisionError(say('home.damagedDecision'));
	return changes.map((one) => ('made' in one ? { kind: one.kind, id: one.id, before: null, after: null } : one));
}
