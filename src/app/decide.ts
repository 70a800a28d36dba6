import { DamagedDecisionError } from '../store/changes-text.ts';
import { KeyReusedError } from '../store/deciding.ts';
import { CORRECTION } from '../store/entry-state.ts';
import type { Asked, ChangedEntry, HomeReads, Outcome, Plan } from '../store/store.ts';
import { UserError } from './errors.ts';
import type { Services } from './services.ts';

/** What deciding takes of the services. */
export type Deciders = Pick<Services, 'store' | 'events'>;

/** Changed entries that are told one by one; of more, only the kinds and seasons are. */
const MOST_TOLD = 200;

/** The entries, or where there are many of them one for each kind and season, with the id `*`. */
function inShort(entries: readonly ChangedEntry[]): readonly ChangedEntry[] {
	if (entries.length <= MOST_TOLD) return entries;
	const told = new Map<string, ChangedEntry>();
	for (const entry of entries) {
		// A palette and a line-up are named by the season that they are of.
		const isNamed = entry.kind === 'palette' || entry.kind === 'line-up';
		const one = isNamed ? entry : { ...entry, id: '*' };
		told.set(`${one.kind} ${one.id} ${one.seasonId ?? ''}`, one);
	}
	return [...told.values()];
}

/** Tells the open pages what was changed, and no more than that. */
export function tellChanged(events: Services['events'], changed: readonly ChangedEntry[]): void {
	for (const { kind, id } of changed)
		if (kind === CORRECTION) events.send({ event: 'photo', data: { id, status: 'waiting' } });
	const entries = inShort(changed.filter(({ kind }) => kind !== CORRECTION));
	if (entries.length > 0) events.send({ event: 'changed', data: { entries } });
}

/** What the store says of a request, in the words of the interface. */
export async function askStore<T>(asking: Promise<T>): Promise<T> {
	try {
		return await asking;
	} catch (error) {
		if (error instanceof KeyReusedError) throw new UserError('key-reused', error.message);
		if (error instanceof DamagedDecisionError) throw new UserError('conflict', error.message);
		throw error;
	}
}

/** Makes one decision and tells the open pages; says whether the request had been answered before. */
export async function decideOnce<T>(
	{ store, events }: Deciders,
	asked: Asked,
	plan: (home: HomeReads) => Promise<Plan<T>>,
): Promise<Outcome<T>> {
	const outcome = await askStore(store.decide(asked, plan));
	tellChanged(events, outcome.changed);
	return outcome;
}

/** The same, for what needs no more than the answer. */
export const decide = async <T>(
	services: Deciders,
	asked: Asked,
	plan: (home: HomeReads) => Promise<Plan<T>>,
): Promise<T> => (await decideOnce(services, asked, plan)).answer;
