import { moneyText, numberText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
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
	if (!wish) return { allowed: false, sentence: say('candidates.newNoWish') };
	const wanted = Math.max(0, daysBetween(wish.wantedSince, today));
	const left = season.waitingDays - wanted;
	return left > 0
		? { allowed: false, sentence: say('candidates.newWaits', { days: say('counts.days', { count: left }) }) }
		: { allowed: true, sentence: say('candidates.newOpen', { days: say('counts.days', { count: wanted }) }) };
}

function costSentence({ expectedCostPerWear, usualCostPerWear }: CandidateFacts): string {
	if (expectedCostPerWear === null) return say('candidates.noPrice');
	if (expectedCostPerWear === 0) return say('candidates.free');
	const cost = moneyText(expectedCostPerWear);
	return usualCostPerWear === null
		? say('candidates.costs', { cost })
		: say('candidates.costsUsual', { cost, usual: moneyText(usualCostPerWear) });
}

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
		wish ? say('candidates.answers', { wish: wish.name }) : say('candidates.noWish'),
		(alike ?? twins[0])?.sentence,
		partnerCount > 0
			? say('candidates.goesWith', {
					count: partnerCount,
					outfits: say('counts.outfits', { count: outfitsAdded }),
				})
			: say('candidates.goesWithNothing'),
		limit !== null && candidate.price !== null
			? say(overLimit ? 'candidates.over' : 'candidates.within', {
					price: numberText(candidate.price),
					limit: numberText(limit),
				})
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
	return { recommendation, reasons, sentence: say(`candidates.${recommendation}`) };
}
