import { gapsNow } from '../wardrobe/gaps/season-gaps.ts';
import { buildLineUp } from '../wardrobe/line-up/line-up.ts';
import type { LineUpRequest } from '../wardrobe/line-up/line-up-choices.ts';
import { swapsFor } from '../wardrobe/line-up/swaps.ts';
import { whatIf } from '../wardrobe/line-up/what-if.ts';
import { pairContextOf } from '../wardrobe/pairs/pair-context.ts';
import { type Partner, partnersOf } from '../wardrobe/pairs/partners.ts';
import { seasonReport } from '../wardrobe/season/report.ts';
import { checkCandidate } from '../wardrobe/wishes/candidate-check.ts';
import type { SeasonInput } from '../wardrobe/words/season-input.ts';
import { proveLineUp } from './prove-line-up.ts';

/** Everything that is here and goes with one garment, best first. */
function partnersHere(input: SeasonInput, garmentId: string): Partner[] {
	const here = input.garments.filter(({ id, place }) => place !== 'gone' || id === garmentId);
	return partnersOf(here.find(({ id }) => id === garmentId)!, here, pairContextOf(input));
}

/** What is worked out of a season's whole input and of what is asked, and needs nothing else: so a thread can do it as well. */
export const JUDGEMENTS = {
	report: (input: SeasonInput, _asked: null) => seasonReport(input),
	/** The gaps as they stand in the list. */
	gapIds: (input: SeasonInput, _asked: null): readonly string[] => gapsNow(input).map(({ id }) => id),
	partners: partnersHere,
	candidate: (input: SeasonInput, id: string) => checkCandidate(input.candidates.find((one) => one.id === id)!, input),
	swaps: (input: SeasonInput, asked: Parameters<typeof swapsFor>[1]) => swapsFor(input, asked),
	whatIf: (input: SeasonInput, change: Parameters<typeof whatIf>[1]) => whatIf(input, change),
	lineUp: (input: SeasonInput, request: LineUpRequest) => buildLineUp(input, request),
	proof: (
		input: SeasonInput,
		{ request, garmentIds }: { readonly request: LineUpRequest; readonly garmentIds: readonly string[] },
		signal: AbortSignal | null,
	) => proveLineUp(input, request, { garmentIds, signal }),
} as const;

export type JudgementName = keyof typeof JUDGEMENTS;

/** Judges by name, here or in a thread; `signal` stops what can be stopped. */
export type Judge = <Name extends JudgementName>(
	name: Name,
	input: SeasonInput,
	asked: Parameters<(typeof JUDGEMENTS)[Name]>[1],
	signal?: AbortSignal | null,
) => Promise<Awaited<ReturnType<(typeof JUDGEMENTS)[Name]>>>;

/** Judges here and now. */
export const judgeHere: Judge = async (name, input, asked, signal = null) => {
	// One of them by its name: the compiler cannot follow that what is asked fits it.
	const judgement = JUDGEMENTS[name] as (input: SeasonInput, asked: unknown, signal: AbortSignal | null) => never;
	return judgement(input, asked, signal);
};
