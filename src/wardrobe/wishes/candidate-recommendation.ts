import { numberText } from '../../language/numbers.ts';
import { say } from '../../language/speak.ts';
import { FITS_FROM_PERCENT, NEAR_FROM_PERCENT } from '../fit/fit-score.ts';
import { outfitsText } from '../pairs/outfit-range.ts';
import { daysBetween } from '../words/days-between.ts';
import type { Candidate, SeasonInput } from '../words/season-input.ts';
import type { Wish } from '../words/wish.ts';
import type { CandidateFacts, CandidateRecommendation, Recommendation } from './candidate.ts';

/** Whether a new piece is allowed, and why; null for a used one, and where somebody who wishes for it waits for nothing. */
function newness(
	{ used }: Candidate,
	wish: Wish | null,
	{ season, today }: SeasonInput,
): { allowed: boolean; sentence: string } | null {
	if (used) return null;
	if (!wish) return { allowed: false, sentence: say('candidates.newNoWish') };
	if (season.waitingDays === 0) return null;
	const wanted = Math.max(0, daysBetween(wish.wantedSince, today));
	const left = season.waitingDays - wanted;
	return left > 0
		? { allowed: false, sentence: say('candidates.newWaits', { days: say('counts.inDays', { count: left }) }) }
		: { allowed: true, sentence: say('candidates.newOpen', { days: say('counts.forDays', { count: wanted }) }) };
}

/** An amount that rests on a guess of how often a piece is worn: two digits. */
const aboutText = (amount: number): string => numberText(Number(amount.toPrecision(2)));

/** What a wear would cost; null where nobody expects to wear it. */
function costSentence({ expectedCostPerWear, usualCostPerWear }: CandidateFacts, price: number | null): string | null {
	if (price === null) return say('candidates.noPrice');
	if (expectedCostPerWear === null) return null;
	if (expectedCostPerWear === 0) return say('candidates.free');
	const cost = aboutText(expectedCostPerWear);
	return usualCostPerWear === null
		? say('candidates.costs', { cost })
		: say('candidates.costsUsual', { cost, usual: aboutText(usualCostPerWear) });
}

/** A recommendation with the reason that weighs most. */
type Decision = { readonly recommendation: Recommendation; readonly because: string };

/** What is decided if the piece's colour were as told: one thing against it is to be thought about, two are too many, and so is a colour off the palette. */
function decided(
	likely: CandidateFacts['fit']['likely'],
	fitSentence: string,
	wanted: string | null,
	against: readonly string[],
): Decision {
	if (likely === 'off') return { recommendation: 'leave', because: fitSentence };
	if (against.length >= 2) return { recommendation: 'leave', because: against[0]! };
	if (against.length === 1) return { recommendation: 'think', because: against[0]! };
	if (wanted === null) return { recommendation: 'think', because: say('candidates.noWish') };
	return likely === 'fits'
		? { recommendation: 'take', because: wanted }
		: { recommendation: 'think', because: fitSentence };
}

/** The verdicts that the photo leaves room for, the best and the worst. */
const verdictsOf = ({
	verdict,
	likely,
	low,
	high,
}: CandidateFacts['fit']): readonly CandidateFacts['fit']['likely'][] =>
	verdict !== 'unsure'
		? [likely]
		: [high >= FITS_FROM_PERCENT ? 'fits' : 'near', low < NEAR_FROM_PERCENT ? 'off' : 'near'];

/**
 * What to do about a candidate, and the reason that weighs: `own` where it is owned; `take` where a wish or a gap asks for it, it fits and nothing speaks against it; `leave` where its colour is off
 * or two things speak against it; `ask` for a better photo only where that could change the answer; else `think`.
 */
export function recommendationOf(
	check: CandidateFacts,
	candidate: Candidate,
	wish: Wish | null,
	input: SeasonInput,
): CandidateRecommendation {
	const { fit, twins, partnerCount, outfitsAdded, ownedName, fills } = check;
	const limit = wish?.priceLimit ?? null;
	const isOver = limit !== null && candidate.price !== null && candidate.price > limit;
	const twin = twins[0]?.sentence ?? null;
	const fresh = newness(candidate, wish, input);
	const answers = wish ? say('candidates.answers', { wish: wish.name }) : null;
	const price =
		limit !== null && candidate.price !== null
			? say(isOver ? 'candidates.over' : 'candidates.within', {
					price: numberText(candidate.price),
					limit: numberText(limit),
				})
			: null;
	const partners =
		partnerCount > 0
			? outfitsAdded.to > 0
				? say('candidates.goesWith', { count: partnerCount, outfits: outfitsText(outfitsAdded) })
				: say('candidates.goesWithAlone', { count: partnerCount })
			: say('candidates.goesWithNothing');
	const reasons = [
		fit.sentence,
		answers ?? fills ?? say('candidates.noWish'),
		twin,
		partners,
		price,
		costSentence(check, candidate.price),
		fresh?.sentence ?? null,
	].filter((reason) => reason !== null);
	if (ownedName !== null)
		return { recommendation: 'own', reasons, sentence: say('candidates.own', { name: ownedName }) };
	// What does not hang on the photo's colour speaks against a piece however badly its colour is known.
	const whateverItsColour = [isOver ? price : null, fresh?.allowed === false ? fresh.sentence : null];
	const byColour = [twin, partnerCount === 0 ? partners : null];
	const against = [...whateverItsColour, ...byColour].filter((reason) => reason !== null);
	const decide = (likely: CandidateFacts['fit']['likely']) => decided(likely, fit.sentence, answers ?? fills, against);
	const possible = new Set(verdictsOf(fit).map((likely) => decide(likely).recommendation));
	const isForced = whateverItsColour.some((reason) => reason !== null);
	if (possible.size > 1 && !isForced && input.palette.colours.length > 0)
		return { recommendation: 'ask', reasons, sentence: say('candidates.ask') };
	// Without a palette nothing is off it.
	const { recommendation, because } = decide(input.palette.colours.length === 0 ? 'near' : fit.likely);
	const key = {
		take: 'candidates.takeBecause',
		think: 'candidates.thinkBecause',
		leave: 'candidates.leaveBecause',
	} as const;
	return { recommendation, reasons, sentence: say(key[recommendation as keyof typeof key], { because }) };
}
