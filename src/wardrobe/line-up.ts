import { type LineUpProblem, lineUpProblem } from './line-up-problem.ts';
import { bestSet, type ScoredSet, scoreOf } from './line-up-search.ts';
import type { Quotas } from './season.ts';
import type { SeasonInput } from './season-input.ts';
import { SLOTS, type Slot } from './slot.ts';

/** What is asked of a line-up. */
export type LineUpRequest = {
	readonly quotas: Quotas;
	readonly targetCount: number;
	readonly mustKeep: readonly string[];
	readonly neverUse: readonly string[];
};

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

function proofOf(score: ScoredSet, problem: LineUpProblem): LineUpProof {
	const bound = problem.bound;
	if (score.objective >= bound - 1e-9) return { kind: 'best-possible' };
	const percent = 100 * (1 - score.objective / bound);
	return percent <= LOOSE_PERCENT ? { kind: 'within', percent } : { kind: 'best-found' };
}

const PROOF_WORDS = (proof: LineUpProof): string =>
	proof.kind === 'best-possible'
		? 'no other set can do better'
		: proof.kind === 'within'
			? `at most ${Math.ceil(proof.percent)} % below the best possible`
			: 'the best of 50 searches, not proven';

/** The result of a chosen set, in the terms shown. */
export function resultOf(problem: LineUpProblem, score: ScoredSet, proof: LineUpProof): LineUpResult {
	const members = [...score.members].sort((a, b) => {
		const [one, other] = [problem.garments[a]!, problem.garments[b]!];
		return (
			SLOTS.indexOf(problem.table.slots[a]!) - SLOTS.indexOf(problem.table.slots[b]!) || (one.id < other.id ? -1 : 1)
		);
	});
	const countBySlot = Object.fromEntries(
		SLOTS.map((slot) => [slot, members.filter((member) => problem.table.slots[member] === slot).length]),
	);
	const share = score.ceiling > 0 ? Math.round((100 * score.outfits) / score.ceiling) : 0;
	return {
		garmentIds: members.map((member) => problem.garments[member]!.id),
		countBySlot: countBySlot as Record<Slot, number>,
		outfits: score.outfits,
		ceiling: score.ceiling,
		parts: score.parts,
		objective: score.objective,
		proof,
		sentence:
			members.length === 0
				? 'There is nothing to choose from yet: add garments, or put some on the rail.'
				: `${members.length} garments make ${score.outfits} supported outfits, ${share} % of what as many pieces could make if everything went together; ${PROOF_WORDS(proof)}.`,
		problems: problem.problems,
	};
}

/**
 * The set for the season: the best that 50 seeded searches find under the quotas, with a bound that says how good it is. Deterministic; the order of
 * the garments changes nothing. Under a second at 240 garments.
 */
export function buildLineUp(input: SeasonInput, request: LineUpRequest): LineUpResult {
	const problem = lineUpProblem(input, request);
	const score = bestSet(problem);
	return resultOf(problem, score, proofOf(score, problem));
}

/** What a set would be after taking out `remove` and putting in `add`, without searching. */
export function whatIf(
	input: SeasonInput,
	change: {
		readonly garmentIds: readonly string[];
		readonly remove: readonly string[];
		readonly add: readonly string[];
	},
): {
	readonly before: LineUpResult;
	readonly after: LineUpResult;
	readonly outfitsChange: number;
	readonly sentence: string;
} {
	const { quotas, targetCount } = input.season;
	const problem = lineUpProblem(input, { quotas, targetCount, mustKeep: [], neverUse: [] });
	const wanted = new Set(change.garmentIds.filter((id) => !change.remove.includes(id)).concat(change.add));
	const indices = (ids: ReadonlySet<string>) =>
		problem.garments.flatMap(({ id }, index) => (ids.has(id) ? [index] : []));
	const tell = (ids: ReadonlySet<string>) => resultOf(problem, scoreOf(problem, indices(ids)), { kind: 'best-found' });
	const before = tell(new Set(change.garmentIds));
	const after = tell(wanted);
	const outfitsChange = after.outfits - before.outfits;
	const how =
		outfitsChange === 0
			? 'as many outfits'
			: `${Math.abs(outfitsChange)} outfits ${outfitsChange > 0 ? 'more' : 'fewer'}`;
	return {
		before,
		after,
		outfitsChange,
		sentence: `${after.garmentIds.length} garments, ${after.outfits} outfits: ${how}.`,
	};
}
