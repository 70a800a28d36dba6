import { distanceText } from '../words/distance-text.ts';
import type { Loner } from './loner.ts';

/** The question that a loner is put as, or why it is not flagged. */
export function lonerSentence(
	name: string,
	nearestName: string,
	facts: Pick<Loner, 'flagged' | 'nearestDistance' | 'possiblePartners' | 'held' | 'sureness'> & {
		/** Whether every partner is too far away, as read. */
		readonly alone: boolean;
		readonly hueNeighbour: boolean;
	},
): string {
	const apart = `the nearest of ${facts.possiblePartners} possible partners, ${nearestName}, is ${distanceText(facts.nearestDistance)} away`;
	if (facts.flagged) {
		const sure = facts.sureness === 'surer' ? 'fairly steady' : 'not steady';
		return `Does ${name} go with anything? It lies outside the palette, and ${apart}. This held in ${Math.round(facts.held * 100)} % of imagined re-reads (${sure}); new photos may change it, and wearing it with something settles it.`;
	}
	if (!facts.alone) return `${name} lies outside the palette, but not alone: ${apart}.`;
	if (facts.hueNeighbour) return `${name} stands apart, but a garment of a near hue could carry it; ${apart}.`;
	return `${name} stands apart, but not clearly: ${apart}, and it held in ${Math.round(facts.held * 100)} % of imagined re-reads.`;
}
