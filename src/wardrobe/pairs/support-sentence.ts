import { colourName } from '../../colour/name.ts';
import { distanceText } from '../words/distance-text.ts';
import type { Garment } from '../words/garment.ts';
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
	/** Asked only where the sentence tells of it, as are the distances. */
	readonly pairing: () => Pairing | null;
	readonly echo: () => number | null;
	/** Between the main colours; `null` where one has none yet. */
	readonly distance: () => number | null;
};

function unprovenSentence({ one, other, together, distance: measure }: SupportFacts): string {
	if (!together)
		return `${one.name} and ${other.name} take each other's place, so they are not counted as worn together.`;
	const distance = measure();
	if (distance === null) return `One of ${one.name} and ${other.name} has no colours read yet, so nothing can be said.`;
	return `Nothing speaks for ${one.name} with ${other.name} yet, and nothing against: their main colours are ${distanceText(distance)} apart. Wear it or approve it, and it counts.`;
}

function inspiredSentence(pairing: Pairing | null): string {
	if (!pairing) return "The season's board wears these colours together.";
	const { photos, labA, slotA, labB, slotB } = pairing;
	const who =
		photos === 1 ? "One picture of the season's board wears" : `${photos} pictures of the season's board wear`;
	return `${who} it: ${colourName(labA)} (${slotA}) with ${colourName(labB)} (${slotB}).`;
}

const echoSentence = (distance: number | null): string =>
	`They echo each other: ${distance === null ? 'the same colour' : `${distanceText(distance)} between their nearest colours`}.`;

/** Why a pair counts or does not, in one plain sentence. */
export function supportSentence(kind: SupportKind, facts: SupportFacts): string {
	const { one, other, days } = facts;
	switch (kind) {
		case 'approved':
			return `You said that ${one.name} and ${other.name} go together.`;
		case 'no':
			return `You said that ${one.name} and ${other.name} do not go together.`;
		case 'worn':
			return `You wore ${one.name} and ${other.name} on the same day${days > 1 ? `, ${days} times` : ''}.`;
		case 'inspired':
			return inspiredSentence(facts.pairing());
		case 'palette':
			return "Both lie in the season's palette.";
		case 'base':
			return `${facts.baseName} is a base neutral of the season, which carries the others.`;
		case 'echo':
			return echoSentence(facts.echo());
		case 'unproven':
			return unprovenSentence(facts);
	}
}
