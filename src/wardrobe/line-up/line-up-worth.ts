import { dressedDays } from '../days/enough.ts';
import { ALIKE_FACTOR } from '../fit/look-alikes.ts';
import { allMatched } from '../pictures/wearable-count.ts';
import type { LineUpWeights } from '../words/season.ts';
import type { LineUpProblem } from './line-up-choices.ts';

/** The parts of what a set is worth, 0..1 each, before their weights. */
export type WorthParts = Readonly<Record<keyof LineUpWeights, number>>;

/** A set of members and what it is worth. */
export type ScoredSet = {
	readonly members: readonly number[];
	readonly parts: WorthParts;
	readonly objective: number;
	/** The largest part of the palette that the set leaves uncovered, 0..1: what a tie is broken by. */
	readonly largestGap: number;
};

/** A piece that adds less than this leaves its place open: half a garment of middling fit in a set of 30. */
export const LEAST_WORTH = 0.005;

/** Whether every piece of a picture can have a garment of its own among the members. */
export function isWearable(pieces: readonly (readonly number[])[], isMember: Uint8Array): boolean {
	for (const answering of pieces) if (!answering.some((garment) => isMember[garment] === 1)) return false;
	return allMatched(pieces, (garment) => isMember[garment] === 1);
}

/** Pictures that the members can wear. */
function picturesWorn({ pictures, slots }: LineUpProblem, members: readonly number[]): number {
	if (pictures.length === 0) return 0;
	const isMember = new Uint8Array(slots.length);
	for (const member of members) isMember[member] = 1;
	return pictures.filter((pieces) => isWearable(pieces, isMember)).length;
}

function daysShare({ offers, askedDays }: LineUpProblem, members: readonly number[]): number {
	const asked = askedDays.reduce((sum, days) => sum + days, 0);
	if (asked === 0) return 0;
	return (
		dressedDays(
			members.map((member) => offers[member]!),
			askedDays,
		) / asked
	);
}

function paletteCovered(problem: LineUpProblem, members: readonly number[]): { share: number; largestGap: number } {
	const { colourWeights, clothAsked, holds } = problem;
	const count = colourWeights.length;
	let share = 0;
	let largestGap = 0;
	for (let colour = 0; colour < count; colour++) {
		let cloth = 0;
		for (const member of members) cloth += holds[member * count + colour]!;
		const covered = Math.min(1, cloth / clothAsked[colour]!);
		share += colourWeights[colour]! * covered;
		largestGap = Math.max(largestGap, colourWeights[colour]! * (1 - covered));
	}
	return { share, largestGap };
}

/** Sum of the members' fits, each further one of a look counting less; the best of a look counts in full. */
function variedFit({ fit, look }: LineUpProblem, members: readonly number[]): number {
	const seen = new Map<number, number>();
	let sum = 0;
	for (const member of [...members].sort((a, b) => fit[b]! - fit[a]!)) {
		const times = seen.get(look[member]!) ?? 0;
		sum += fit[member]! * ALIKE_FACTOR ** times;
		seen.set(look[member]!, times + 1);
	}
	return sum;
}

function pairsWorn({ together, slots }: LineUpProblem, members: readonly number[]): number {
	let pairs = 0;
	for (let one = 0; one < members.length; one++)
		for (let other = one + 1; other < members.length; other++)
			pairs += together[members[one]! * slots.length + members[other]!]!;
	return pairs;
}

export const WORTH_KEYS = [
	'pictures',
	'enough',
	'palette',
	'fit',
	'loved',
	'outfits',
] as const satisfies readonly (keyof LineUpWeights)[];

/**
 * What a set of members is worth: pictures it makes wearable, days it dresses between washes, palette it covers, fit, what is loved and worn, and pairs that go
 * together, each times its weight, less a little for each place filled. Every part is 0 for an empty set.
 */
export function scoreOf(problem: LineUpProblem, members: readonly number[]): ScoredSet {
	const { weights, size, pictures, loved, mostPairs } = problem;
	const { share, largestGap } = paletteCovered(problem, members);
	const parts: WorthParts = {
		pictures: pictures.length > 0 ? picturesWorn(problem, members) / pictures.length : 0,
		enough: daysShare(problem, members),
		palette: share,
		fit: size > 0 ? variedFit(problem, members) / size : 0,
		loved: size > 0 ? members.reduce((sum, member) => sum + loved[member]!, 0) / size : 0,
		outfits: mostPairs > 0 ? pairsWorn(problem, members) / mostPairs : 0,
	};
	const worth = WORTH_KEYS.reduce((sum, key) => sum + weights[key] * parts[key], 0);
	return { members, parts, objective: worth - LEAST_WORTH * members.length, largestGap };
}
