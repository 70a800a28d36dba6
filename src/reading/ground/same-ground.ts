import { linearFromLab } from '../../colour/lab65.ts';
import { averageLinkage, groupsWithin } from '../../colour/linkage.ts';
import { luminanceOfLinear } from '../../colour/luminance.ts';
import type { SeenGround } from '../../wardrobe/words/reading.ts';
import { acrossOf, alongOf, stopsOf } from '../light/lamp-casts.ts';

/** A photo as far as its ground is concerned. */
export type PhotoOfGround = {
	readonly id: string;
	readonly seen: SeenGround;
	/** What the user said: a name that all photos of one ground share, null for a ground of its own, absent where nothing was said. */
	readonly told?: string | null;
};

/**
 * How far photos of one ground lie apart, as a standard deviation, in each number of the texture, in warmth, in green against magenta and in brightness, all
 * in stops. From 8 grounds of 7 homes (296 phone photos, each home one sender's; common practice of cameras: they balance and expose each photo anew).
 */
const SPREADS = [0.28, 0.2, 0.14, 0.13, 0.19, 0.16, 0.28, 0.27, 0.36, 0.38, 0.27, 0.4, 0.18, 0.38];
/** Photos within this mean distance are of one ground. Measured on 480 photos of eight homes: bench/NOTES.md, The ground as reference. */
const WITHIN = 5.5;
/** Black grounds have no colour; this is as dark as counts. */
const LEAST_LINEAR = 0.002;
/** What the user told goes before what is seen: one name, one ground; two names, two grounds. */
const TOLD_APART = 1000;

/** The numbers that two photos of one ground are compared by, each in units of its spread. */
function numbersOf({ lab, texture }: SeenGround): Float64Array {
	const [r, g, b] = linearFromLab(lab).map((value) => Math.max(LEAST_LINEAR, value)) as [number, number, number];
	const cast = stopsOf(r, g, b);
	const brightness = Math.log2(luminanceOfLinear(r, g, b));
	const numbers = [...texture, alongOf(cast), acrossOf(cast), brightness];
	return Float64Array.from(numbers, (value, at) => value / SPREADS[at]!);
}

function seenApart(one: Float64Array, other: Float64Array): number {
	let sum = 0;
	for (let at = 0; at < one.length; at++) sum += (one[at]! - other[at]!) ** 2;
	return Math.sqrt(sum);
}

/** 0 where the user said so, far apart where the user said otherwise, else as far as they look. */
function apart(one: PhotoOfGround, other: PhotoOfGround, seen: () => number): number {
	if (one.told === null || other.told === null) return TOLD_APART;
	if (one.told !== undefined && other.told !== undefined) return one.told === other.told ? 0 : TOLD_APART;
	return seen();
}

/**
 * The photos that show one and the same ground, by its texture and its colour as far as cameras let that swing, and by what the user said. Groups of one are
 * left out. Ids sorted; the order of the photos changes nothing. Texts of other lengths than ours are of another program's making: throws nothing, they
 * are left out.
 */
export function sameGroundGroups(photos: readonly PhotoOfGround[]): string[][] {
	const comparable = photos.filter(({ seen }) => seen.texture.length === SPREADS.length - 3);
	const sorted = [...comparable].sort((a, b) => (a.id < b.id ? -1 : 1));
	const numbers = sorted.map(({ seen }) => numbersOf(seen));
	const distance = (i: number, j: number) => apart(sorted[i]!, sorted[j]!, () => seenApart(numbers[i]!, numbers[j]!));
	return componentsOf(sorted.length, (i, j) => distance(i, j) <= WITHIN)
		.flatMap((members) => {
			const distances = Float64Array.from(members.flatMap((i) => members.map((j) => (i === j ? 0 : distance(i, j)))));
			return groupsWithin(members.length, averageLinkage(members.length, distances), WITHIN).map((group) =>
				group.map((at) => sorted[members[at]!]!.id),
			);
		})
		.filter((ids) => ids.length > 1);
}

/** The parts that no pair within reach joins: groups lie inside them, and the table of distances stays small. */
function componentsOf(count: number, isNear: (i: number, j: number) => boolean): number[][] {
	const left = new Set(Array.from({ length: count }, (_, index) => index));
	const parts: number[][] = [];
	for (const first of left) {
		left.delete(first);
		const part = [first];
		for (const member of part) {
			for (const other of left) {
				if (!isNear(member, other)) continue;
				left.delete(other);
				part.push(other);
			}
		}
		parts.push(part.sort((a, b) => a - b));
	}
	return parts;
}
