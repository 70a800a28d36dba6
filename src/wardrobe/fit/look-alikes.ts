import { deltaE2000Matrix, distanceBetween, packLabs } from '../../colour/delta-e-many.ts';
import { completeLinkage, groupsWithin } from '../../colour/linkage.ts';
import type { Garment } from '../words/garment.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { looksPlain } from '../words/plain-looking.ts';

/** Two garments of one kind and pattern look alike up to here (CIEDE2000): a little more than two photos of one cloth differ by. */
const ALIKE_WITHIN = 6;

/** Every further piece of one look counts half as much as the one before. */
export const ALIKE_FACTOR = 0.5;

const looksOf = ({ kind, pattern }: Pick<Garment, 'kind' | 'pattern'>): string =>
	`${kind} ${looksPlain(pattern) ? 'plain' : pattern.type}`;

type Looks = Pick<Garment, 'kind' | 'pattern' | 'swatches'>;

/** How many of the garments look like this one. */
export function alikeCount(garment: Looks, garments: readonly Looks[]): number {
	const main = mainSwatch(garment)?.lab;
	if (!main) return 0;
	return garments.filter((other) => {
		const lab = mainSwatch(other)?.lab;
		return lab && looksOf(other) === looksOf(garment) && distanceBetween(lab, main) <= ALIKE_WITHIN;
	}).length;
}

/** What each garment counts for among the others: of n that look alike, the first 1, the next a half and so on, shared evenly. */
export function variedWeights(garments: readonly Looks[]): number[] {
	const groups = lookAlikes(garments);
	const sizes = new Map<number, number>();
	for (const group of groups) sizes.set(group, (sizes.get(group) ?? 0) + 1);
	return groups.map((group) => {
		const size = sizes.get(group)!;
		return (1 - ALIKE_FACTOR ** size) / (1 - ALIKE_FACTOR) / size;
	});
}

/**
 * Which garments look alike: a number for each, the same for those of one kind and pattern in nearly one colour. A garment without colours looks like
 * no other.
 */
export function lookAlikes(garments: readonly Looks[]): number[] {
	const looks = new Map<string, number[]>();
	const groupOf = garments.map((_, index) => index);
	for (const [index, garment] of garments.entries()) {
		if (!mainSwatch(garment)) continue;
		const key = looksOf(garment);
		const alike = looks.get(key);
		if (alike) alike.push(index);
		else looks.set(key, [index]);
	}
	for (const members of looks.values()) {
		const labs = packLabs(members.map((member) => mainSwatch(garments[member]!)!.lab));
		const joins = completeLinkage(members.length, deltaE2000Matrix(labs, labs));
		for (const group of groupsWithin(members.length, joins, ALIKE_WITHIN))
			for (const one of group) groupOf[members[one]!] = members[group[0]!]!;
	}
	return groupOf;
}
