import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { saidColour } from '../words/said-colour.ts';
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
	/** Asked only where the sentence tells of it. */
	readonly pairing: () => Pairing | null;
	/** Whether both have colours yet. */
	readonly hasColours: boolean;
};

function unprovenSentence({ one, other, together, hasColours }: SupportFacts): string {
	const names = { one: one.name, other: other.name };
	if (!together) return say('pairs.instead', names);
	return say(hasColours ? 'pairs.unproven' : 'pairs.noColours', names);
}

function inspiredSentence(pairing: Pairing | null): string {
	if (!pairing) return say('pairs.inspired');
	const { photos, labA, slotA, labB, slotB } = pairing;
	return say('pairs.inspiredIn', {
		count: photos,
		colourA: saidColour(labA),
		slotA: say(`slots.${slotA}`),
		colourB: saidColour(labB),
		slotB: say(`slots.${slotB}`),
	});
}

/** Why a pair counts or does not, in one plain sentence. */
export function supportSentence(kind: SupportKind, facts: SupportFacts): string {
	const { one, other, days } = facts;
	const names = { one: one.name, other: other.name };
	switch (kind) {
		case 'approved':
			return say('pairs.approved', names);
		case 'no':
			return say('pairs.refused', names);
		case 'worn':
			return say('pairs.worn', { ...names, count: Math.max(1, days) });
		case 'inspired':
			return inspiredSentence(facts.pairing());
		case 'palette':
			return say('pairs.palette');
		case 'base':
			return say('pairs.base', { name: facts.baseName });
		case 'echo':
			return say('pairs.echo');
		case 'unproven':
			return unprovenSentence(facts);
	}
}
