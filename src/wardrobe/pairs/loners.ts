import { distanceBetween, liesWithin, packLabs } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { isNeutral } from '../../colour/neutrality.ts';
import { partsWornIn } from '../days/in-season.ts';
import { fitsPalette, nearestColour } from '../fit/fit.ts';
import { rereadsOf } from '../fit/rereads.ts';
import { REACH } from '../palette/palette-reach.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import { mainSwatch, seenSwatches } from '../words/main-colour.ts';
import { pairLightnessWeight } from '../words/photo-distance.ts';
import type { Trust } from '../words/reading.ts';
import { alonenessOf, carrierOf } from './aloneness.ts';
import type { Loner } from './loner.ts';
import { lonerSentence } from './loner-sentence.ts';
import { type PairTable, pairTable } from './pair-table.ts';
import type { PairContext } from './support.ts';

/** From here on a piece stands alone: three flags in ten real sets of 33 garments, see bench/NOTES.md. */
const ALONE_FROM = 117;

/** With fewer possible partners nothing can be said (measured on wardrobes of nine real outfits). */
const LEAST_POSSIBLE_PARTNERS = 4;

/** Share of re-reads in which it must hold, and in which it is sure. */
const HELD_FROM = 0.7;
const SURE_FROM = 0.95;

/** Most that are flagged at a time: about half of such flags change when all garments are photographed again. */
const FLAGGED_AT_MOST = 3;

/** Most that are ranked and re-read, unless more are asked for: the ranking is looked at from the top. */
const RANKED_AT_MOST = 12;

/** A coloured garment outside the palette that nothing joins to another, with the garments that it could be worn with. */
type Candidate = {
	readonly garment: Garment;
	readonly index: number;
	readonly main: Lab65;
	readonly partners: readonly number[];
};

/** What the ranking looks at: those with enough possible partners. */
function candidatesIn(table: PairTable, context: PairContext): Candidate[] {
	const coloured = [...table.garments.keys()].filter((index) => table.garments[index]!.swatches.length > 0);
	return table.garments.flatMap((garment, index) => {
		const main = mainSwatch(garment)?.lab;
		if (!main || isNeutral(main)) return [];
		if (fitsPalette(garment, context.palette) || table.joined(index)) return [];
		const partners = coloured.filter((other) => other !== index && table.together(index, other));
		return partners.length >= LEAST_POSSIBLE_PARTNERS ? [{ garment, index, main, partners }] : [];
	});
}

/** Shoes, accessories and legwear show little cloth. */
const isSmall = ({ kind }: Garment): boolean => ['shoes', 'accessory', 'legwear'].includes(slotOfKind(kind));

/** The partner that wears nearly the same colour, in its main part or another that is seen: the nearest; null where none does. With one nothing is alone. */
function echoOf(main: Lab65, trust: Trust, partners: readonly Garment[]): Garment | null {
	let echo: Garment | null = null;
	let nearest = Number.POSITIVE_INFINITY;
	for (const partner of partners) {
		const weight = pairLightnessWeight(trust.untold, partner.trust.untold);
		for (const { lab } of seenSwatches(partner)) {
			if (!liesWithin(lab, main, REACH, weight)) continue;
			const distance = distanceBetween(lab, main);
			if (distance >= nearest) continue;
			echo = partner;
			nearest = distance;
		}
	}
	return echo;
}

/**
 * The partner that could carry a loud piece: as large as it, and worn at the same time of the year; trousers are, boots and bags are not, unless there is nothing
 * else. `labs`: the partners' main colours.
 */
function carrierAmong(garment: Garment, main: Lab65, partners: readonly Garment[], labs: readonly Lab65[]): Garment {
	const all = [...partners.keys()];
	const parts = partsWornIn(garment);
	const large = all.filter((at) => !isSmall(partners[at]!) && (partsWornIn(partners[at]!) & parts) !== 0);
	const carriers = large.length > 0 ? large : all;
	const best = carrierOf(
		main,
		carriers.map((at) => labs[at]!),
	);
	return partners[carriers[best]!]!;
}

/**
 * The coloured garments outside the palette, the most alone first, at most three of them flagged as perhaps going with nothing. `seed` fixes the re-reads. Empty without coloured garments outside
 * the palette, or with too few garments to say anything.
 */
export function lonersOf(
	garments: readonly Garment[],
	context: PairContext,
	options: { readonly seed?: number; readonly table?: PairTable; readonly limit?: number } = {},
): Loner[] {
	const table = options.table ?? pairTable(garments, context);
	const mains = table.garments.map((garment) => mainSwatch(garment)?.lab ?? null);
	const alone = (main: Lab65, partners: Float64Array) =>
		alonenessOf(main, partners, nearestColour(main, context.palette)?.margin ?? null);
	const furthest = candidatesIn(table, context)
		.map((candidate) => {
			const asRead = packLabs(candidate.partners.map((partner) => mains[partner]!));
			return { ...candidate, aloneness: alone(candidate.main, asRead) };
		})
		.sort((one, other) => other.aloneness - one.aloneness || (one.garment.id < other.garment.id ? -1 : 1))
		.slice(0, options.limit ?? RANKED_AT_MOST);
	const rereads = furthest.length > 0 ? rereadsOf(table.garments, options.seed ?? 1) : [];
	/** Share of the re-reads in which the candidate stands alone. */
	const heldShare = ({ index, main, partners }: Candidate): number =>
		rereads.filter(({ shifted }) => {
			const packed = packLabs(partners.map((partner) => shifted(partner, mains[partner]!)));
			return alone(shifted(index, main), packed) >= ALONE_FROM;
		}).length / rereads.length;
	const judged = furthest.map((candidate) => {
		const partners = candidate.partners.map((partner) => table.garments[partner]!);
		const echo = echoOf(candidate.main, candidate.garment.trust, partners);
		const isAlone = candidate.aloneness >= ALONE_FROM && !echo;
		return { ...candidate, partners, echo, isAlone, held: isAlone ? heldShare(candidate) : 0 };
	});
	const holding = judged.filter(({ held }) => held >= HELD_FROM);
	const flagged = new Set(holding.slice(0, FLAGGED_AT_MOST));
	return judged.map((one, position) => {
		const { garment, main, aloneness, partners, echo, isAlone, held } = one;
		const labs = partners.map((partner) => mainSwatch(partner)!.lab);
		const carrier = echo ?? carrierAmong(garment, main, partners, labs);
		const sureness = held >= SURE_FROM ? 'surer' : 'unsure';
		const facts = { holds: holding.includes(one), sureness, isAlone, echoed: echo !== null } as const;
		return {
			garmentId: garment.id,
			rank: position + 1,
			flagged: flagged.has(one),
			aloneness,
			nearestDistance: Math.min(...labs.map((lab) => distanceBetween(lab, main))),
			carrierId: carrier.id,
			possiblePartners: partners.length,
			held,
			sureness,
			sentence: lonerSentence(garment.name, carrier.name, facts),
		};
	});
}
