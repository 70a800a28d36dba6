import type { SeasonInput } from '../words/season-input.ts';
import { bySlot, SLOTS, type Slot } from '../words/slot.ts';
import { columnOf } from './line-up-model.ts';
import { bestSet, type ScoredSet, scoreOf } from './line-up-search.ts';
import { type LineUpRequest, type LineUpSetup, lineUpSetup } from './line-up-setup.ts';

/** How good the set is known to be. */
export type LineUpProof =
	| { readonly kind: 'best-possible' }
	| { readonly kind: 'within'; readonly percent: number }
	| { readonly kind: 'best-found' };

export type LineUpResult = {
	/** By slot, then by id. */
	readonly garmentIds: readonly string[];
	readonly countBySlot: Readonly<Record<Slot, number>>;
	readonly outfits: number;
	/** Outfits if everything in it went with everything. */
	readonly ceiling: number;
	/** The parts of the objective, 0..1 each, before their weights. */
	readonly parts: { readonly outfits: number; readonly fit: number; readonly loved: number };
	readonly objective: number;
	readonly proof: LineUpProof;
	readonly sentence: string;
	/** What of the wishes cannot be met, and by how much; empty when all is. */
	readonly problems: readonly string[];
};

/** Beyond this the bound is too loose to be worth telling. */
const LOOSE_PERCENT = 50;

/** What a bound that no set exceeds says of a set; `slack` is the bound's own rounding. */
function proofOf({ objective }: ScoredSet, bound: number, slack = 1e-9): LineUpProof {
	if (objective >= bound - slack) return { kind: 'best-possible' };
	const percent = 100 * (1 - objective / bound);
	return percent <= LOOSE_PERCENT ? { kind: 'within', percent } : { kind: 'best-found' };
}

function proofWords(proof: LineUpProof): string {
	if (proof.kind === 'best-possible') return 'it is the best possible';
	if (proof.kind === 'within') return `it is within ${Math.ceil(proof.percent)} % of the best possible`;
	return 'it is the best found, not proven';
}

/** The result of a chosen set, in the terms shown. */
function resultOf(
	{ garments, problem, problems }: LineUpSetup,
	{ members, outfits, parts, objective }: ScoredSet,
	proof: LineUpProof,
): LineUpResult {
	const { slots, ceiling, size } = problem;
	const inOrder = SLOTS.flatMap((slot) =>
		members.filter((member) => slots[member] === slot).sort((a, b) => (garments[a]!.id < garments[b]!.id ? -1 : 1)),
	);
	const share = Math.round(100 * parts.outfits);
	return {
		garmentIds: inOrder.map((member) => garments[member]!.id),
		countBySlot: bySlot((slot) => members.filter((member) => slots[member] === slot).length),
		outfits,
		ceiling,
		parts,
		objective,
		proof,
		sentence:
			members.length === 0
				? size === 0
					? 'No slot asks for a garment: set how many you want of each.'
					: 'There is nothing to choose from yet: add garments, or put some on the rail.'
				: `${members.length} garments make ${outfits} supported outfits, ${share} % of what a full set could make if everything went together; ${proofWords(proof)}.`,
		problems,
	};
}

/**
 * The set for the season: the best that 50 seeded searches find under the quotas, with a bound that says how good it is. Deterministic; the order of
 * the garments changes nothing. Under a second at 240 garments.
 */
export function buildLineUp(input: SeasonInput, request: LineUpRequest): LineUpResult {
	const setup = lineUpSetup(input, request);
	const score = bestSet(setup.problem);
	return resultOf(setup, score, proofOf(score, setup.problem.bound));
}

/** HiGHS keeps its rows to a millionth, so its bound is not finer. */
const SOLVER_SLACK = 1e-6;

/**
 * The result of a search that a solver of `lineUpModel` has looked at: the better of the two sets, with the lower of the two bounds. `answer`
 * holds the columns chosen and a bound; null where the search's own bound was enough.
 */
export function provenResult(
	setup: LineUpSetup,
	found: ScoredSet,
	answer: { readonly bound: number; readonly chosen: readonly string[] | null } | null,
): LineUpResult {
	const { problem } = setup;
	if (!answer) return resultOf(setup, found, proofOf(found, problem.bound));
	const chosen = new Set(answer.chosen ?? []);
	const solved = scoreOf(
		problem,
		problem.slots.flatMap((_, member) => (chosen.has(columnOf(member)) ? [member] : [])),
	);
	const best = solved.objective > found.objective + SOLVER_SLACK ? solved : found;
	return resultOf(setup, best, proofOf(best, Math.min(problem.bound, answer.bound), SOLVER_SLACK));
}
