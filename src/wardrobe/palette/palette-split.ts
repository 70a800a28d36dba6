import { deltaE2000Matrix, distanceBetween, packLabs } from '../../colour/delta-e-many.ts';
import { completeLinkage, groupsAfter } from '../../colour/linkage.ts';
import { colourName } from '../../colour/name.ts';
import type { PaletteColour } from '../words/palette-colour.ts';
import { meanOf, spreadAround, weightOf } from './palette-centre.ts';
import type { PoolPoint } from './palette-pool.ts';

/** Two parts nearer than this would look alike (CIEDE2000; the "same colour" of the outfits that were measured). */
const LEAST_APART = 5;

/** A part that is less than this share of the colour is one odd shade, not a colour of its own. Common practice, no source. */
const LEAST_SHARE = 0.15;

type Part = { readonly points: readonly PoolPoint[]; readonly weight: number };

/** The two heaviest groups of the coarsest telling apart in which both are worth a colour; `null` where there is none. */
function twoGroups(points: readonly PoolPoint[]): readonly [Part, Part] | null {
	const labs = packLabs(points.map(({ lab }) => lab));
	const joins = completeLinkage(points.length, deltaE2000Matrix(labs, labs));
	const whole = weightOf(points);
	for (let joined = joins.length - 1; joined >= 0; joined--) {
		const [first, second] = groupsAfter(points.length, joins, joined)
			.map((group): Part => {
				const members = group.map((index) => points[index]!);
				return { points: members, weight: weightOf(members) };
			})
			.sort((a, b) => b.weight - a.weight);
		if (!first || !second || second.weight < LEAST_SHARE * whole) continue;
		return distanceBetween(meanOf(first.points), meanOf(second.points)) >= LEAST_APART ? [first, second] : null;
	}
	return null;
}

/**
 * A colour split into the two that the pictures really hold in it, the heavier keeping its id; `null` where they hold only one. `points` are the
 * colours of the board that it stands for. Each part has its own centre, spread, pictures and its share of the weight.
 */
export function splitColour(
	colour: PaletteColour,
	points: readonly PoolPoint[],
	newId: () => string,
): readonly [PaletteColour, PaletteColour] | null {
	const groups = points.length > 1 ? twoGroups(points) : null;
	if (!groups) return null;
	const whole = groups[0].weight + groups[1].weight;
	const part = ({ points: own, weight }: Part, id: string): PaletteColour => {
		const lab = meanOf(own);
		return {
			...colour,
			id,
			lab,
			label: '',
			name: colourName(lab),
			weight: (colour.weight * weight) / whole,
			spread: spreadAround(lab, own),
			photos: new Set(own.map(({ photo }) => photo)).size,
			locked: true,
			origin: 'split',
		};
	};
	return [part(groups[0], colour.id), part(groups[1], newId())];
}
