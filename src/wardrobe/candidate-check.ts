import { deltaE2000Of } from '../colour/delta-e-many.ts';
import { counted } from './counted.ts';
import { type Fit, fitOf } from './fit.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
import { daysBetween, garmentWears } from './look-back.ts';
import { mainSwatch } from './main-colour.ts';
import { outfitGains } from './missing-piece.ts';
import { type Partner, partnersOf } from './partners.ts';
import { type Candidate, heldGarments, pairContextOf, type SeasonInput } from './season-input.ts';
import { type Twin, twinOf } from './twins.ts';
import type { Wish } from './wish.ts';

export type Recommendation = 'take' | 'think' | 'leave' | 'ask';

/** Everything said of a piece found for sale. */
export type CandidateCheck = {
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
	readonly recommendation: Recommendation;
	readonly reasons: readonly string[];
	readonly sentence: string;
};

const SHOWN_PARTNERS = 8;
/** A piece is expected to serve this long. Common practice, no source. */
const YEARS_OF_SERVICE = 2;
/** Wears a year where neither wish nor wardrobe tells. Common practice, no source. */
const USUAL_WEARS = 15;

function wishFor(candidate: Candidate, wishes: readonly Wish[]): Wish | null {
	const main = mainSwatch(candidate)?.lab;
	const slot = slotOfKind(candidate.kind);
	const answers = wishes
		.filter(
			(wish) => wish.state === 'open' && wish.slot === slot && (wish.kind === null || wish.kind === candidate.kind),
		)
		.map((wish) => ({
			wish,
			distance:
				wish.target && main
					? deltaE2000Of(main[0], main[1], main[2], wish.target[0], wish.target[1], wish.target[2])
					: 0,
		}))
		// A photo cannot tell finer than its trust; half of it is given to the candidate.
		.filter(({ wish, distance }) => distance <= wish.tolerance + candidate.trust.error / 2)
		.sort((a, b) => a.distance - b.distance || (a.wish.id < b.wish.id ? -1 : 1));
	return answers[0]?.wish ?? null;
}

/** The candidate as a garment that would be owned. */
const asGarment = (candidate: Candidate): Garment => ({
	id: candidate.id,
	name: candidate.name,
	kind: candidate.kind,
	kindFrom: candidate.kindFrom,
	photoIds: [candidate.photoId],
	place: 'rail',
	price: candidate.price,
	boughtOn: null,
	yearParts: [],
	basic: false,
	loved: null,
	warmth: null,
	condition: 'good',
	wayOut: null,
	patternByUser: null,
	notes: '',
	care: '',
	addedAt: candidate.addedAt,
	changedAt: candidate.addedAt,
	swatches: candidate.swatches,
	pattern: candidate.pattern,
	trust: candidate.trust,
});

const median = (values: readonly number[]): number | null =>
	[...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? null;

function usualUse(
	candidate: Candidate,
	input: SeasonInput,
): { costPerWear: number | null; wearsPerYear: number | null } {
	const slot = slotOfKind(candidate.kind);
	const own = input.garments.filter(({ kind }) => slotOfKind(kind) === slot);
	const worn = garmentWears(own, input.wears, input.today);
	return {
		costPerWear: median(worn.flatMap(({ costPerWear }) => costPerWear ?? [])),
		wearsPerYear: median(worn.flatMap(({ wearsThisYear }) => (wearsThisYear > 0 ? wearsThisYear : []))),
	};
}

/** Whether a new piece is allowed, and why; null for a used one. */
function newness(
	{ used }: Candidate,
	wish: Wish | null,
	{ season, today }: SeasonInput,
): { allowed: boolean; sentence: string } | null {
	if (used) return null;
	if (!wish) return { allowed: false, sentence: 'It is new, and no wish asks for it: used comes first.' };
	const wanted = Math.max(0, daysBetween(wish.wantedSince, today));
	const left = season.waitingDays - wanted;
	return left > 0
		? { allowed: false, sentence: `It is new: used comes first, and new is open in ${counted(left, 'day')}.` }
		: { allowed: true, sentence: `It is new, which is open now: wanted for ${counted(wanted, 'day')}.` };
}

function costSentence({ expectedCostPerWear, usualCostPerWear }: Judged): string {
	if (expectedCostPerWear === null) return 'No price is told, so its cost per wear cannot be said.';
	if (expectedCostPerWear === 0) return 'It costs nothing.';
	const usual = usualCostPerWear === null ? '' : `; such pieces of yours cost ${usualCostPerWear.toFixed(2)}`;
	return `About ${expectedCostPerWear.toFixed(2)} a wear is expected${usual}.`;
}

type Judged = Omit<CandidateCheck, 'recommendation' | 'reasons' | 'sentence'>;

const RECOMMENDATION_WORDS: Readonly<Record<Recommendation, string>> = {
	take: 'Worth taking: it answers a wish, fits, and nothing speaks against it.',
	think: 'Think about it: something speaks against it, or no wish asks for it.',
	leave: 'Leave it: too much speaks against it.',
	ask: 'Ask the seller for a photo beside a sheet of white paper: this one does not tell its colour well enough.',
};

function judged(
	check: Judged,
	candidate: Candidate,
	wish: Wish | null,
	input: SeasonInput,
): Pick<CandidateCheck, 'recommendation' | 'reasons' | 'sentence'> {
	const { fit, twins, partnerCount, outfitsAdded } = check;
	const limit = wish?.priceLimit ?? null;
	const overLimit = limit !== null && candidate.price !== null && candidate.price > limit;
	const alike = twins.find(({ sureness }) => sureness === 'alike');
	const fresh = newness(candidate, wish, input);
	const reasons = [
		fit.sentence,
		wish ? `It answers the wish "${wish.name}".` : 'It answers no open wish.',
		(alike ?? twins[0])?.sentence,
		partnerCount > 0
			? `${counted(partnerCount, 'garment')} of yours ${partnerCount === 1 ? 'goes' : 'go'} with it, and it would add ${counted(outfitsAdded, 'supported outfit')}.`
			: 'Nothing you own is known to go with it.',
		limit !== null && candidate.price !== null
			? `It costs ${candidate.price}, ${overLimit ? 'over' : 'within'} your limit of ${limit}.`
			: undefined,
		costSentence(check),
		fresh?.sentence,
	].filter((reason) => reason !== undefined);
	// What does not hang on the photo's colour speaks against a piece however badly its colour is known.
	const whateverItsColour = [overLimit, fresh?.allowed === false].filter(Boolean).length;
	const byColour = [fit.verdict === 'off', alike !== undefined, partnerCount === 0].filter(Boolean).length;
	const against = whateverItsColour + byColour;
	const recommend = (): Recommendation => {
		if (fit.verdict === 'off' || whateverItsColour >= 2) return 'leave';
		if (fit.verdict === 'unsure' && whateverItsColour === 0 && input.palette.colours.length > 0) return 'ask';
		if (against >= 2) return 'leave';
		return wish && against === 0 && fit.verdict === 'fits' ? 'take' : 'think';
	};
	const recommendation = recommend();
	return { recommendation, reasons, sentence: RECOMMENDATION_WORDS[recommendation] };
}

/** A piece found for sale against direction, wishes and wardrobe, with a plain recommendation. */
export function checkCandidate(candidate: Candidate, input: SeasonInput): CandidateCheck {
	const garment = asGarment(candidate);
	const owned = input.garments.filter(({ place }) => place !== 'gone');
	const partners = partnersOf(garment, owned, pairContextOf(input));
	const gain = outfitGains(input, [garment], heldGarments(input))[0]!;
	const wish = wishFor(candidate, input.wishes);
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
	return { ...check, ...judged(check, candidate, wish, input) };
}
