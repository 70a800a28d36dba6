import { liesWithin } from '../../colour/delta-e-many.ts';
import { SAME_SIDE_BY_SIDE } from '../../colour/same-colour.ts';
import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch } from '../words/main-colour.ts';
import { distanceAcrossPhotos } from '../words/photo-distance.ts';
import { looksPlain, SURE_OF_PATTERN } from '../words/plain-looking.ts';
import { mayBeOneColour, type SeenColour, twinChances } from './twin-chance.ts';

/** What a twin is judged by: a garment, or a candidate with its kind. */
export type TwinSide = Pick<Garment, 'id' | 'name' | 'kind' | 'swatches' | 'trust' | 'pattern'>;

/** Two pieces of one kind that are likely the same colour. */
export type Twin = {
	readonly garmentA: string;
	readonly garmentB: string;
	/** CIEDE2000 of their main colours; lightness counts less where the light of one photo is not told. */
	readonly distance: number;
	/** How likely they are one colour, 0..1, see `twinChances`. */
	readonly chance: number;
	/** `alike` up to {@link SAME_SIDE_BY_SIDE} where the photos can tell that; else `maybe`. */
	readonly sureness: 'alike' | 'maybe';
	readonly sentence: string;
};

/** Pieces of one kind that their photos do not tell apart, and of which nobody can say whether they are twins. */
export type TooClose = { readonly garmentIds: readonly string[]; readonly sentence: string };

/** Two photos that together err by no more than this can say that two pieces are alike: paper and a grey card beside both (5 each). */
const TELLS_ALIKE = 7.5;

/** From here on a twin is worth telling: nine of ten such pairs were one garment photographed twice, see bench/NOTES.md. */
const LIKELY_FROM = 0.4;

const patternsDiffer = (one: TwinSide, other: TwinSide): boolean =>
	one.pattern.type !== other.pattern.type &&
	!(looksPlain(one.pattern) && looksPlain(other.pattern)) &&
	Math.min(one.pattern.sure, other.pattern.sure) >= SURE_OF_PATTERN;

/** A piece with its main colour. */
type Coloured = TwinSide & SeenColour;

const coloured = (side: TwinSide): Coloured[] => {
	const lab = mainSwatch(side)?.lab;
	return lab ? [{ ...side, lab }] : [];
};

/** What the photos leave open about two pieces; null where they are of another kind, clearly another pattern, or another colour. */
type Relation = Pick<Twin, 'distance' | 'chance' | 'sureness'>;

/** Tells how two pieces stand to each other among the pieces of a wardrobe. */
function relationsIn(wardrobe: readonly Coloured[]): (one: Coloured, other: Coloured) => Relation | null {
	const chanceOf = twinChances(wardrobe);
	const counts = new Map<string, number>();
	for (const { kind } of wardrobe) counts.set(kind, (counts.get(kind) ?? 0) + 1);
	return (one, other) => {
		// Nobody minds two pairs of black socks.
		if (one.kind !== other.kind || slotOfKind(one.kind) === 'legwear' || patternsDiffer(one, other)) return null;
		// What lightness was left out of is no proof of likeness.
		const tells =
			!one.trust.untold && !other.trust.untold && Math.hypot(one.trust.error, other.trust.error) <= TELLS_ALIKE;
		const alike = tells && liesWithin(one.lab, other.lab, SAME_SIDE_BY_SIDE);
		if (!alike && !mayBeOneColour(one, other)) return null;
		const distance = distanceAcrossPhotos(one.lab, other.lab, [one.trust, other.trust]);
		const chance = chanceOf(one, other, counts.get(one.kind)!);
		return { distance, chance, sureness: alike ? 'alike' : 'maybe' };
	};
}

const isTold = ({ sureness, chance }: Relation): boolean => sureness === 'alike' || chance >= LIKELY_FROM;

function twinFrom(one: TwinSide, other: TwinSide, relation: Relation): Twin {
	const words = { one: one.name, other: other.name };
	const { sureness } = relation;
	const sentence = say(one.name === other.name ? `twins.${sureness}Namesake` : `twins.${sureness}`, words);
	return { garmentA: one.id, garmentB: other.id, ...relation, sentence };
}

const likeliestFirst = (one: Relation, other: Relation): number =>
	Number(other.sureness === 'alike') - Number(one.sureness === 'alike') ||
	(one.sureness === 'alike' ? one.distance - other.distance : other.chance - one.chance);

/** Most twins of one piece that are named. */
const NAMED_AT_MOST = 3;

/** Of pieces that are owned the likely twins of one that is not, as if it were: the likeliest first, at most three. */
export function twinsAmong(piece: TwinSide, owned: readonly Garment[]): Twin[] {
	const [one] = coloured(piece);
	if (!one) return [];
	const all = owned.flatMap(coloured);
	const relationOf = relationsIn([...all, one]);
	return all
		.flatMap((other) => {
			const relation = relationOf(one, other);
			return relation && isTold(relation) ? [{ other, relation }] : [];
		})
		.sort((a, b) => likeliestFirst(a.relation, b.relation))
		.slice(0, NAMED_AT_MOST)
		.map(({ other, relation }) => twinFrom(piece, other, relation));
}

/** Most twins that are told: a wardrobe of a thousand equal garments would have half a million. */
const TOLD_AT_MOST = 200;
/** So many pieces must be too close for it to be said. */
const CLOSE_FROM = 3;
/** Pieces too close that are named. */
const CLOSE_NAMED = 3;

type Pair = { readonly one: Coloured; readonly other: Coloured; readonly relation: Relation };

/** All pairs of one kind that may be one colour; each pair once, by id. */
function pairsIn(garments: readonly Garment[]): Pair[] {
	const all = garments.flatMap(coloured).sort((one, other) => (one.id < other.id ? -1 : 1));
	const relationOf = relationsIn(all);
	return [...new Set(all.map(({ kind }) => kind))].flatMap((kind) => {
		const same = all.filter((garment) => garment.kind === kind);
		return same.flatMap((one, index) =>
			same.slice(index + 1).flatMap((other) => {
				const relation = relationOf(one, other);
				return relation ? [{ one, other, relation }] : [];
			}),
		);
	});
}

/** Groups of pieces of which every two are such a pair. */
function groupsOf(pairs: readonly Pair[]): Coloured[][] {
	const close = new Set(pairs.map(({ one, other }) => `${one.id} ${other.id}`));
	const groups: Coloured[][] = [];
	const all = new Map(pairs.flatMap(({ one, other }) => [one, other]).map((piece) => [piece.id, piece]));
	for (const piece of [...all.values()].sort((a, b) => a.lab[0] - b.lab[0] || (a.id < b.id ? -1 : 1))) {
		const group = groups.find((members) =>
			members.every(({ id }) => close.has(id < piece.id ? `${id} ${piece.id}` : `${piece.id} ${id}`)),
		);
		if (group) group.push(piece);
		else groups.push([piece]);
	}
	return groups;
}

function tooClose(group: readonly Coloured[]): TooClose {
	const counts = new Map<string, number>();
	for (const { name } of group) counts.set(name, (counts.get(name) ?? 0) + 1);
	const shown = [...counts].slice(0, CLOSE_NAMED);
	const named = shown.map(([name, count]) => (count > 1 ? say('twins.several', { name, count }) : name));
	const others = group.length - shown.reduce((sum, [, count]) => sum + count, 0);
	const names = others > 0 ? say('twins.andOthers', { names: named.join(', '), count: others }) : named.join(', ');
	const untold = group.some(({ trust }) => trust.untold);
	return {
		garmentIds: group.map(({ id }) => id),
		sentence: say(untold ? 'twins.tooCloseUntold' : 'twins.tooClose', { names }),
	};
}

/**
 * The likely twins among the garments, those surely alike first, then the likeliest, at most `limit`; each pair once. And the pieces that are so close that their photos say nothing. Empty for none
 * or one garment.
 */
export function twinsOf(
	garments: readonly Garment[],
	limit = TOLD_AT_MOST,
): { readonly twins: readonly Twin[]; readonly tooClose: readonly TooClose[] } {
	const pairs = pairsIn(garments);
	const twins = pairs
		.filter(({ relation }) => isTold(relation))
		.sort((a, b) => likeliestFirst(a.relation, b.relation))
		.slice(0, limit)
		.map(({ one, other, relation }) => twinFrom(one, other, relation));
	const open = pairs.filter(({ relation }) => !isTold(relation));
	return {
		twins,
		tooClose: groupsOf(open)
			.filter(({ length }) => length >= CLOSE_FROM)
			.map(tooClose),
	};
}
