import { distanceBetween } from '../../colour/delta-e-many.ts';
import { hueGapDegrees, type Lab65 } from '../../colour/lab65.ts';
import { isNeutral } from '../../colour/neutrality.ts';
import { fitsPalette } from '../fit/fit.ts';
import { rereadsOf } from '../fit/rereads.ts';
import { REACH } from '../palette/palette-reach.ts';
import type { Garment } from '../words/garment.ts';
import { mainSwatch, seenSwatches } from '../words/main-colour.ts';
import type { Loner } from './loner.ts';
import { lonerSentence } from './loner-sentence.ts';
import { type PairTable, pairTable } from './pair-table.ts';
import type { PairContext } from './support.ts';

/**
 * No garment of a complementary slot within this (CIEDE2000). Measured on wardrobes of nine real outfits, with and without a loud garment
 * planted: 20, held in 70 % of re-reads, finds 95 % of the planted ones at 0.38 false flags per 33 garments; 22 finds 90 % at 0.24.
 */
const ALONE_BEYOND = 20;
const SURELY_ALONE_BEYOND = 22;

/** ... and none coloured within this angle of hue, degrees (same measurement). */
const HUE_NEIGHBOUR_WITHIN = 30;

/** With fewer possible partners nothing can be said (same measurement). */
const LEAST_POSSIBLE_PARTNERS = 4;

/** Share of re-reads in which it must hold (same measurement). */
const HELD_FROM = 0.7;

/** Most that are flagged at a time: about half of such flags change when all garments are photographed again. */
const FLAGGED_AT_MOST = 3;

/** Most that are ranked and re-read, unless more are asked for: the ranking is looked at from the top. */
const RANKED_AT_MOST = 12;

type Nearest = { readonly index: number; readonly distance: number; readonly hueNeighbour: boolean };

/**
 * The nearest of the possible partners by main colour, as it was measured, and whether a coloured one of them lies near in hue. A lesser colour of
 * a partner counts only where it echoes the loner: shadows and trim have hues of their own, which say nothing.
 */
function nearestPartner(
	main: Lab65,
	partners: readonly number[],
	/** Main colour first. */
	coloursOf: (partner: number) => readonly Lab65[],
): Nearest {
	let index = -1;
	let distance = Number.POSITIVE_INFINITY;
	let hueNeighbour = false;
	for (const partner of partners) {
		const [own, ...lesser] = coloursOf(partner);
		if (!own) continue;
		let apart = distanceBetween(main, own);
		for (const lab of lesser) {
			const echo = distanceBetween(main, lab);
			if (echo <= REACH && echo < apart) apart = echo;
		}
		if (apart < distance) {
			distance = apart;
			index = partner;
		}
		if (!hueNeighbour && !isNeutral(own) && hueGapDegrees(main, own) <= HUE_NEIGHBOUR_WITHIN) hueNeighbour = true;
	}
	return { index, distance, hueNeighbour };
}

const mainColourFirst = (garment: Garment): Lab65[] => {
	const main = mainSwatch(garment);
	return seenSwatches(garment)
		.slice()
		.sort((one, other) => Number(other === main) - Number(one === main))
		.map(({ lab }) => lab);
};

/** Garments that something beyond colour already joins to a partner: worn, approved, or shown by the inspirations. */
const isJoined = (table: PairTable, index: number): boolean =>
	table.garments.some((_, other) => {
		if (other === index) return false;
		const kind = table.kind(index, other);
		return kind === 'approved' || kind === 'worn' || kind === 'inspired';
	});

/** What the ranking looks at: coloured, outside the palette, joined to nothing, with enough possible partners. */
function candidatesIn(table: PairTable, context: PairContext) {
	return table.garments.flatMap((garment, index) => {
		const main = mainSwatch(garment)?.lab;
		if (!main || isNeutral(main)) return [];
		if (fitsPalette(garment, context.palette) || isJoined(table, index)) return [];
		const partners = Array.from(table.garments.keys()).filter(
			(other) => other !== index && table.together(index, other) && table.garments[other]!.swatches.length > 0,
		);
		if (partners.length < LEAST_POSSIBLE_PARTNERS) return [];
		return [{ garment, index, main, partners }];
	});
}

/**
 * The coloured garments outside the palette, those furthest from every possible partner first, at most three of them flagged as perhaps going with
 * nothing. `seed` fixes the re-reads. Empty without coloured garments outside the palette, or with too few garments to say anything.
 */
export function lonersOf(
	garments: readonly Garment[],
	context: PairContext,
	options: { readonly seed?: number; readonly table?: PairTable; readonly limit?: number } = {},
): Loner[] {
	const table = options.table ?? pairTable(garments, context);
	const seen = table.garments.map(mainColourFirst);
	const rereads = rereadsOf(table.garments, seen, options.seed ?? 1);
	const holds = (nearest: Nearest, beyond: number) => nearest.distance > beyond && !nearest.hueNeighbour;
	const byDistance = (one: { nearest: Nearest; garment: Garment }, other: { nearest: Nearest; garment: Garment }) =>
		other.nearest.distance - one.nearest.distance || (one.garment.id < other.garment.id ? -1 : 1);
	const furthest = candidatesIn(table, context)
		.map((candidate) => {
			const nearest = nearestPartner(candidate.main, candidate.partners, (partner) => seen[partner]!);
			return { ...candidate, nearest, alone: holds(nearest, ALONE_BEYOND) };
		})
		.sort((one, other) => Number(other.alone) - Number(one.alone) || byDistance(one, other))
		.slice(0, options.limit ?? RANKED_AT_MOST);
	const ranked = furthest
		.map((candidate) => {
			const { index, main, partners, nearest, alone } = candidate;
			const reread = alone
				? rereads.map(({ shifted, colours }) => nearestPartner(shifted(index, main), partners, colours))
				: [];
			const share = (beyond: number) =>
				holds(nearest, beyond) ? reread.filter((one) => holds(one, beyond)).length / reread.length : 0;
			return { ...candidate, held: share(ALONE_BEYOND), heldStrictly: share(SURELY_ALONE_BEYOND) };
		})
		.sort((one, other) => Number(other.held >= HELD_FROM) - Number(one.held >= HELD_FROM) || byDistance(one, other));
	return ranked.map(({ garment, nearest, partners, held, heldStrictly }, position) => {
		const partner = table.garments[nearest.index]!;
		const facts = {
			flagged: position < FLAGGED_AT_MOST && held >= HELD_FROM,
			nearestDistance: nearest.distance,
			possiblePartners: partners.length,
			held,
			sureness: heldStrictly >= HELD_FROM ? ('surer' as const) : ('unsure' as const),
		};
		return {
			garmentId: garment.id,
			rank: position + 1,
			nearestGarmentId: partner.id,
			...facts,
			sentence: lonerSentence(garment.name, partner.name, {
				...facts,
				alone: nearest.distance > ALONE_BEYOND,
				hueNeighbour: nearest.hueNeighbour,
			}),
		};
	});
}
