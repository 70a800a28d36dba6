import { coveredShareBy } from '../gaps/bands.ts';
import { type OutfitRange, rangeOf, tallyDifference, tallySum } from '../pairs/outfit-range.ts';
import { outfitTallies } from '../pairs/outfit-tallies.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { changeSentence } from './what-if.ts';

/** What the set would be with another garment in one garment's place. */
export type Swap = {
	readonly garmentId: string;
	/** Outfits for the season's days, and how many more or fewer that is. */
	readonly outfits: OutfitRange;
	readonly outfitsChange: OutfitRange;
	/** How much of what the palette asks is covered, 0..1, and by how much that changes. */
	readonly coveredShare: number;
	readonly coveredChange: number;
	readonly sentence: string;
};

const byId = (one: Garment, other: Garment) => (one.id < other.id ? -1 : 1);

/**
 * Every garment of the rail that could take the place of `garmentId` in a set, with what that would change; most outfits first, then best
 * covered, then by id. Empty where the garment is not in the set, or nothing else of its slot is on the rail. All are weighed in one go: the
 * support of each pair is worked out once.
 */
export function swapsFor(
	input: SeasonInput,
	{ garmentIds, garmentId }: { readonly garmentIds: readonly string[]; readonly garmentId: string },
): Swap[] {
	const ids = new Set(garmentIds);
	const held = input.garments.filter(({ id }) => ids.has(id)).sort(byId);
	const out = held.find(({ id }) => id === garmentId);
	if (!out) return [];
	const others = input.garments.filter(
		({ id, kind, place }) => !ids.has(id) && place === 'rail' && slotOfKind(kind) === slotOfKind(out.kind),
	);
	const table = pairTable([...held, ...others], pairContextOf(input));
	const rest = held.filter((garment) => garment !== out);
	const {
		held: without,
		added: [withOut, ...gains],
	} = outfitTallies(input, rest, [out, ...others], table);
	const before = coveredShareBy(input.palette, held);
	// With the last shoes out, outfits are counted without shoes: none of those is left once others are in.
	const keeps = slotOfKind(out.kind) !== 'shoes' || rest.some(({ kind }) => slotOfKind(kind) === 'shoes');
	return others
		.map((other, index): Swap => {
			const coveredShare = coveredShareBy(input.palette, [...rest, other]);
			const outfits = rangeOf(keeps ? tallySum(without, gains[index]!) : gains[index]!);
			const outfitsChange = rangeOf(tallyDifference(gains[index]!, withOut!));
			return {
				garmentId: other.id,
				outfits,
				outfitsChange,
				coveredShare,
				coveredChange: coveredShare - before,
				sentence: changeSentence({
					garmentCount: held.length,
					outfits,
					outfitsChange,
					covered: { before, after: coveredShare },
				}),
			};
		})
		.sort(
			(a, b) =>
				b.outfits.likely - a.outfits.likely || b.coveredShare - a.coveredShare || (a.garmentId < b.garmentId ? -1 : 1),
		);
}
