import { deltaE2000Of } from '../colour/delta-e-many.ts';
import { type Fit, fitOf } from './fit.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
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
export const asGarment = (candidate: Candidate): Garment => ({
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
	const counts = new Map<string, number>();
	for (const { garmentId } of input.wears) counts.set(garmentId, (counts.get(garmentId) ?? 0) + 1);
	const worn = input.garments.filter(({ id, kind }) => slotOfKind(kind) === slot && (counts.get(id) ?? 0) > 0);
	return {
		costPerWear: median(worn.flatMap(({ id, price }) => (price === null ? [] : [price / counts.get(id)!]))),
		wearsPerYear: median(worn.map(({ id }) => counts.get(id)!)),
	};
}

function judged(
	check: Omit<CandidateCheck, 'recommendation' | 'reasons' | 'sentence'>,
	candidate: Candidate,
	wish: Wish | null,
): Pick<CandidateCheck, 'recommendation' | 'reasons' | 'sentence'> {
	const { fit, twins, partnerCount, outfitsAdded, expectedCostPerWear, usualCostPerWear } = check;
	const overLimit = wish?.priceLimit != null && candidate.price !== null && candidate.price > wish.priceLimit;
	const alike = twins.find(({ sureness }) => sureness === 'alike');
	const reasons = [
		fit.sentence,
		wish ? `It answers the wish "${wish.name}".` : 'It answers no open wish.',
		alike ? alike.sentence : twins[0]?.sentence,
		partnerCount > 0
			? `${partnerCount} of your garments go with it, and it would add ${outfitsAdded} outfits.`
			: 'Nothing you own is known to go with it.',
		overLimit ? `It costs ${candidate.price}, over your limit of ${wish!.priceLimit}.` : undefined,
		expectedCostPerWear === null
			? 'No price is told, so its cost per wear cannot be said.'
			: `About ${expectedCostPerWear.toFixed(2)} a wear${usualCostPerWear === null ? '' : `, where such pieces of yours cost ${usualCostPerWear.toFixed(2)}`}.`,
		candidate.used ? undefined : 'It is new: used comes first, until the waiting time of the wish is over.',
	].filter((reason) => reason !== undefined);
	const against = [fit.verdict === 'off', alike !== undefined, partnerCount === 0, overLimit].filter(Boolean).length;
	const recommendation: Recommendation =
		fit.verdict === 'unsure' && against === 0
			? 'ask'
			: against >= 2 || fit.verdict === 'off'
				? 'leave'
				: wish && against === 0
					? 'take'
					: 'think';
	const words: Readonly<Record<Recommendation, string>> = {
		take: 'Worth taking: it answers a wish and fits.',
		think: 'Think about it: something speaks against it, or no wish asks for it.',
		leave: 'Leave it.',
		ask: 'Ask the seller for a photo beside a sheet of white paper: this one does not tell its colour well enough.',
	};
	return { recommendation, reasons, sentence: words[recommendation] };
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
	return { ...check, ...judged(check, candidate, wish) };
}
