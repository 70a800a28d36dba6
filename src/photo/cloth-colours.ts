import { labFromPixels } from '../colour/lab-pixels.ts';
import type { Parse } from './parser.ts';
import { BACKGROUND, isClothes, type LabelMap, type Pixels } from './pixels.ts';

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

/** Squares along the longer side, about. */
const GRID_SIDE = 200;

/** The odds are told for squares of pixels, by the pixel in their first corner: what is found is averaged over more than that. */
type Grid = { readonly square: number; readonly width: number; readonly height: number };

function gridOver({ widthPx, heightPx }: Pixels): Grid {
	const square = Math.max(1, Math.round(Math.max(widthPx, heightPx) / GRID_SIDE));
	return { square, width: Math.ceil(widthPx / square), height: Math.ceil(heightPx / square) };
}

/** Colour bin of each square. */
function binsOf({ rgb, widthPx }: Pixels, { square, width, height }: Grid): Uint16Array {
	const corners = new Uint8Array(width * height * 3);
	for (let y = 0, to = 0; y < height; y++)
		for (let x = 0, from = y * square * widthPx * 3; x < width; x++, from += square * 3) {
			corners[to++] = rgb[from]!;
			corners[to++] = rgb[from + 1]!;
			corners[to++] = rgb[from + 2]!;
		}
	const labs = labFromPixels(corners, 3);
	const bins = new Uint16Array(width * height);
	for (let i = 0, at = 0; i < bins.length; i++, at += 3) {
		// Cutting off what follows the point rounds down: none is negative, as every sRGB colour's a* and b* lie within 128 of 0.
		const L = (labs[at]! / BIN) | 0;
		const a = ((labs[at + 1]! + 128) / BIN) | 0;
		const b = ((labs[at + 2]! + 128) / BIN) | 0;
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

/** Running mean over `radius` values each way along each row; the outermost stand for what lies beyond. */
function meanAlongRows(from: Float32Array, width: number, radius: number): Float32Array {
	const into = new Float32Array(from.length);
	for (let start = 0; start < from.length; start += width) {
		const last = start + width - 1;
		let sum = from[start]! * (radius + 1);
		for (let i = 1; i <= radius; i++) sum += from[Math.min(last, start + i)]!;
		for (let at = start; at <= last; at++) {
			into[at] = sum / (2 * radius + 1);
			sum += from[Math.min(last, at + radius + 1)]! - from[Math.max(start, at - radius)]!;
		}
	}
	return into;
}

/** The same along each column, all columns side by side: memory is read in its order. */
function meanAlongColumns(from: Float32Array, width: number, radius: number): Float32Array {
	const into = new Float32Array(from.length);
	const last = from.length - width;
	const sums = new Float64Array(width);
	for (let x = 0; x < width; x++) sums[x] = from[x]! * (radius + 1);
	for (let i = 1; i <= radius; i++) {
		const row = Math.min(last, i * width);
		for (let x = 0; x < width; x++) sums[x]! += from[row + x]!;
	}
	for (let row = 0; row <= last; row += width) {
		const joining = Math.min(last, row + (radius + 1) * width);
		const leaving = Math.max(0, row - radius * width);
		for (let x = 0; x < width; x++) {
			into[row + x] = sums[x]! / (2 * radius + 1);
			sums[x]! += from[joining + x]! - from[leaving + x]!;
		}
	}
	return into;
}

/** What a pixel counts for by its place. */
type Places = {
	/** As cloth: less near the frame. */
	readonly cloth: Float32Array;
	/** As ground, whatever it may show: along the frame. */
	readonly ground: Float32Array;
};

function placesOf(width: number, height: number): Places {
	const cloth = new Float32Array(width * height);
	const ground = new Float32Array(width * height);
	const shorter = Math.min(width, height);
	for (let y = 0, at = 0; y < height; y++)
		for (let x = 0; x < width; x++, at++) {
			const distance = Math.min(x, width - 1 - x, y, height - 1 - y) / shorter;
			cloth[at] = Math.min(1, Math.max(0.1, distance / MIDDLE_FROM));
			ground[at] = distance < RING ? RING_WEIGHT : 0;
		}
	return { cloth, ground };
}

/** Log odds of cloth against ground for each colour bin of `held`, given how sure each pixel is cloth; 0 for all other bins. */
function coloursOdds(bins: Uint16Array, held: Uint16Array, sure: Float32Array, places: Places): Float32Array {
	const cloth = new Float64Array(BIN_COUNT);
	const ground = new Float64Array(BIN_COUNT);
	for (let i = 0; i < bins.length; i++) {
		const p = sure[i]!;
		const bin = bins[i]!;
		if (p > 0.5) {
			cloth[bin]! += p * places.cloth[i]!;
			ground[bin]! += places.ground[i]!;
		} else ground[bin]! += 1 - p + places.ground[i]!;
	}
	const [clothShares, groundShares] = [smoothShares(cloth), smoothShares(ground)];
	const odds = new Float32Array(BIN_COUNT);
	for (const bin of held) {
		const heard = Math.log((clothShares[bin]! + RARE) / (groundShares[bin]! + RARE));
		odds[bin] = Math.max(-MOST_ODDS, Math.min(MOST_ODDS, heard));
	}
	return odds;
}

/** The bins that occur. */
function binsHeld(bins: Uint16Array): Uint16Array {
	const isHeld = new Uint8Array(BIN_COUNT);
	for (let i = 0; i < bins.length; i++) isHeld[bins[i]!] = 1;
	const held = new Uint16Array(BIN_COUNT);
	let count = 0;
	for (let bin = 0; bin < BIN_COUNT; bin++) if (isHeld[bin] === 1) held[count++] = bin;
	return held.subarray(0, count);
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

/** Log odds of cloth against ground by the photo's own colours, one for each square. */
function heardOdds(pixels: Pixels, clothes: Uint8Array, grid: Grid): Float32Array {
	const { square, width, height } = grid;
	const bins = binsOf(pixels, grid);
	const held = binsHeld(bins);
	const places = placesOf(width, height);
	const radius = Math.max(1, Math.round(Math.max(width, height) * SMOOTHING));
	const own = new Float32Array(bins.length);
	const sure = new Float32Array(bins.length);
	for (let y = 0, at = 0; y < height; y++)
		for (let x = 0; x < width; x++, at++) {
			const value = clothes[(y * pixels.widthPx + x) * square]!;
			own[at] = OWN_ODDS[value]!;
			sure[at] = value / 255;
		}
	let heard: Float32Array = new Float32Array(bins.length);
	for (let round = 0; round < ROUNDS; round++) {
		// What is sure after the round before.
		if (round > 0) for (let i = 0; i < bins.length; i++) sure[i] = probabilityOf(own[i]! + COLOUR_SAYS * heard[i]!);
		const odds = coloursOdds(bins, held, sure, places);
		for (let i = 0; i < bins.length; i++) heard[i] = odds[bins[i]!]!;
		heard = meanAlongColumns(meanAlongRows(heard, width, radius), width, radius);
	}
	return heard;
}

/**
 * What is clothes (1 a pixel, else 0) after the photo's own colours were heard: a colour that lies inside the outline and hardly outside
 * counts for cloth, one that lies along the frame and outside against it. For photos of one garment on a bed, a floor or a wall; where
 * garment and ground have the same colours, the network's answer stays. `clothes`: its probability of clothes a pixel, 0..255.
 */
export function clothesByColour(pixels: Pixels, clothes: Uint8Array): Uint8Array {
	const { widthPx, heightPx } = pixels;
	const grid = gridOver(pixels);
	const heard = heardOdds(pixels, clothes, grid);
	const isCloth = new Uint8Array(clothes.length);
	for (let y = 0, at = 0; y < heightPx; y++) {
		const row = Math.floor(y / grid.square) * grid.width;
		for (let x = 0, place = row; x < widthPx; place++) {
			const said = COLOUR_SAYS * heard[place]!;
			for (const end = Math.min(widthPx, x + grid.square); x < end; x++, at++)
				isCloth[at] = OWN_ODDS[clothes[at]!]! + said > 0 ? 1 : 0;
		}
	}
	return isCloth;
}

/** The labels of a photo of one garment with its outline corrected by colour; pixels that join it take the label `filler`. */
export function labelsByColour(
	pixels: Pixels,
	{ widthPx, heightPx, classes, clothes }: Parse,
	filler: number,
): LabelMap {
	const isCloth = clothesByColour(pixels, clothes);
	const corrected = classes.slice();
	for (let i = 0; i < classes.length; i++) {
		if ((isCloth[i] === 1) !== isClothes(classes[i]!)) corrected[i] = isCloth[i] === 1 ? filler : BACKGROUND;
	}
	return { widthPx, heightPx, classes: corrected };
}
