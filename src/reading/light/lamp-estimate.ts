import { nthSmallest } from '../../colour/median.ts';
import { BACKGROUND, type LabelMap, type Pixels, seenClasses, TRANSPARENT } from '../pixels.ts';
import { acrossOf, alongOf, type CastStops, castFrom, stopsOf } from './lamp-casts.ts';

/** What the background tells about the lamp. */
export type LampEstimate = {
	/** The cast as the pixels alone would have it. */
	readonly seen: CastStops;
	/** The cast once prior knowledge of lamps has been weighed in: the part that is safe to take out. */
	readonly likely: CastStops;
	/** How much of the seen cast the likely one is, 0..1. */
	readonly strength: number;
	/** Luminance 0..1 that a perfect white is thought to have. */
	readonly white: number;
};

/** sRGB decoding (IEC 61966-2-1) of each byte. */
const LINEAR = Float64Array.from({ length: 256 }, (_, byte) => {
	const value = byte / 255;
	return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
});

/** Power of the mean: 6 is what "shades of grey" was published with (Finlayson and Trezzi 2004) and did best on real chart photos. */
const MINKOWSKI = 6;
/** Bytes from here up are clipped in at least one channel, and tell nothing of the ratio of channels. */
const CLIPPED = 250;
/** Less background than this share of the frame tells nothing. */
const LEAST_BACKGROUND = 0.05;
/** Pixels looked at along the longer side, about: 19 of 20 estimates move by less than 0.011 stops against all pixels (demo pictures and photos of garments). */
const LOOKED_AT_SIDE = 220;

/** Spread of lamp casts in phone photos along warm-cool and across it (green-magenta), in stops; and the spread of a background's own colour. */
const WARM_SPREAD = 0.55;
const GREEN_SPREAD = 0.12;
const SURFACE_SPREAD = 0.4;
/** Warmth that floors, wood and skin have by themselves on average, in stops: no lamp's doing. Measured on our renders and charts. */
const SURFACE_WARMTH = 0.3;
/** Warmth that lamps give in phone photos, in stops, and green or magenta: what lies outside is a coloured surface, and believed ever less. */
const LAMP_WARMTH: readonly [number, number] = [-0.5, 1.6];
const LAMP_GREEN = 0.35;

/** Luminance of the brightest hundredth in a well exposed picture, and how much of a lack is made up for. */
const BRIGHTEST = 0.7;
const EXPOSURE_STRENGTH = 0.5;
/** The same where clothes fill the frame: they may be dark by themselves. */
const FILLED_EXPOSURE_STRENGTH = 0.4;
/** Most stops of lack that are made up for: beyond, the picture shows dark things. */
const LARGEST_LACK = 1.3;
/**
 * Stops between a frame's middle and its brightest hundredth from which the bright part can be something white, and from which it surely is
 * no fold of what fills the frame: a lawn-green coat on a lawn-green bed is not underexposed, it is green. Measured on our renders and charts.
 */
const VARIED_FROM = 0.25;
const VARIED_TO = 0.7;
/** Keeps the ratio of two blacks finite. */
const LEAST_LIGHT = 1e-3;

type Tally = {
	readonly means: readonly CastStops[];
	readonly count: number;
	readonly brightest: number;
	/** Stops from the frame's middle luminance to its brightest hundredth. */
	readonly range: number;
	readonly isFlat: boolean;
};

/** Linear light of each byte to the power of the mean. */
const LINEAR_POWER = LINEAR.map((value) => value ** MINKOWSKI);

/**
 * Whether more than half of the sampled ground has one and the same bytes: it was made on a computer (a shop's cut-out), and there is no lamp
 * to take out. Only the value that is left over when unlike ones cancel out can be that many (Boyer and Moore 1981).
 */
function isOneValue(grounds: Uint32Array): boolean {
	let [left, votes] = [0, 0];
	for (let i = 0; i < grounds.length; i++) {
		if (votes === 0) left = grounds[i]!;
		votes += grounds[i] === left ? 1 : -1;
	}
	let count = 0;
	for (let i = 0; i < grounds.length; i++) if (grounds[i] === left) count++;
	return count > grounds.length / 2;
}

/** Summed linear light of the brightest tenth, channel by channel; of equally bright pixels the upper ones count. */
function brightestTenth(rgb: Uint8Array, places: Uint32Array, light: Float64Array): [number, number, number] {
	const count = Math.ceil(places.length / 10);
	const least = nthSmallest(light.slice(), light.length - count);
	const bright: [number, number, number] = [0, 0, 0];
	const take = (from: number) => {
		bright[0] += LINEAR[rgb[from]!]!;
		bright[1] += LINEAR[rgb[from + 1]!]!;
		bright[2] += LINEAR[rgb[from + 2]!]!;
	};
	let taken = 0;
	for (let i = 0; i < light.length; i++) {
		if (light[i]! <= least) continue;
		take(places[i]! * 3);
		taken++;
	}
	for (let i = 0; i < light.length && taken < count; i++) {
		if (light[i] !== least) continue;
		take(places[i]! * 3);
		taken++;
	}
	return bright;
}

/** Casts by two means over the background (shades of grey, and the bright tenth), and the luminance of the picture's brightest hundredth. */
function tally(pixels: Pixels, labels: LabelMap): Tally {
	const { widthPx, heightPx, rgb } = pixels;
	const classes = seenClasses(pixels, labels);
	const step = Math.max(1, Math.round(Math.max(widthPx, heightPx) / LOOKED_AT_SIDE));
	const room = Math.ceil(widthPx / step) * Math.ceil(heightPx / step);
	const frame = new Float64Array(room);
	const grounds = new Uint32Array(room);
	const places = new Uint32Array(room);
	const light = new Float64Array(room);
	let seen = 0;
	let ground = 0;
	let lit = 0;
	let red = 0;
	let green = 0;
	let blue = 0;
	for (let row = 0; row < heightPx; row += step) {
		for (let column = 0; column < widthPx; column += step) {
			const at = row * widthPx + column;
			const label = classes[at]!;
			if (label === TRANSPARENT) continue;
			const r = rgb[at * 3]!;
			const g = rgb[at * 3 + 1]!;
			const b = rgb[at * 3 + 2]!;
			const y = 0.2126 * LINEAR[r]! + 0.7152 * LINEAR[g]! + 0.0722 * LINEAR[b]!;
			frame[seen++] = y;
			if (label !== BACKGROUND) continue;
			grounds[ground++] = (r << 16) | (g << 8) | b;
			if (r >= CLIPPED || g >= CLIPPED || b >= CLIPPED) continue;
			places[lit] = at;
			light[lit++] = y;
			red += LINEAR_POWER[r]!;
			green += LINEAR_POWER[g]!;
			blue += LINEAR_POWER[b]!;
		}
	}
	const all = frame.subarray(0, seen);
	const brightest = seen === 0 ? 0 : nthSmallest(all, Math.floor(seen * 0.99));
	const middle = seen === 0 ? 0 : nthSmallest(all, Math.floor(seen / 2));
	const range = Math.log2((brightest + LEAST_LIGHT) / (middle + LEAST_LIGHT));
	const isFlat = isOneValue(grounds.subarray(0, ground));
	if (lit === 0) return { means: [], count: 0, brightest, range, isFlat };
	const floor = 1e-6;
	const mean = (sum: number) => (sum / lit) ** (1 / MINKOWSKI) + floor;
	const [br, bg, bb] = brightestTenth(rgb, places.subarray(0, lit), light.subarray(0, lit));
	return {
		means: [stopsOf(mean(red), mean(green), mean(blue)), stopsOf(br + floor, bg + floor, bb + floor)],
		count: lit * step * step,
		brightest,
		range,
		isFlat,
	};
}

const DAYLIGHT: CastStops = { red: 0, blue: 0 };

/** Share of an observation that is believed, from what is known before (`prior`) and how uncertain it is (`noise`), both standard deviations. */
const believed = (prior: number, noise: number): number => prior ** 2 / (prior ** 2 + noise ** 2);

/**
 * The lamp from the background's pixels and highlights, never from the clothes; null for a ground that
 * no camera saw, and a cut-out. Where clothes fill the frame only the exposure is estimated. The cast is a
 * weighted mean between what is seen and daylight: much of a warm or cold cast is believed, little of a green or magenta one, since lamps
 * are warm and surfaces have any colour; and less where shades of grey and the bright tenth disagree.
 */
export function lampEstimate(pixels: Pixels, labels: LabelMap): LampEstimate | null {
	const { means, count, brightest, range, isFlat } = tally(pixels, labels);
	const varied = Math.min(1, Math.max(0, (range - VARIED_FROM) / (VARIED_TO - VARIED_FROM)));
	const lack = varied * Math.min(LARGEST_LACK, Math.max(0, Math.log2(BRIGHTEST / Math.max(brightest, 0.01))));
	if (isFlat) return null;
	if (means.length === 0 || count < LEAST_BACKGROUND * labels.classes.length) {
		// Whoever cut a picture out has seen to its light.
		if (pixels.alpha) return null;
		return { seen: DAYLIGHT, likely: DAYLIGHT, strength: 0, white: 2 ** (-lack * FILLED_EXPOSURE_STRENGTH) };
	}
	const [one, other] = means as [CastStops, CastStops];
	const seen = { red: (one.red + other.red) / 2, blue: (one.blue + other.blue) / 2 };
	const [warmth, green] = [alongOf(seen) - SURFACE_WARMTH, acrossOf(seen)];
	const beyond =
		Math.max(0, LAMP_WARMTH[0] - warmth, warmth - LAMP_WARMTH[1]) + Math.max(0, Math.abs(green) - LAMP_GREEN);
	const noise = Math.hypot(SURFACE_SPREAD, one.red - other.red, one.blue - other.blue, 2 * beyond);
	const likely = castFrom(warmth * believed(WARM_SPREAD, noise), green * believed(GREEN_SPREAD, noise));
	const size = Math.hypot(seen.red, seen.blue);
	return {
		seen,
		likely,
		strength: size === 0 ? 1 : Math.min(1, Math.hypot(likely.red, likely.blue) / size),
		white: 2 ** (-lack * EXPOSURE_STRENGTH),
	};
}
