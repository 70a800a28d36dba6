import { dressedOf, PART_ROW } from '../days/enough.ts';
import { ALIKE_FACTOR } from '../fit/look-alikes.ts';
import type { LineUpProblem } from './line-up-choices.ts';
import { isWearable, LEAST_WORTH } from './line-up-worth.ts';

/** What sets are compared by. One object is used again and again: copy what is to be kept. */
export type Standing = { objective: number; largestGap: number; pieces: number; places: number };

/** The fit of garments of which others look alike: the best of a look counts whole, each further one less. Puts `alike` in order. */
function fitOfAlike(alike: number[], { look, fit }: LineUpProblem): number {
	alike.sort((a, b) => look[a]! - look[b]! || fit[b]! - fit[a]!);
	let sum = 0;
	let factor = 1;
	for (let at = 0; at < alike.length; at++) {
		factor = at > 0 && look[alike[at]!] === look[alike[at - 1]!] ? factor * ALIKE_FACTOR : 1;
		sum += fit[alike[at]!]! * factor;
	}
	return sum;
}

/** Of each garment, whether others look alike, and what it brings whatever else is in the set. */
function ownWorth({ look, fit, loved, size, weights }: LineUpProblem) {
	const timesSeen = new Map<number, number>();
	for (const one of look) timesSeen.set(one, (timesSeen.get(one) ?? 0) + 1);
	const isAlike = Uint8Array.from(look, (one) => (timesSeen.get(one)! > 1 ? 1 : 0));
	const alone = Float64Array.from(fit, (one, member) => {
		const ownFit = size > 0 ? (weights.fit * one) / size : 0;
		return (isAlike[member] ? 0 : ownFit) + (size > 0 ? (weights.loved * loved[member]!) / size : 0) - LEAST_WORTH;
	});
	return { isAlike, alone };
}

/** Pictures that the members can wear; `isMember` is all 0 before and after. */
function wornPictures(pictures: LineUpProblem['pictures'], members: readonly number[], isMember: Uint8Array): number {
	for (const member of members) isMember[member] = 1;
	let worn = 0;
	for (const pieces of pictures) if (isWearable(pieces, isMember)) worn++;
	for (const member of members) isMember[member] = 0;
	return worn;
}

/**
 * The objective of `scoreOf` without its parts, for the search: asked many hundred thousand times, so it makes no objects and looks up what does not
 * change. Equal to `scoreOf` up to rounding.
 */
export function evaluatorOf(problem: LineUpProblem): (members: readonly number[]) => Standing {
	const { slots, together, offers, askedDays, colourWeights, clothAsked, holds, pictures, weights } = problem;
	const { size, mostPairs } = problem;
	const count = slots.length;
	const colours = colourWeights.length;
	const masks = 1 << askedDays.length;
	const askedSum = askedDays.reduce((sum, days) => sum + days, 0);
	const { isAlike, alone } = ownWorth(problem);
	const isMember = new Uint8Array(count);
	const given = new Float64Array(3 * masks);
	const cloth = new Float64Array(colours);
	const standing: Standing = { objective: 0, largestGap: 0, pieces: 0, places: 0 };
	const alike: number[] = [];

	return (members) => {
		given.fill(0);
		cloth.fill(0);
		alike.length = 0;
		let objective = 0;
		let pairs = 0;
		let places = 0;
		for (let at = 0; at < members.length; at++) {
			const member = members[at]!;
			places += member;
			objective += alone[member]!;
			if (isAlike[member]) alike.push(member);
			const offer = offers[member];
			if (offer) given[PART_ROW[offer.part] * masks + offer.serves]! += offer.days;
			for (let colour = 0; colour < colours; colour++) cloth[colour]! += holds[member * colours + colour]!;
			const row = member * count;
			for (let other = at + 1; other < members.length; other++) pairs += together[row + members[other]!]!;
		}
		let largestGap = 0;
		for (let colour = 0; colour < colours; colour++) {
			const covered = Math.min(1, cloth[colour]! / clothAsked[colour]!);
			objective += weights.palette * colourWeights[colour]! * covered;
			largestGap = Math.max(largestGap, colourWeights[colour]! * (1 - covered));
		}
		if (alike.length > 0 && size > 0) objective += (weights.fit * fitOfAlike(alike, problem)) / size;
		if (askedSum > 0) objective += (weights.enough * dressedOf(given, askedDays)) / askedSum;
		if (mostPairs > 0) objective += (weights.outfits * pairs) / mostPairs;
		if (pictures.length > 0)
			objective += (weights.pictures * wornPictures(pictures, members, isMember)) / pictures.length;
		standing.objective = objective;
		standing.largestGap = largestGap;
		standing.pieces = members.length;
		standing.places = places;
		return standing;
	};
}
