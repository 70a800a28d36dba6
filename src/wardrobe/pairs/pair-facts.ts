import type { Lab65 } from '../../colour/lab65.ts';
import { withExactGrey } from '../../colour/neutrality.ts';
import { fitsPalette } from '../fit/fit.ts';
import { togetherAmong } from '../words/complementary-slots.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch, seenSwatches } from '../words/main-colour.ts';
import type { Slot } from '../words/slot.ts';
import { isBaseNeutral } from './base-neutral.ts';
import { echoesAmong } from './echo.ts';
import { type InspiredPairs, inspiredPairs } from './inspired-pairs.ts';
import type { PairContext } from './support.ts';

/** What every pair of a set of garments is judged by, worked out once for each garment. */
export type PairFacts = {
	/** Whether the two are worn in one outfit at all. */
	readonly together: (one: number, other: number) => boolean;
	readonly slots: readonly Slot[];
	/** Main colours as read; `null` where a garment has no colours yet. */
	readonly mains: readonly (Lab65 | null)[];
	/** Main colours with exact greys. */
	readonly greyed: readonly (Lab65 | null)[];
	/** Whether two of their colours echo each other, see {@link echoesAmong}. */
	readonly echoes: (one: number, other: number) => boolean;
	readonly inPalette: readonly boolean[];
	readonly base: readonly boolean[];
	readonly inspired: InspiredPairs;
};

export function pairFacts(garments: readonly Garment[], context: PairContext): PairFacts {
	const slots = garments.map(({ kind }) => slotOfKind(kind));
	const mains = garments.map((garment) => mainSwatch(garment)?.lab ?? null);
	const untold = garments.map(({ trust }) => trust.untold === true);
	return {
		together: togetherAmong(garments.map(({ kind }) => kind)),
		slots,
		mains,
		greyed: mains.map((lab) => (lab ? withExactGrey(lab) : null)),
		echoes: echoesAmong(
			garments.map((garment) => seenSwatches(garment).map(({ lab }) => withExactGrey(lab))),
			untold,
		),
		inPalette: garments.map((garment) => fitsPalette(garment, context.palette)),
		base: garments.map((garment) => isBaseNeutral(garment, context.palette)),
		inspired: inspiredPairs({ slots, mains, untold }, context.pairings),
	};
}
