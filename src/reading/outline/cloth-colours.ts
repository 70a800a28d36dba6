import { labFromPixels } from '../../colour/lab-pixels.ts';
import { BACKGROUND, isClothes, type LabelMap, type Pixels } from '../pixels.ts';
import { type ColourBins, colourBins, smoothShares } from './colour-bins.ts';
import type { Parse } from './parse.ts';

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

/** Colours of the squares, by the pixel that speaks for each: three bytes a square. */
function cornersOf({ rgb, widthPx }: Pixels, { square, width, height }: Grid): Uint8Array {
	const corners = new Uint8Array(width * height * 3);
	for (let y = 0, to = 0; y < height; y++)
		for (let x = 0, from = y * square * widthPx * 3; x < width; x++, from += square * 3) {
			corners[to++] = rgb[from]!;
			corners[to++] = rgb[from + 1]!;
			corners[to++] = rgb[from + 2]!;
		}
	return corners;
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

/** Log odds of cloth against ground for each colour bin that occurs, given how sure each square is cloth; 0 for all other bins. */
function coloursOdds({ of, held, sides }: ColourBins, sure: Float32Array, places: Places): Float32Array {
	const count = sides[0] * sides[1] * sides[2];
	const cloth = new Float64Array(count);
	const ground = new Float64Array(count);
	for (let i = 0; i < of.length; i++) {
		const p = sure[i]!;
		const bin = of[i]!;
		if (p > 0.5) {
			cloth[bin]! += p * places.cloth[i]!;
			ground[bin]! += places.ground[i]!;
		} else ground[bin]! += 1 - p + places.ground[i]!;
	}
	const clothShares = smoothShares(cloth, sides);
	const groundShares = smoothShares(ground, sides);
	const odds = new Float32Array(count);
	for (let i = 0; i < held.length; i++) {
		const bin = held[i]!;
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

/** Log odds of cloth against ground by the photo's own colours, one for each square. */
function heardOdds(pixels: Pixels, clothes: Uint8Array, grid: Grid): Float32Array {
	const { square, width, height } = grid;
	const bins = colourBins(labFromPixels(cornersOf(pixels, grid), 3));
	const { of } = bins;
	const places = placesOf(width, height);
	const radius = Math.max(1, Math.round(Math.max(width, height) * SMOOTHING));
	const own = new Float32Array(of.length);
	const sure = new Float32Array(of.length);
	for (let y = 0, at = 0; y < height; y++)
		for (let x = 0, from = y * square * pixels.widthPx; x < width; x++, at++, from += square) {
			const value = clothes[from]!;
			own[at] = OWN_ODDS[value]!;
			sure[at] = value / 255;
		}
	let heard: Float32Array = new Float32Array(of.length);
	for (let round = 0; round < ROUNDS; round++) {
		// What is sure after the round before.
		if (round > 0) for (let i = 0; i < of.length; i++) sure[i] = probabilityOf(own[i]! + COLOUR_SAYS * heard[i]!);
		const odds = coloursOdds(bins, sure, places);
		for (let i = 0; i < of.length; i++) heard[i] = odds[of[i]!]!;
		heard = meanAlongColumns(meanAlongRows(heard, width, radius), width, radius);
	}
	return heard;
}

/** The least probability of clothes, 0..255, from which a pixel is cloth where the colours say `heard`; 256 where none is enough. */
function leastClothes(heard: number): number {
	const said = COLOUR_SAYS * heard;
	let least = (probabilityOf(-said) * 255) | 0;
	while (least > 0 && OWN_ODDS[least - 1]! + said > 0) least--;
	while (least < 256 && OWN_ODDS[least]! + said <= 0) least++;
	return least;
}

/**
 * The labels of a photo of one garment after the photo's own colours were heard: a colour that lies inside the outline and hardly outside
 * counts for cloth, one that lies along the frame and outside against it. For photos of one garment on a bed, a floor or a wall; where
 * garment and ground have the same colours, the network's answer stays. All clothes get the label given.
 */
export function labelsByColour(pixels: Pixels, parse: Parse, label: number): LabelMap {
	const { widthPx, heightPx, classes, clothes } = parse;
	const grid = gridOver(pixels);
	const heard = heardOdds(pixels, clothes, grid);
	const corrected = new Uint8Array(classes.length);
	const leasts = new Uint16Array(grid.width * grid.square);
	for (let y = 0, at = 0; y < heightPx; y++) {
		// The rows of a square share what the colours say.
		if (y % grid.square === 0)
			for (let x = 0, place = (y / grid.square) * grid.width; x < leasts.length; place++) {
				const least = leastClothes(heard[place]!);
				for (const end = x + grid.square; x < end; x++) leasts[x] = least;
			}
		for (let x = 0; x < widthPx; x++, at++) {
			const own = classes[at]!;
			corrected[at] = clothes[at]! >= leasts[x]! ? label : isClothes(own) ? BACKGROUND : own;
		}
	}
	return { widthPx, heightPx, classes: corrected };
}
