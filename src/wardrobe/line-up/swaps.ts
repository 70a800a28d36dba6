import { bandsOf } from '../gaps/bands.ts';
import { countOutfits } from '../pairs/outfits.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { changeSentence } from './what-if.ts';

/** What the set would be with another garment in one garment's place. */
export type Swap = {
	readonly garmentId: string;
	readonly outfits: number;
	readonly outfitsChange: number;
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
	const outfitTable = { slots: table.slots, goes: table.supported };
	const setOf = (members: readonly number[]) => {
		const garments = members.map((member) => table.garments[member]!);
		const { asked } = bandsOf(input.palette, garments);
		return {
			garmentCount: garments.length,
			outfits: countOutfits(outfitTable, members),
			coveredShare: asked.reduce((sum, { covered }) => sum + covered, 0),
		};
	};
	const all = [...held.keys()];
	const rest = all.filter((member) => held[member] !== out);
	const before = setOf(all);
	return others
		.map(({ id }, index): Swap => {
			const after = setOf([...rest, held.length + index]);
			return {
				garmentId: id,
				outfits: after.outfits,
				outfitsChange: after.outfits - before.outfits,
				coveredShare: after.coveredShare,
				coveredChange: after.coveredShare - before.coveredShare,
				sentence: changeSentence(before, after),
			};
		})
		.sort((a, b) => b.outfits - a.outfits || b.coveredShare - a.coveredShare || (a.garmentId < b.garmentId ? -1 : 1));
}
