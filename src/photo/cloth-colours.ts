import { labFromPixels } from '../colour/lab-pixels.ts';
import type { Parse } from './parser.ts';
import { BACKGROUND, isClothes, type Pixels } from './pixels.ts';

/** Side of a colour bin in CIELAB; 16 x 32 x 32 bins hold every sRGB colour. */
const BIN = 8;
const BINS = { L: 16, a: 32, b: 32 } as const;
const BIN_COUNT = BINS.L * BINS.a * BINS.b;
/** How far the colours can move the network's own answer, as a factor on the log odds; measured on rendered garments with true masks. */
const COLOUR_SAYS = 1.5;
const MOST_ODDS = 3;
/** Share of a bin under which its colour is too rare to tell anything. */
const RARE = 1e-4;
/** Each round finds the colours anew from the outline of the round before; more than three change nothing worth the time. */
const ROUNDS = 3;
/** Part of the shorter side: along the frame lies the ground (mostly), and near it the garment counts less. */
const RING = 0.04;
const RING_WEIGHT = 0.7;
const MIDDLE_FROM = 0.15;
/** The odds are averaged over this part of the longer side, so that a print keeps the colour it shares with the ground. */
const SMOOTHING = 1 / 96;

/** Colour bin of every second pixel of every second row. */
function binsOf({ rgb, widthPx }: Pixels, width: number, height: number): Uint16Array {
	const half = new Uint8Array(width * height * 3);
	for (let y = 0, to = 0; y < height; y++)
		for (let x = 0, from = y * 2 * widthPx * 3; x < width; x++, from += 6) {
			half[to++] = rgb[from]!;
			half[to++] = rgb[from + 1]!;
			half[to++] = rgb[from + 2]!;
		}
	const labs = labFromPixels(half, 3);
	const bins = new Uint16Array(width * height);
	const binAlong = (value: number, count: number) => Math.min(count - 1, Math.max(0, Math.floor(value / BIN)));
	for (let i = 0, at = 0; i < bins.length; i++, at += 3) {
		const L = binAlong(labs[at]!, BINS.L);
		const a = binAlong(labs[at + 1]! + 128, BINS.a);
		const b = binAlong(labs[at + 2]! + 128, BINS.b);
		bins[i] = (L * BINS.a + a) * BINS.b + b;
	}
	return bins;
}

/** Each bin mixed with its neighbours along one axis (1 2 1); `step` bins lie between neighbours, `size` along the axis. */
function mixed(shares: Float64Array, step: number, size: number): Float64Array {
	const into = new Float64Array(shares.length);
	for (let block = 0; block < shares.length; block += step * size) {
		for (let place = 0; place < size; place++) {
			const [back, on] = [place > 0 ? step : 0, place < size - 1 ? step : 0];
			for (let i = block + place * step, end = i + step; i < end; i++)
				into[i] = (shares[i - back]! + 2 * shares[i]! + shares[i + on]!) / 4;
		}
	}
	return into;
}

/** The counts as shares of their sum, neighbouring colours mixed; all 0 where nothing was counted. */
function smoothShares(counts: Float64Array): Float64Array {
	let total = 0;
	for (let i = 0; i < counts.length; i++) total += counts[i]!;
	const shares = new Float64Array(counts.length);
	if (total > 0) for (let i = 0; i < counts.length; i++) shares[i] = counts[i]! / total;
	return mixed(mixed(mixed(shares, 1, BINS.b), BINS.b, BINS.a), BINS.a * BINS.b, BINS.L);
}

/** Running mean over `radius` values each way along lines of `length` values, `step` apart; the outermost stand for what lies beyond. */
function meanAlong(from: Float32Array, lines: number, line: number, length: number, step: number, radius: number) {
	const into = new Float32Array(from.length);
	for (let l = 0, start = 0; l < lines; l++, start += line) {
		const last = start + (length - 1) * step;
		let sum = from[start]! * (radius + 1);
		for (let i = 1; i <= radius; i++) sum += from[Math.min(last, start + i * step)]!;
		for (let i = 0, at = start; i < length; i++, at += step) {
			into[at] = sum / (2 * radius + 1);
			sum += from[Math.min(last, at + (radius + 1) * step)]! - from[Math.max(start, at - radius * step)]!;
		}
	}
	return into;
}

/** Distance of each pixel from the frame as a part of the shorter side. */
function frameDistance(width: number, height: number): Float32Array {
	const out = new Float32Array(width * height);
	for (let y = 0, at = 0; y < height; y++)
		for (let x = 0; x < width; x++, at++)
			out[at] = Math.min(x, width - 1 - x, y, height - 1 - y) / Math.min(width, height);
	return out;
}

/** Log odds of cloth against ground for each colour bin, given how sure each pixel is cloth. */
function coloursOdds(bins: Uint16Array, sure: Float32Array, distance: Float32Array): Float32Array {
	const cloth = new Float64Array(BIN_COUNT);
	const ground = new Float64Array(BIN_COUNT);
	for (let i = 0; i < bins.length; i++) {
		const p = sure[i]!;
		const bin = bins[i]!;
		if (p > 0.5) cloth[bin]! += p * Math.min(1, Math.max(0.1, distance[i]! / MIDDLE_FROM));
		else ground[bin]! += 1 - p;
		if (distance[i]! < RING) ground[bin]! += RING_WEIGHT;
	}
	const [clothShares, groundShares] = [smoothShares(cloth), smoothShares(ground)];
	const odds = new Float32Array(BIN_COUNT);
	for (let bin = 0; bin < BIN_COUNT; bin++) {
		const heard = Math.log((clothShares[bin]! + RARE) / (groundShares[bin]! + RARE));
		odds[bin] = Math.max(-MOST_ODDS, Math.min(MOST_ODDS, heard));
	}
	return odds;
}

/** Log odds of each 8-bit probability, not quite certain at the ends: colours can still speak against the network. */
const OWN_ODDS = Float32Array.from({ length: 256 }, (_, value) => {
	const p = Math.min(0.98, Math.max(0.02, value / 255));
	return Math.log(p / (1 - p));
});

/** Probabilities of log odds between the ends that can occur, in steps of 1 / 256: an exponential a pixel would take most of the time here. */
const ODDS_STEPS = 256;
const LARGEST_ODDS = OWN_ODDS[255]! + COLOUR_SAYS * MOST_ODDS + 1 / ODDS_STEPS;
const PROBABILITIES = Float32Array.from(
	{ length: 2 * Math.ceil(LARGEST_ODDS * ODDS_STEPS) },
	(_, step) => 1 / (1 + Math.exp(LARGEST_ODDS - (step + 0.5) / ODDS_STEPS)),
);
const probabilityOf = (odds: number): number => PROBABILITIES[((odds + LARGEST_ODDS) * ODDS_STEPS) | 0]!;

/**
 * Probability of clothes a pixel (0..255) after the photo's own colours were heard: a colour that lies inside the outline and hardly outside
 * counts for cloth, one that lies along the frame and outside against it. For photos of one garment on a bed, a floor or a wall; where
 * garment and ground have the same colours, the network's answer stays.
 */
export function clothesByColour(pixels: Pixels, clothes: Uint8Array): Uint8Array {
	const { widthPx, heightPx } = pixels;
	// Every second pixel will do: what is found is averaged over a wider neighbourhood.
	const [width, height] = [Math.ceil(widthPx / 2), Math.ceil(heightPx / 2)];
	const bins = binsOf(pixels, width, height);
	const distance = frameDistance(width, height);
	const radius = Math.max(1, Math.round(Math.max(width, height) * SMOOTHING));
	const own = new Float32Array(bins.length);
	const sure = new Float32Array(bins.length);
	for (let y = 0, at = 0; y < height; y++)
		for (let x = 0; x < width; x++, at++) {
			const value = clothes[y * 2 * widthPx + x * 2]!;
			own[at] = OWN_ODDS[value]!;
			sure[at] = value / 255;
		}
	let heard = new Float32Array(bins.length);
	for (let round = 0; round < ROUNDS; round++) {
		// What is sure after the round before.
		if (round > 0) for (let i = 0; i < bins.length; i++) sure[i] = probabilityOf(own[i]! + COLOUR_SAYS * heard[i]!);
		const odds = coloursOdds(bins, sure, distance);
		for (let i = 0; i < bins.length; i++) heard[i] = odds[bins[i]!]!;
		heard = meanAlong(meanAlong(heard, height, width, width, 1, radius), width, 1, height, width, radius);
	}
	const out = new Uint8Array(clothes.length);
	for (let y = 0, at = 0; y < heightPx; y++)
		for (let x = 0; x < widthPx; x++, at++) {
			const said = heard[(y >> 1) * width + (x >> 1)]!;
			out[at] = 255 * probabilityOf(OWN_ODDS[clothes[at]!]! + COLOUR_SAYS * said) + 0.5;
		}
	return out;
}

/** The parse of a photo of one garment with its outline corrected by colour; pixels that join it take the label `filler`. */
export function parseByColour(pixels: Pixels, parse: Parse, filler: number): Parse {
	const clothes = clothesByColour(pixels, parse.clothes);
	const classes = parse.classes.slice();
	for (let i = 0; i < classes.length; i++) {
		const isCloth = clothes[i]! > 127;
		if (isCloth !== isClothes(classes[i]!)) classes[i] = isCloth ? filler : BACKGROUND;
	}
	return { ...parse, classes, clothes };
}
