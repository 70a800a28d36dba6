import { say } from '../../language/speak.ts';
import { outOfSeason } from '../days/in-season.ts';
import { daysOfSeason } from '../days/usual-days.ts';
import { outerNeed } from '../days/warmth-need.ts';
import { asSentence } from '../words/as-sentence.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { bySlot, SLOTS } from '../words/slot.ts';
import { canBeChosen } from './choosable.ts';
import type { LineUpProblem, LineUpRequest } from './line-up-choices.ts';

/** Must-keeps that contradict something else the user said. */
export function contradictions({ garments, season }: SeasonInput, { mustKeep, neverUse }: LineUpRequest): string[] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	return [...new Set(mustKeep)].flatMap((id) => {
		const garment = byId.get(id);
		if (!garment) return [say('unmet.gone')];
		if (!canBeChosen(garment))
			return [say('unmet.notHere', { name: garment.name, place: say(`whereabouts.${garment.place}`) })];
		if (neverUse.includes(id)) return [say('unmet.both', { name: garment.name })];
		const out = outOfSeason(garment, season);
		return out === null ? [] : [say('unmet.though', { name: garment.name, out })];
	});
}

/** Quotas, the target and the cold that the garments do not meet, and by how much. */
export function unmetNeeds(
	{ season }: SeasonInput,
	request: LineUpRequest,
	{ slots, fixed, choices, places, warmOuter }: LineUpProblem,
): string[] {
	const total = SLOTS.reduce((sum, slot) => sum + request.quotas[slot], 0);
	const keptIn = bySlot((slot) => fixed.filter((member) => slots[member] === slot).length);
	const bySlots = SLOTS.flatMap((slot) => {
		const wanted = request.quotas[slot];
		const can = choices[slot].length + keptIn[slot];
		const said = { wanted, slot: asSentence(say(`slots.${slot}`)) };
		if (can < wanted) return [say('unmet.tooFew', { ...said, can, missing: wanted - can })];
		const kept = keptIn[slot];
		return kept > wanted ? [say('unmet.tooMany', { ...said, kept, over: kept - wanted })] : [];
	});
	const sum = total === request.targetCount ? [] : [say('unmet.sum', { total, target: request.targetCount })];
	const days = daysOfSeason(season);
	const cold = { degrees: days.coldDay };
	const outerFull = keptIn.outer >= places.outer && !fixed.some((member) => warmOuter.has(member));
	const warmth =
		outerNeed(days) === 0 || request.quotas.outer === 0
			? []
			: warmOuter.size === 0
				? [say('unmet.noneWarm', cold)]
				: outerFull
					? [say('unmet.keptNotWarm', cold)]
					: [];
	return [...bySlots, ...sum, ...warmth];
}
