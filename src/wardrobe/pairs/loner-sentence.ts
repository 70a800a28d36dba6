import { say } from '../../language/speak.ts';
import type { Loner } from './loner.ts';

/** The question that a loner is put as, with the garment that could carry it, or why it is none. */
export function lonerSentence(
	name: string,
	carrier: string,
	facts: Pick<Loner, 'sureness'> & {
		/** Whether it stands alone in most re-reads. */
		readonly holds: boolean;
		/** Whether it stands alone as read. */
		readonly isAlone: boolean;
		/** Whether a possible partner wears nearly its colour. */
		readonly echoed: boolean;
	},
): string {
	if (facts.holds) {
		const sure = say(facts.sureness === 'surer' ? 'loners.steady' : 'loners.unsteady');
		return say('loners.question', { name, carrier, sure });
	}
	if (facts.echoed) return say('loners.notAlone', { name, carrier });
	return say(facts.isAlone ? 'loners.notClearly' : 'loners.notFar', { name, carrier });
}
