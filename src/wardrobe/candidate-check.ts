import { medianOf } from '../colour/median.ts';
import { answeredWish } from './answered-wish.ts';
import { recommendationOf } from './candidate-recommendation.ts';
import { type Fit, fitOf } from './fit.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
import { garmentWears } from './look-back.ts';
import { outfitGains } from './missing-piece.ts';
import { newGarment } from './new-garment.ts';
import { type Partner, partnersOf } from './partners.ts';
import { type Candidate, heldGarments, pairContextOf, type SeasonInput } from './season-input.ts';
import { type Twin, twinOf } from './twins.ts';

export type Recommendation = 'take' | 'think' | 'leave' | 'ask';

/** What to do about a candidate, and why. */
export type CandidateRecommendation = {
	readonly recommendation: Recommendation;
	/** Everything that was weighed, in sentences. */
	readonly reasons: readonly string[];
	readonly sentence: string;
};

/** Everything said of a piece found for sale. */
export type CandidateCheck = CandidateFacts & CandidateRecommendation;

/** What is found out about a candidate before anything is recommended. */
export type CandidateFacts = {
	readonly candidateId: string;
	readonly fit: Fit;
	/** The open wish it answers best; null where none. */
	readonly wishId: string | null;
	readonly twins: readonly Twin[];
	readonly partnerCount: number;
	readonly partners: readonly Partner[];
	/** Supported outfits it would add to what the season holds, and as a share of a piece that goes with everything. */
	readonly outfitsAdded: number;
	readonly shareOfBest: number;
	/** Price by the wears expected in two years; null where a price is not told. */
	readonly expectedCostPerWear: number | null;
	/** Median cost per wear of what is owned in that slot; null where nothing is known. */
	readonly usualCostPerWear: number | null;
};

const SHOWN_PARTNERS = 8;
/** A piece is expected to serve this long. Common practice, no source. */
const YEARS_OF_SERVICE = 2;
/** Wears a year where neither wish nor wardrobe tells. Common practice, no source. */
const USUAL_WEARS = 15;

/** The candidate as a garment that would be owned. */
function asGarment(candidate: Candidate): Garment {
	const { id, name, addedAt, kind, kindFrom, photoId, price, swatches, pattern, trust } = candidate;
	return { ...newGarment(id, name, addedAt, { kind, kindFrom, photoIds: [photoId], price }), swatches, pattern, trust };
}

/** The median, or null of nothing. */
const medianOrNull = (values: readonly number[]): number | null => (values.length > 0 ? medianOf(values) : null);

function usualUse(
	candidate: Candidate,
	input: SeasonInput,
): { costPerWear: number | null; wearsPerYear: number | null } {
	const slot = slotOfKind(candidate.kind);
	const own = input.garments.filter(({ kind }) => slotOfKind(kind) === slot);
	const worn = garmentWears(own, input.wears, input.today);
	return {
		costPerWear: medianOrNull(worn.flatMap(({ costPerWear }) => costPerWear ?? [])),
		wearsPerYear: medianOrNull(worn.flatMap(({ wearsThisYear }) => (wearsThisYear > 0 ? wearsThisYear : []))),
	};
}

/** A piece found for sale against direction, wishes and wardrobe, with a plain recommendation. */
export function checkCandidate(candidate: Candidate, input: SeasonInput): CandidateCheck {
	const garment = asGarment(candidate);
	const owned = input.garments.filter(({ place }) => place !== 'gone');
	const partners = partnersOf(garment, owned, pairContextOf(input));
	const gain = outfitGains(input, [garment], heldGarments(input))[0]!;
	const wish = answeredWish(candidate, input.wishes)?.wish ?? null;
	const usual = usualUse(candidate, input);
	const wearsPerYear = wish?.expectedWearsPerYear ?? usual.wearsPerYear ?? USUAL_WEARS;
	const check = {
		candidateId: candidate.id,
		fit: fitOf(candidate, input.palette),
		wishId: wish?.id ?? null,
		twins: owned.flatMap((one) => twinOf(garment, one) ?? []).sort((a, b) => a.distance - b.distance),
		partnerCount: partners.length,
		partners: partners.slice(0, SHOWN_PARTNERS),
		outfitsAdded: gain.added,
		shareOfBest: gain.most > 0 ? gain.added / gain.most : 0,
		expectedCostPerWear:
			candidate.price === null || wearsPerYear <= 0 ? null : candidate.price / (wearsPerYear * YEARS_OF_SERVICE),
		usualCostPerWear: usual.costPerWear,
	};
	return { ...check, ...recommendationOf(check, candidate, wish, input) };
}
