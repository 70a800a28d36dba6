import { KeyReusedError } from '../store/deciding.ts';
import { DamagedDecisionError } from '../store/moving.ts';
import type { Asked, ChangedThing, HomeReads, Outcome, Plan } from '../store/store.ts';
import { CORRECTION } from '../store/thing-state.ts';
import { UserError } from './errors.ts';
import type { Services } from './services.ts';

/** What deciding takes of the services. */
export type Deciders = Pick<Services, 'store' | 'events'>;

/** Tells the open pages what was changed, and no more than that. */
export function tellChanged(events: Services['events'], changed: readonly ChangedThing[]): void {
	for (const { kind, id } of changed)
		if (kind === CORRECTION) events.send({ event: 'photo', data: { id, status: 'waiting' } });
	const things = changed.filter(({ kind }) => kind !== CORRECTION);
	if (things.length > 0) events.send({ event: 'changed', data: { things } });
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
