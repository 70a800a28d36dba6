import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Kind } from '../words/kind.ts';
import type { Slot } from '../words/slot.ts';
import type { Picture } from './picture.ts';

/** Where pictures wear a colour. */
export type WornAs = {
	readonly slot: Slot;
	/** The kind that wears most of it there; null where none is sure. */
	readonly kind: Kind | null;
	/** Cloth of it there, as a share of its cloth in all pictures, 0..1. */
	readonly share: number;
	readonly pictures: number;
};

/** The key with the largest sum. */
const largest = <T>(sums: ReadonlyMap<T, number>): T =>
	[...sums].reduce((most, one) => (one[1] > most[1] ? one : most))[0];

/** The slots in which the pictures wear a colour (within `within`, CIEDE2000), the most cloth of it first; every picture weighs the same. Empty where they never do. */
export function wornAs(lab: Lab65, pictures: readonly Picture[], within: number): WornAs[] {
	const slots = new Map<Slot, { cloth: number; kinds: Map<Kind | null, number>; pictures: Set<string> }>();
	let total = 0;
	for (const { inspirationId, pieces, accessories } of pictures) {
		const all = [...pieces, ...accessories];
		const area = all.reduce((sum, { share }) => sum + share, 0);
		for (const { slot, kind, share, swatches } of all) {
			const near = swatches.filter((swatch) => liesWithin(swatch.lab, lab, within));
			const cloth = (share / area) * near.reduce((sum, swatch) => sum + swatch.share, 0);
			if (!(cloth > 0)) continue;
			const own = slots.get(slot) ?? { cloth: 0, kinds: new Map(), pictures: new Set() };
			own.kinds.set(kind, (own.kinds.get(kind) ?? 0) + cloth);
			slots.set(slot, { ...own, cloth: own.cloth + cloth, pictures: own.pictures.add(inspirationId) });
			total += cloth;
		}
	}
	return [...slots]
		.map(([slot, own]) => ({
			slot,
			kind: largest(own.kinds),
			share: own.cloth / total,
			pictures: own.pictures.size,
		}))
		.sort((one, other) => other.share - one.share);
}
