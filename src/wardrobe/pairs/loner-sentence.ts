import { say } from '../../language/speak.ts';
import type { Loner } from './loner.ts';

/** The question that a loner is put as, or why it is not flagged. */
export function lonerSentence(
	name: string,
	nearestName: string,
	facts: Pick<Loner, 'flagged' | 'possiblePartners' | 'sureness'> & {
		/** Whether every partner is too far away, as read. */
		readonly alone: boolean;
		readonly hueNeighbour: boolean;
	},
): string {
	const nearest = nearestName;
	if (facts.flagged) {
		const apart = say('loners.nearest', { count: facts.possiblePartners, nearest });
		const sure = say(facts.sureness === 'surer' ? 'loners.steady' : 'loners.unsteady');
		return say('loners.question', { name, apart, sure });
	}
	if (!facts.alone) return say('loners.notAlone', { name, nearest });
	return say(facts.hueNeighbour ? 'loners.hueNeighbour' : 'loners.notClearly', { name });
}
