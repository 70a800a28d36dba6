import type { Lab65 } from '../../colour/lab65.ts';
import type { Garment } from '../words/garment.ts';
import { normalPair, seededRandom } from '../words/seeded-random.ts';
import { deviationOf } from './photo-deviation.ts';

/** Times everything is "photographed again": a share of them is then known to about 0.06 (binomial standard deviation at 0.7). */
const REREADS = 60;

/** One imagined re-reading of all photos. */
export type Reread = {
	/** A colour of the garment moved as this re-read moves all of them. */
	readonly shifted: (garment: number, lab: Lab65) => Lab65;
};

/**
 * Re-readings of all garments within their photos' trust: every garment's colours move together, as a lamp moves them, by a normal error. Depends
 * on the seed and the garments' photos alone, not on their order, nor on ids drawn anew in every home: the same photos, the same re-reads.
 */
export function rereadsOf(garments: readonly Garment[], seed: number): Reread[] {
	const moves = garments.map(({ id, photoIds, trust }) => {
		const random = seededRandom(`reread ${seed} ${photoIds.length > 0 ? photoIds.join(' ') : id}`);
		const deviation = deviationOf(trust.error);
		return Array.from({ length: REREADS }, (): Lab65 => {
			const [L, a] = normalPair(random);
			const [b] = normalPair(random);
			return [L * deviation, a * deviation, b * deviation];
		});
	});
	return Array.from({ length: REREADS }, (_, round) => ({
		shifted: (garment, [L, a, b]) => {
			const move = moves[garment]![round]!;
			return [Math.min(100, Math.max(0, L + move[0])), a + move[1], b + move[2]];
		},
	}));
}
