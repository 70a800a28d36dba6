import { say } from '../../language/speak.ts';
import type { Asked, ChangedThing, Decision, Outcome } from '../../store/store.ts';
import { CORRECTION } from '../../store/thing-state.ts';
import { askStore, tellChanged } from '../decide.ts';
import { notFound, UserError } from '../errors.ts';
import type { Services } from '../services.ts';
import { suggestForThings } from '../suggest-from-photos.ts';

/** What follows a move through the decisions: photos corrected otherwise are read again, and what photos tell is told once more. */
async function followUp(services: Services, changed: readonly ChangedThing[]): Promise<void> {
	tellChanged(services.events, changed);
	for (const { kind, id } of changed) if (kind === CORRECTION) await services.jobs.enqueue(id);
	await suggestForThings(services, changed);
}

async function move(services: Services, asking: Promise<Outcome<Decision | null>>, none: string): Promise<Decision> {
	const { answer, changed } = await askStore(asking);
	if (!answer) throw new UserError('conflict', none);
	await followUp(services, changed);
	return answer;
}

/** Takes back the newest decision. What the program noted by itself since then stays. */
export const takeBack = (services: Services, asked: Asked): Promise<Decision> =>
	move(services, services.store.undo(asked), say('refusals.nothingToUndo'));

/** Does again what was taken back last. */
export const doAgain = (services: Services, asked: Asked): Promise<Decision> =>
	move(services, services.store.redo(asked), say('refusals.nothingToRedo'));

/** Takes a thing out of the bin. */
export async function restoreFromBin(services: Services, asked: Asked, id: string): Promise<{ restored: true }> {
	const { answer, changed } = await askStore(services.store.restoreFromBin(id, asked));
	if (!answer) throw notFound(say('nouns.binned'), id);
	await followUp(services, changed);
	return { restored: true };
}
