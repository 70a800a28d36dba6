import type { Lab65 } from '../colour/lab65.ts';
import type { Garment } from './garment.ts';
import { normalPair, seededRandom } from './seeded-random.ts';

/** Times everything is "photographed again" (measured with 15). */
const REREADS = 15;

/**
 * The stated error covers the true one 80 % of the time. The length of a normal error in three directions stays under 2.154 standard
 * deviations 80 % of the time (chi distribution with 3 degrees of freedom), so this turns the one into the other.
 */
const ERROR_TO_DEVIATION = 1 / 2.154;

/** No photo is imagined worse than this (CIEDE2000): the worst uncorrected phone photo of a chart that was measured erred by 17 on average. */
const ERROR_AT_MOST = 17;

/** One imagined re-reading of all photos. */
export type Reread = {
	/** The garment's colours as this re-read has them. */
	readonly colours: (garment: number) => readonly Lab65[];
	/** A colour of the garment moved as this re-read moves all of them. */
	readonly shifted: (garment: number, lab: Lab65) => Lab65;
};

/**
 * Re-readings of all garments within their photos' trust: every garment's colours move together, as a lamp moves them, by a normal error. Depends
 * on the seed and the garments' ids alone, not on their order.
 */
export function rereadsOf(
	garments: readonly Garment[],
	colours: readonly (readonly Lab65[])[],
	seed: number,
): Reread[] {
	return Array.from({ length: REREADS }, (_, round) => {
		const moves = garments.map(({ id, trust }): Lab65 => {
			const random = seededRandom(`reread ${seed} ${round} ${id}`);
			const deviation = Math.min(ERROR_AT_MOST, trust.error) * ERROR_TO_DEVIATION;
			const [L, a] = normalPair(random);
			const [b] = normalPair(random);
			return [L * deviation, a * deviation, b * deviation];
		});
		const shifted = (garment: number, [L, a, b]: Lab65): Lab65 => {
			const move = moves[garment]!;
			return [Math.min(100, Math.max(0, L + move[0])), a + move[1], b + move[2]];
		};
		const moved = colours.map((own, garment) => own.map((lab) => shifted(garment, lab)));
		return { colours: (garment) => moved[garment]!, shifted };
	});
}
