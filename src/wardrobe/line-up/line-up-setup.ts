import { isInSeason } from '../days/in-season.ts';
import { cloOf } from '../days/insulation.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { outerNeed } from '../days/warmth-need.ts';
import { fitPercentOf } from '../fit/fit.ts';
import { pairContextOf } from '../pairs/pair-context.ts';
import { pairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { slotOfKind } from '../words/kind.ts';
import type { Quotas } from '../words/season.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { bySlot, SLOTS } from '../words/slot.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { lineUpProblemOf } from './line-up-problem.ts';

/** What is asked of a line-up. */
export type LineUpRequest = {
	readonly quotas: Quotas;
	readonly targetCount: number;
	readonly mustKeep: readonly string[];
	readonly neverUse: readonly string[];
};

/** A season's line-up to choose. */
export type LineUpSetup = {
	/** In the order of their ids; the problem's pieces are indices into it. */
	readonly garments: readonly Garment[];
	readonly problem: LineUpProblem;
	/** What of the wishes cannot be met, and by how much, in sentences; empty when all is. */
	readonly problems: readonly string[];
};

/** How much a garment is liked: what the user said, or else how often it was worn beside the most worn one. 0..1. */
function lovedShares(garments: readonly Garment[], { wears, today }: SeasonInput): number[] {
	const counts = new Map<string, number>();
	for (const { garmentId, on } of wears) if (on <= today) counts.set(garmentId, (counts.get(garmentId) ?? 0) + 1);
	const most = Math.max(1, ...counts.values());
	return garments.map(({ id, loved }) => (loved === null ? (counts.get(id) ?? 0) / most : loved / 3));
}

const canBeChosen = ({ place }: Garment): boolean => place === 'rail' || place === 'stored';

/** Must-keeps that contradict something else the user said. */
function contradictions({ garments }: SeasonInput, { mustKeep, neverUse }: LineUpRequest): string[] {
	const known = new Map(garments.map((garment) => [garment.id, garment]));
	return [...new Set(mustKeep)].flatMap((id) => {
		const garment = known.get(id);
		if (!garment) return ['A garment that must be kept is no longer in the wardrobe.'];
		if (!canBeChosen(garment))
			return [`${garment.name} must be kept, but is ${garment.place}: it is not in the set. Put it back on the rail.`];
		return neverUse.includes(id)
			? [`${garment.name} is both to be kept and never to be used; it is kept, since you can still take it out.`]
			: [];
	});
}

function unmetNeeds(
	{ season }: SeasonInput,
	request: LineUpRequest,
	{ slots, fixed, choices, places, warmOuter }: LineUpProblem,
): string[] {
	const total = SLOTS.reduce((sum, slot) => sum + request.quotas[slot], 0);
	const keptIn = bySlot((slot) => fixed.filter((member) => slots[member] === slot).length);
	const bySlots = SLOTS.flatMap((slot) => {
		const wanted = request.quotas[slot];
		const can = choices[slot].length + keptIn[slot];
		if (can < wanted) return [`Wanted ${wanted} of the slot ${slot}; ${can} can be chosen, ${wanted - can} too few.`];
		return keptIn[slot] > wanted
			? [
					`Wanted ${wanted} of the slot ${slot}; ${keptIn[slot]} must be kept, ${keptIn[slot] - wanted} too many. All are kept.`,
				]
			: [];
	});
	const sum =
		total === request.targetCount
			? []
			: [`The slots together ask for ${total} garments, the season for ${request.targetCount}; the slots decide.`];
	const { coldDay } = daysOfSeason(season);
	const need = `Wanted a coat or jacket for cold days of ${coldDay} degrees`;
	const outerFull = keptIn.outer >= places.outer && !fixed.some((member) => warmOuter.has(member));
	const warmth =
		outerNeed(daysOfSeason(season)) === 0 || request.quotas.outer === 0
			? []
			: warmOuter.size === 0
				? [`${need}; none that can be chosen is that warm.`]
				: outerFull
					? [`${need}; those that must be kept take all places, and none of them is that warm.`]
					: [];
	return [...bySlots, ...sum, ...warmth];
}

/** Sets up the choice of a season's line-up. Leaving and gone garments are never chosen, nor those of another part of the year unless they must be kept; stored ones may come back. */
export function lineUpSetup(input: SeasonInput, request: LineUpRequest): LineUpSetup {
	const mustKeep = new Set(request.mustKeep);
	const neverUse = new Set(request.neverUse.filter((id) => !mustKeep.has(id)));
	const garments = input.garments
		.filter((garment) => canBeChosen(garment) && !neverUse.has(garment.id))
		.filter((garment) => mustKeep.has(garment.id) || isInSeason(garment, input.season))
		.sort((a, b) => (a.id < b.id ? -1 : 1));
	const pairs = pairTable(garments, pairContextOf(input));
	const count = garments.length;
	const together = new Uint8Array(count * count);
	for (let one = 0; one < count; one++) {
		for (let other = 0; other < count; other++) if (pairs.supported(one, other)) together[one * count + other] = 1;
	}
	const { weights } = input.season;
	const need = outerNeed(daysOfSeason(input.season));
	const isWarm = (garment: Garment) => slotOfKind(garment.kind) === 'outer' && need > 0 && cloOf(garment) >= need;
	const problem = lineUpProblemOf({
		slots: garments.map(({ kind }) => slotOfKind(kind)),
		together,
		fit: garments.map((garment) => fitPercentOf(garment, input.palette) / 100),
		loved: lovedShares(garments, input),
		weights,
		quotas: request.quotas,
		fixed: garments.flatMap(({ id }, index) => (mustKeep.has(id) ? [index] : [])),
		warmOuter: new Set(garments.flatMap((garment, index) => (isWarm(garment) ? [index] : []))),
	});
	return { garments, problem, problems: [...contradictions(input, request), ...unmetNeeds(input, request, problem)] };
}
