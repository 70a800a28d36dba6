import { say } from '../../language/speak.ts';
import { coveredShareBy } from '../gaps/bands.ts';
import { type OutfitRange, rangeOf } from '../pairs/outfit-range.ts';
import { outfitTallies } from '../pairs/outfit-tallies.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { bySlot, SLOTS, type Slot } from '../words/slot.ts';
import type { LineUpRequest } from './line-up-choices.ts';
import { columnOf } from './line-up-model.ts';
import { bestSet } from './line-up-search.ts';
import { type LineUpSetup, lineUpSetup } from './line-up-setup.ts';
import { type ScoredSet, scoreOf, type WorthParts } from './line-up-worth.ts';

/** How good the set is known to be. */
export type LineUpProof =
	| { readonly kind: 'best-possible' }
	| { readonly kind: 'within'; readonly percent: number }
	| { readonly kind: 'best-found' };

export type LineUpResult = {
	/** By slot, then those to prefer on a tie first. */
	readonly garmentIds: readonly string[];
	readonly countBySlot: Readonly<Record<Slot, number>>;
	/** Places that stay open: nothing left is worth one. Each may become a wish. */
	readonly openBySlot: Readonly<Record<Slot, number>>;
	/** Outfits for the season's days. */
	readonly outfits: OutfitRange;
	/** The parts of what it is worth, 0..1 each, before their weights. */
	readonly parts: WorthParts;
	readonly objective: number;
	readonly proof: LineUpProof;
	readonly sentence: string;
	/** What of the wishes cannot be met, and by how much; empty when all is. */
	readonly problems: readonly string[];
	/** A set that is worth more than the one that was to be proven; null where there is none, or none was to be proven. */
	readonly better: LineUpResult | null;
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
	if (proof.kind === 'best-possible') return say('lineUp.best');
	if (proof.kind === 'within') return say('lineUp.within', { percent: Math.ceil(proof.percent) });
	return say('lineUp.found');
}

function sentenceOf(
	{ problem, input, garments }: LineUpSetup,
	{ members, parts }: ScoredSet,
	proof: LineUpProof,
): string {
	if (problem.size === 0) return say('lineUp.noSlot');
	if (members.length === 0) return say('lineUp.nothing');
	const asked = Math.round(problem.askedDays.reduce((sum, days) => sum + days, 0));
	const pictures = problem.pictures.length;
	const held = coveredShareBy(
		input.palette,
		members.map((member) => garments[member]!),
	);
	const told = [
		pictures > 0
			? say('lineUp.wears', {
					worn: Math.round(parts.pictures * pictures),
					total: pictures,
				})
			: '',
		asked > 0 ? say('lineUp.dresses', { dressed: Math.floor(parts.enough * asked + 1e-6), asked }) : '',
		// What is held of the palette is told as everywhere; the part of the worth is measured against a full set.
		problem.colourWeights.length > 0 ? say('lineUp.covers', { percent: Math.round(100 * held) }) : '',
	].filter(Boolean);
	const open = problem.size - members.length;
	const whole = say('lineUp.told', {
		garments: say('counts.garments', { count: members.length }),
		told: [told.slice(0, -1).join(', '), told.at(-1)].filter(Boolean).join(say('inSeason.and')),
		proof: proofWords(proof),
	});
	return open > 0 ? `${whole} ${say('lineUp.open', { count: open })}` : whole;
}

/** The result of a chosen set, in the terms shown. */
function resultOf(
	setup: LineUpSetup,
	score: ScoredSet,
	proof: LineUpProof,
	better: LineUpResult | null = null,
): LineUpResult {
	const { garments, input, problem, problems, table } = setup;
	const { members, parts, objective } = score;
	const inSlot = (slot: Slot) => members.filter((member) => problem.slots[member] === slot).sort((a, b) => a - b);
	return {
		garmentIds: SLOTS.flatMap((slot) => inSlot(slot).map((member) => garments[member]!.id)),
		countBySlot: bySlot((slot) => inSlot(slot).length),
		openBySlot: bySlot((slot) => Math.max(0, problem.places[slot] - inSlot(slot).length)),
		outfits: rangeOf(
			outfitTallies(
				input,
				members.map((member) => garments[member]!),
				[],
				table,
			).held,
		),
		parts,
		objective,
		proof,
		sentence: sentenceOf(setup, score, proof),
		problems,
		better,
	};
}

/**
 * The set for the season: the best that seeded searches find under the quotas, with a bound that says how good it is. Deterministic; the order of the garments and their ids change nothing.
 */
export function buildLineUp(input: SeasonInput, request: LineUpRequest): LineUpResult {
	const setup = lineUpSetup(input, request);
	const score = bestSet(setup.problem);
	return resultOf(setup, score, proofOf(score, setup.problem.bound));
}

/** HiGHS keeps its rows to a millionth, so its bound is not finer. */
const SOLVER_SLACK = 1e-6;

/** The set as it stands, as members of the setup; ids that cannot be chosen are left out. */
export const standingSet = ({ garments, problem }: LineUpSetup, ids: readonly string[]): ScoredSet =>
	scoreOf(
		problem,
		garments.flatMap(({ id }, index) => (ids.includes(id) ? [index] : [])),
	);

/**
 * What a solver of `lineUpModel` says of a set: how good it is, and the better one where there is one. `found` is the best set that the search knows; `answer` holds the columns chosen and a bound;
 * null where the search's own bound was enough.
 */
export function provenResult(
	setup: LineUpSetup,
	standing: ScoredSet,
	found: ScoredSet,
	answer: { readonly bound: number; readonly chosen: readonly string[] | null } | null,
): LineUpResult {
	const { problem } = setup;
	const chosen = new Set(answer?.chosen ?? []);
	const solved = scoreOf(
		problem,
		problem.slots.flatMap((_, member) => (chosen.has(columnOf(member)) ? [member] : [])),
	);
	const best = answer?.chosen && solved.objective > found.objective + SOLVER_SLACK ? solved : found;
	const bound = Math.min(problem.bound, answer?.bound ?? Number.POSITIVE_INFINITY);
	const isBetter = best.objective > standing.objective + SOLVER_SLACK;
	const better = isBetter ? resultOf(setup, best, proofOf(best, bound, SOLVER_SLACK)) : null;
	return resultOf(setup, standing, proofOf(standing, bound, SOLVER_SLACK), better);
}
