import { counted } from '../words/counted.ts';
import { daysBetween } from '../words/days-between.ts';
import type { Candidate, SeasonInput } from '../words/season-input.ts';
import type { Wish } from '../words/wish.ts';
import type { CandidateFacts, CandidateRecommendation, Recommendation } from './candidate.ts';

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

function costSentence({ expectedCostPerWear, usualCostPerWear }: CandidateFacts): string {
	if (expectedCostPerWear === null) return 'No price is told, so its cost per wear cannot be said.';
	if (expectedCostPerWear === 0) return 'It costs nothing.';
	const usual = usualCostPerWear === null ? '' : `; such pieces of yours cost ${usualCostPerWear.toFixed(2)}`;
	return `About ${expectedCostPerWear.toFixed(2)} a wear is expected${usual}.`;
}

const RECOMMENDATION_WORDS: Readonly<Record<Recommendation, string>> = {
	take: 'Worth taking: it answers a wish, fits, and nothing speaks against it.',
	think: 'Think about it: something speaks against it, or no wish asks for it.',
	leave: 'Leave it: too much speaks against it.',
	ask: 'Ask the seller for a photo beside a sheet of white paper: this one does not tell its colour well enough.',
};

/**
 * What to do about a candidate: `take` where it answers a wish, fits and nothing speaks against it; `leave` where its colour is off or two
 * things speak against it; `ask` for a better photo where the colour decides and cannot be told; else `think`.
 */
export function recommendationOf(
	check: CandidateFacts,
	candidate: Candidate,
	wish: Wish | null,
	input: SeasonInput,
): CandidateRecommendation {
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
