import { completeLinkage, groupsWithin } from '../../colour/complete-linkage.ts';
import { deltaE2000Matrix, packLabs } from '../../colour/delta-e-many.ts';
import type { Garment } from '../words/garment.ts';
import { mainSwatch } from '../words/main-colour.ts';

/** Two garments of one kind and pattern look alike up to here (CIEDE2000): a little more than two photos of one cloth differ by. */
const ALIKE_WITHIN = 6;

/** Cloth that looks plain from across a room. */
const looksOf = ({ kind, pattern }: Pick<Garment, 'kind' | 'pattern'>): string =>
	`${kind} ${pattern.type === 'mottled' ? 'plain' : pattern.type}`;

/**
 * Which garments look alike: a number for each, the same for those of one kind and pattern in nearly one colour. A garment without colours looks like
 * no other.
 */
export function lookAlikes(garments: readonly Pick<Garment, 'kind' | 'pattern' | 'swatches'>[]): number[] {
	const looks = new Map<string, number[]>();
	const groupOf = garments.map((_, index) => index);
	for (const [index, garment] of garments.entries()) {
		if (!mainSwatch(garment)) continue;
		const key = looksOf(garment);
		looks.set(key, [...(looks.get(key) ?? []), index]);
	}
	for (const members of looks.values()) {
		const labs = packLabs(members.map((member) => mainSwatch(garments[member]!)!.lab));
		const joins = completeLinkage(members.length, deltaE2000Matrix(labs, labs));
		for (const group of groupsWithin(members.length, joins, ALIKE_WITHIN))
			for (const one of group) groupOf[members[one]!] = members[group[0]!]!;
	}
	return groupOf;
}
