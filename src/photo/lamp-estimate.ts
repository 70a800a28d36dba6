import { acrossOf, alongOf, type CastStops, castFrom, stopsOf } from './lamp-casts.ts';
import { BACKGROUND, type LabelMap, type Pixels, visiblePixels } from './pixels.ts';

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
/** Every so-many-th pixel in both directions: the estimate moves by less than 0.01 stops. */
const STEP = 2;

/** Spread of lamp casts in phone photos along warm-cool and across it (green-magenta), in stops; and the spread of a background's own colour. */
const WARM_SPREAD = 0.55;
const GREEN_SPREAD = 0.12;
const SURFACE_SPREAD = 0.4;
/** Warmth that lamps give in phone photos, in stops, and green or magenta: what lies outside is a coloured surface, and believed ever less. */
const LAMP_WARMTH: readonly [number, number] = [-0.5, 1.6];
const LAMP_GREEN = 0.35;

/** A ground of which more than this share has one and the same bytes was made on a computer (a shop's cut-out): there is no lamp to take out. */
const FLAT_SHARE = 0.5;

/** Luminance of the brightest hundredth in a well exposed picture, and how much of a lack is made up for. */
const BRIGHTEST = 0.7;
const EXPOSURE_STRENGTH = 0.75;
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

/** Casts by two means over the background (shades of grey, and the bright tenth), and the luminance of the picture's brightest hundredth. */
function tally(pixels: Pixels, labels: LabelMap): Tally {
	const { widthPx, heightPx, rgb } = pixels;
	const visible = visiblePixels(pixels);
	const power = [0, 0, 0];
	const colours = new Map<number, number>();
	const light: { y: number; at: number }[] = [];
	const frame: number[] = [];
	for (let row = 0; row < heightPx; row += STEP) {
		for (let column = 0; column < widthPx; column += STEP) {
			const at = row * widthPx + column;
			if (!visible[at]) continue;
			const [r, g, b] = [rgb[at * 3]!, rgb[at * 3 + 1]!, rgb[at * 3 + 2]!];
			const y = 0.2126 * LINEAR[r]! + 0.7152 * LINEAR[g]! + 0.0722 * LINEAR[b]!;
			frame.push(y);
			if (labels.classes[at] !== BACKGROUND) continue;
			const colour = (r << 16) | (g << 8) | b;
			colours.set(colour, (colours.get(colour) ?? 0) + 1);
			if (Math.max(r, g, b) >= CLIPPED) continue;
			light.push({ y, at });
			for (const [k, byte] of [r, g, b].entries()) power[k]! += LINEAR[byte]! ** MINKOWSKI;
		}
	}
	frame.sort((a, b) => a - b);
	light.sort((a, b) => b.y - a.y || a.at - b.at);
	const brightest = frame[Math.floor(frame.length * 0.99)] ?? 0;
	const range = Math.log2((brightest + LEAST_LIGHT) / ((frame[Math.floor(frame.length / 2)] ?? 0) + LEAST_LIGHT));
	const grounds = [...colours.values()];
	const isFlat =
		grounds.reduce((most, count) => Math.max(most, count), 0) >
		FLAT_SHARE * grounds.reduce((sum, count) => sum + count, 0);
	if (light.length === 0) return { means: [], count: 0, brightest, range, isFlat };
	const bright = [0, 0, 0];
	for (const { at } of light.slice(0, Math.ceil(light.length / 10))) {
		for (let k = 0; k < 3; k++) bright[k]! += LINEAR[rgb[at * 3 + k]!]!;
	}
	const floor = 1e-6;
	const [r, g, b] = power.map((sum) => (sum / light.length) ** (1 / MINKOWSKI) + floor) as [number, number, number];
	const [br, bg, bb] = bright.map((sum) => sum + floor) as [number, number, number];
	return {
		means: [stopsOf(r, g, b), stopsOf(br, bg, bb)],
		count: light.length * STEP * STEP,
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
	const [warmth, green] = [alongOf(seen), acrossOf(seen)];
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
