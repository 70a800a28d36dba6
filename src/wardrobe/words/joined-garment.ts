import type { GarmentDetails } from './garment.ts';

const texts = (parts: readonly string[]): string => [...new Set(parts.filter(Boolean))].join('\n').slice(0, 20_000);

/** The first that was told, or null. */
const told = <T>(values: readonly (T | null)[]): T | null => values.find((value) => value !== null) ?? null;

/**
 * One garment of several entries that show it: the first, with the photos and the notes of all. What the first does not say, the next that
 * says it does; a name or kind that the user gave wins over one that was suggested.
 */
export function joinedGarment(first: GarmentDetails, rest: readonly GarmentDetails[]): GarmentDetails {
	const all = [first, ...rest];
	const called = all.find(({ nameFrom }) => nameFrom === 'user') ?? first;
	const named = all.find(({ kindFrom }) => kindFrom === 'user') ?? first;
	return {
		...first,
		name: called.name,
		...(called.nameFrom ? { nameFrom: called.nameFrom } : {}),
		kind: named.kind,
		kindFrom: named.kindFrom,
		photoIds: [...new Set(all.flatMap(({ photoIds }) => photoIds))],
		price: told(all.map(({ price }) => price)),
		boughtOn: told(all.map(({ boughtOn }) => boughtOn)),
		loved: told(all.map(({ loved }) => loved)),
		warmth: told(all.map(({ warmth }) => warmth)),
		patternByUser: told(all.map(({ patternByUser }) => patternByUser)),
		wayOut: told(all.map(({ wayOut }) => wayOut)),
		yearParts: all.find(({ yearParts }) => yearParts.length > 0)?.yearParts ?? [],
		basic: all.some(({ basic }) => basic),
		notes: texts(all.map(({ notes }) => notes)),
		care: texts(all.map(({ care }) => care)),
	};
}
