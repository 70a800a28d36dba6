import { colourName } from '../colour/name.ts';
import { distanceText } from './fit-sentence.ts';
import type { Garment } from './garment.ts';
import type { Pairing } from './pairings.ts';
import type { SupportKind } from './support.ts';

/** What a pair's sentence may tell. */
export type SupportFacts = {
	readonly one: Garment;
	readonly other: Garment;
	readonly together: boolean;
	/** Name of the one that is a base neutral, where one is. */
	readonly baseName: string;
	readonly days: number;
	readonly pairing: Pairing | null;
	readonly echo: number | null;
	/** Between the main colours; `null` where one has none yet. */
	readonly distance: number | null;
};

const pictures = (count: number): string => (count === 1 ? 'one picture' : `${count} pictures`);

function unprovenSentence({ one, other, together, distance }: SupportFacts): string {
	if (!together)
		return `${one.name} and ${other.name} take each other's place, so they are not counted as worn together.`;
	if (distance === null) return `One of ${one.name} and ${other.name} has no colours read yet, so nothing can be said.`;
	return `Nothing speaks for ${one.name} with ${other.name} yet, and nothing against: their main colours are ${distanceText(distance)} apart. Wear it or approve it, and it counts.`;
}

/** Why a pair counts or does not, in one plain sentence. */
export function supportSentence(kind: SupportKind, facts: SupportFacts): string {
	const { one, other, days, pairing, echo } = facts;
	switch (kind) {
		case 'approved':
			return `You said that ${one.name} and ${other.name} go together.`;
		case 'no':
			return `You said that ${one.name} and ${other.name} do not go together.`;
		case 'worn':
			return `You wore ${one.name} and ${other.name} on the same day${days > 1 ? `, ${days} times` : ''}.`;
		case 'inspired':
			return pairing
				? `${pictures(pairing.photos).replace(/^\w/, (first) => first.toUpperCase())} of the season's board ${pairing.photos === 1 ? 'wears' : 'wear'} it: ${colourName(pairing.labA)} (${pairing.slotA}) with ${colourName(pairing.labB)} (${pairing.slotB}).`
				: "The season's board wears these colours together.";
		case 'palette':
			return "Both lie in the season's palette.";
		case 'base':
			return `${facts.baseName} is a base neutral of the season, which carries the others.`;
		case 'echo':
			return `They echo each other: ${echo === null ? 'the same colour' : `${distanceText(echo)} between their nearest colours`}.`;
		case 'unproven':
			return unprovenSentence(facts);
	}
}
