import { liesWithin } from '../../colour/delta-e-many.ts';
import { chroma, type Lab65 } from '../../colour/lab65.ts';
import { NEUTRAL_CHROMA } from '../../colour/neutrality.ts';
import { SAME_WORN } from '../../colour/same-colour.ts';
import type { Pairing } from './pairings.ts';

const isColoured = (lab: Lab65): boolean => chroma(lab) >= NEUTRAL_CHROMA;

/** How much a pairing tells beyond what goes with everything: two colours most, one colour and a neutral less, two neutrals little, a colour with itself least. */
function tells({ labA, labB }: Pairing): number {
	if (liesWithin(labA, labB, SAME_WORN)) return 0;
	return 1 + Number(isColoured(labA)) + Number(isColoured(labB));
}

/** The pairings with those first that tell most: seen in more pictures and of more colour, so that black on black never leads. All are kept; equal ones stay in their order. */
export const tellingPairings = (pairings: readonly Pairing[]): Pairing[] =>
	[...pairings].sort(
		(one, other) => tells(other) * other.photos - tells(one) * one.photos || tells(other) - tells(one),
	);
