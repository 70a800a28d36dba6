import { say } from '../../language/speak.ts';
import { CORRECTION } from '../../store/entry-state.ts';
import type { Asked, ChangedEntry, Decision } from '../../store/store.ts';
import { LARGE } from '../beside/large-work.ts';
import { askStore, type Deciders, tellChanged } from '../decide.ts';
import { notFound, UserError } from '../errors.ts';
import type { Services } from '../services.ts';
import { suggestForEntries } from '../suggest-from-photos.ts';

/** What moving through the decisions takes of the services. */
type Movers = Deciders & Pick<Services, 'beside'> & { readonly jobs: Pick<Services['jobs'], 'enqueue'> };

/** What follows a move through the decisions: photos corrected otherwise are read again, and what photos tell is told once more. */
async function followUp(services: Movers, changed: readonly ChangedEntry[]): Promise<void> {
	tellChanged(services.events, changed);
	for (const { kind, id } of changed) if (kind === CORRECTION) await services.jobs.enqueue(id);
	await suggestForEntries(services, changed);
}

async function move(
	services: Movers,
	{ asked, which, none }: { readonly asked: Asked; readonly which: 'undo' | 'redo'; readonly none: string },
): Promise<Decision> {
	const { store, beside } = services;
	if (beside && (await store.sizeOfNext(which)) > LARGE)
		return (await beside({ what: which === 'undo' ? 'take-back' : 'do-again', asked })) as Decision;
	const { answer, changed } = await askStore(store[which](asked));
	if (!answer) throw new UserError('conflict', none);
	await followUp(services, changed);
	return answer;
}

/** Takes back the newest decision. What the program noted by itself since then stays. */
export const takeBack = (services: Movers, asked: Asked): Promise<Decision> =>
	move(services, { asked, which: 'undo', none: say('refusals.nothingToUndo') });

/** Does again what was taken back last. */
export const doAgain = (services: Movers, asked: Asked): Promise<Decision> =>
	move(services, {
		asked,
		which: 'redo',
		none: say('refusals.nothingToRedo'),
	});

/** Takes an entry out of the bin. */
export async function restoreFromBin(services: Services, asked: Asked, id: string): Promise<{ restored: true }> {
	const { answer, changed } = await askStore(services.store.restoreFromBin(id, asked));
	if (!answer) throw notFound(say('nouns.binned'), id);
	await followUp(services, changed);
	return { restored: true };
}
