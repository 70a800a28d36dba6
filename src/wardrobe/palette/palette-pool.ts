import { distanceBetween, liesWithin } from '../../colour/delta-e-many.ts';
import { chroma, type Lab65 } from '../../colour/lab65.ts';
import { NEUTRAL_CHROMA } from '../../colour/neutrality.ts';
import type { Appearance } from '../words/reading.ts';
import { REACH } from './palette-reach.ts';

/** Anything that a palette can be made from: a photo's reading, or a garment. */
export type PaletteSource = Pick<Appearance, 'swatches'>;

/** Each photo brings at most this many colours, so that a busy one does not outweigh a plain one (measured: 8). */
const COLOURS_A_PHOTO = 8;

/** One colour of one photo; the weights of a photo sum to 1. */
export type PoolPoint = { readonly lab: Lab65; readonly weight: number; readonly photo: number };

const compareLab = (one: Lab65, other: Lab65): number => one[0] - other[0] || one[1] - other[1] || one[2] - other[2];

/** The colours of one source, heaviest first, weights summing to 1; empty for a source without colours. */
export function coloursOf({ swatches }: PaletteSource): { readonly lab: Lab65; readonly weight: number }[] {
	const kept = swatches
		.filter(({ share }) => share > 0)
		.sort((one, other) => other.share - one.share || compareLab(one.lab, other.lab))
		.slice(0, COLOURS_A_PHOTO);
	const area = kept.reduce((sum, { share }) => sum + share, 0);
	return kept.map(({ lab, share }) => ({ lab, weight: share / area }));
}

type PhotoColours = ReturnType<typeof coloursOf>;

function comparePhotos(one: PhotoColours, other: PhotoColours): number {
	for (const [index, { lab, weight }] of one.entries()) {
		const against = other[index];
		if (!against) return 1;
		const order = compareLab(lab, against.lab) || weight - against.weight;
		if (order !== 0) return order;
	}
	return one.length - other.length;
}

/** The photos' colours in an order that does not depend on the order of the photos; photos without colours fall away. */
export function photosInOrder(sources: readonly PaletteSource[]): PhotoColours[] {
	return sources
		.map(coloursOf)
		.filter((colours) => colours.length > 0)
		.sort(comparePhotos);
}

/** All colours of the photos in one list, sorted by colour, so that clustering them does not depend on the order of the photos. */
export function poolOf(photos: readonly PhotoColours[]): PoolPoint[] {
	return photos
		.flatMap((colours, photo) => colours.map(({ lab, weight }) => ({ lab, weight, photo })))
		.sort((one, other) => compareLab(one.lab, other.lab) || one.weight - other.weight || one.photo - other.photo);
}

/** The pool without the points that lie within reach of one of `held`, and those points by the held colour they are nearest to. */
export function withoutHeld(
	pool: readonly PoolPoint[],
	held: readonly Lab65[],
): { readonly free: PoolPoint[]; readonly taken: readonly PoolPoint[][] } {
	const free: PoolPoint[] = [];
	const taken = held.map((): PoolPoint[] => []);
	for (const point of pool) {
		let nearest = -1;
		let least = REACH;
		for (const [index, lab] of held.entries()) {
			const distance = distanceBetween(point.lab, lab);
			if (distance <= least) {
				least = distance;
				nearest = index;
			}
		}
		if (nearest < 0) free.push(point);
		else taken[nearest]!.push(point);
	}
	return { free, taken };
}

/** Neutral and coloured points apart: clustered together, the many near-greys of real clothes eat the palette. */
export function splitNeutrals(pool: readonly PoolPoint[]): {
	readonly neutral: PoolPoint[];
	readonly coloured: PoolPoint[];
} {
	const neutral: PoolPoint[] = [];
	const coloured: PoolPoint[] = [];
	for (const point of pool) (chroma(point.lab) < NEUTRAL_CHROMA ? neutral : coloured).push(point);
	return { neutral, coloured };
}

/** Photos that hold a colour within reach of `lab`. */
export const photosHolding = (lab: Lab65, pool: readonly PoolPoint[]): number =>
	new Set(pool.filter((point) => liesWithin(point.lab, lab, REACH)).map(({ photo }) => photo)).size;
