import { medianOf } from '../../colour/median.ts';
import type { ClothPicture } from './cloth-picture.ts';

/** How stripes or checks lie, as far as the pieces of one cloth agree. */
export type ClothRepeat = {
	/** Direction in which the lines run, degrees 0 (horizontal) .. <180, counter-clockwise; one of the two for checks. Absent where pieces disagree. */
	readonly directionDegrees?: number;
	/** Length of one repeat across the lines, pixels of the cloth picture; absent where too few pieces repeat. */
	readonly period?: number;
};

/** Side of the square pieces that are looked at one by one: cloth bends, and a piece is nearly straight. */
const SIDE = 56;
/** Pieces overlap by half; one with more than this share outside the cloth is left out. */
const LARGEST_OUTSIDE = 0.12;
const MOST_PIECES = 12;
/** Edges run one way from this agreement on; below it, two ways square to each other are looked for. */
const ONE_WAY_FROM = 0.25;
/** Directions of fewer agreeing edges than this are not told. */
const AGREEMENT_FROM = 0.4;
/** Shortest repeat looked for: under 3 pixels it is weave. The longest is this share of the piece's side, so that it is seen nearly twice. */
const SHORTEST = 3;
const LONGEST_SHARE = 0.6;
/** A piece repeats itself where it is this like itself one repeat further (1 = the same). */
const REPEATS_FROM = 0.35;
/** A repeat lies beyond a dip of this depth: a slow change of light is none. */
const LEAST_RISE = 0.15;

type Place = { readonly left: number; readonly top: number };

/** Where whole pieces of cloth lie, evenly over it. */
function piecesOf({ widthPx, heightPx, inside }: ClothPicture): Place[] {
	const places: Place[] = [];
	for (let top = 0; top + SIDE <= heightPx; top += SIDE / 2) {
		for (let left = 0; left + SIDE <= widthPx; left += SIDE / 2) {
			let within = 0;
			for (let v = top; v < top + SIDE; v++) {
				for (let u = left; u < left + SIDE; u++) within += inside[v * widthPx + u]!;
			}
			if (within >= (1 - LARGEST_OUTSIDE) * SIDE * SIDE) places.push({ left, top });
		}
	}
	const step = Math.max(1, places.length / MOST_PIECES);
	return Array.from({ length: Math.min(places.length, MOST_PIECES) }, (_, i) => places[Math.floor(i * step)]!);
}

type Edges = {
	/** Angle across the edges, radians, rows counted downwards. */
	readonly across: number;
	/** How strong the edges are and how far they run one way: the piece's say in the shared direction. */
	readonly weight: number;
};

/** Colour gradients as Di Zenzo's tensor (1986), central differences, summed over a piece. */
function edgesOf({ widthPx, rgb, inside }: ClothPicture, { left, top }: Place): Edges {
	let weight = 0;
	let c2 = 0;
	let s2 = 0;
	let c4 = 0;
	let s4 = 0;
	const below = widthPx * 3;
	for (let v = top + 1; v < top + SIDE - 1; v++) {
		for (let u = left + 1; u < left + SIDE - 1; u++) {
			const at = v * widthPx + u;
			if (!(inside[at - 1] && inside[at + 1] && inside[at - widthPx] && inside[at + widthPx])) continue;
			let xx = 0;
			let yy = 0;
			let xy = 0;
			for (let from = at * 3, end = from + 3; from < end; from++) {
				const gx = rgb[from + 3]! - rgb[from - 3]!;
				const gy = rgb[from + below]! - rgb[from - below]!;
				xx += gx * gx;
				yy += gy * gy;
				xy += gx * gy;
			}
			const strength = xx + yy;
			if (strength === 0) continue;
			// Cosine and sine of twice the gradient's angle, then of four times.
			const c = (xx - yy) / strength;
			const s = (2 * xy) / strength;
			const square = c * c + s * s;
			const sure = (strength * Math.sqrt(square)) / (square + 1e-9);
			weight += strength;
			c2 += strength * c;
			s2 += strength * s;
			c4 += sure * (c * c - s * s);
			s4 += sure * 2 * c * s;
		}
	}
	const oneWay = Math.hypot(c2, s2) / (weight + 1e-9);
	return {
		across: oneWay > ONE_WAY_FROM ? Math.atan2(s2, c2) / 2 : Math.atan2(s4, c4) / 4,
		weight: weight * oneWay,
	};
}

/** Mean colour of each line of a piece, lines one pixel apart from one side to the other, their mean taken off: RGB triples. */
function profileOf({ widthPx, rgb, inside }: ClothPicture, { left, top }: Place, across: number): Float64Array {
	const c = Math.cos(across);
	const s = Math.sin(across);
	const sums = new Float64Array(SIDE * 3);
	const counts = new Uint32Array(SIDE);
	const middle = (SIDE - 1) / 2;
	for (let v = 0; v < SIDE; v++) {
		for (let u = 0, at = (top + v) * widthPx + left; u < SIDE; u++, at++) {
			const line = Math.round((u - middle) * c + (v - middle) * s + middle);
			if (line < 0 || line >= SIDE || !inside[at]) continue;
			counts[line]!++;
			sums[line * 3]! += rgb[at * 3]!;
			sums[line * 3 + 1]! += rgb[at * 3 + 1]!;
			sums[line * 3 + 2]! += rgb[at * 3 + 2]!;
		}
	}
	const total = counts.reduce((sum, count) => sum + count, 0) || 1;
	for (let k = 0; k < 3; k++) {
		let sum = 0;
		for (let line = 0; line < SIDE; line++) sum += sums[line * 3 + k]!;
		for (let line = 0; line < SIDE; line++) {
			sums[line * 3 + k] = counts[line]! > 0 ? sums[line * 3 + k]! / counts[line]! - sum / total : 0;
		}
	}
	return sums;
}

/** Likeness of a profile to itself some lines further: 1 the same, 0 unrelated. */
function likeness(profile: Float64Array, lines: number): number {
	let product = 0;
	let one = 0;
	let other = 0;
	for (let i = 0, j = lines * 3; j < profile.length; i++, j++) {
		product += profile[i]! * profile[j]!;
		one += profile[i]! ** 2;
		other += profile[j]! ** 2;
	}
	return product / (Math.sqrt(one * other) + 1e-9);
}

/** The best repeat of a profile in lines, looked for beyond the first dip; 0 where there is none. */
function periodOf(profile: Float64Array): number {
	let [dip, best, period] = [1, REPEATS_FROM, 0];
	for (let lag = 1; lag <= SIDE * LONGEST_SHARE; lag++) {
		const value = likeness(profile, lag);
		dip = Math.min(dip, value);
		// Twice the repeat is about as alike as once: only a clearly better one wins over a shorter one.
		if (lag >= SHORTEST && value - dip > LEAST_RISE && value > best + (period > 0 ? 0.03 : 0)) {
			best = value;
			period = lag;
		}
	}
	return period;
}

/** Direction and repeat of a striped or checked cloth. Nothing where it is too small for one piece. */
export function clothRepeat(picture: ClothPicture): ClothRepeat {
	const pieces = piecesOf(picture).map((place) => ({ place, edges: edgesOf(picture, place) }));
	let [c, s, weight] = [0, 0, 0];
	for (const { edges } of pieces) {
		c += edges.weight * Math.cos(2 * edges.across);
		s += edges.weight * Math.sin(2 * edges.across);
		weight += edges.weight;
	}
	const periods = pieces
		.map(({ place, edges }) => periodOf(profileOf(picture, place, edges.across)))
		.filter((period) => period > 0);
	const isRepeated = periods.length >= Math.max(1, pieces.length / 4);
	// Lines run square to the gradient; rows count downwards, so that the angle turns its sign.
	const degrees = 90 - (Math.atan2(s, c) * 90) / Math.PI;
	return {
		...(weight > 0 && Math.hypot(c, s) / weight >= AGREEMENT_FROM
			? { directionDegrees: Math.round(degrees + 180) % 180 }
			: {}),
		...(isRepeated ? { period: medianOf(periods) } : {}),
	};
}
