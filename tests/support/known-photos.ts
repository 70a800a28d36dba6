import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { type Lab65, labFromSrgb8 } from '../../src/colour/lab65.ts';
import type { LabelMap, Pixels } from '../../src/reading/pixels.ts';
import { insideClothes, sampleOf } from '../../src/reading/swatches/cloth-pixels.ts';
import { type RawSwatch, swatchesOf } from '../../src/reading/swatches/swatches.ts';
import type { PatternType } from '../../src/wardrobe/words/reading.ts';

type Lab = [number, number, number];
type Point = { readonly x: number; readonly y: number; readonly lab: Lab };
type Box = {
	readonly number: number;
	readonly x: number;
	readonly y: number;
	readonly width: number;
	readonly height: number;
};

/** A synthesised photo of the 24-patch chart, see fixtures/charts. */
export type ChartPhoto = {
	readonly file: string;
	readonly pixels: Pixels;
	readonly labels: LabelMap;
	/** Measured and true colour of each patch. */
	readonly patches: readonly { readonly seen: Lab65; readonly truth: Lab65 }[];
	/** The middle of the white patch. */
	readonly neutral: Point;
};

const WHITE_AND_GREYS_FROM = 19;

async function pixelsOf(file: URL): Promise<Pixels> {
	const { data, info } = await sharp(fileURLToPath(file)).removeAlpha().raw().toBuffer({ resolveWithObject: true });
	return { widthPx: info.width, heightPx: info.height, rgb: new Uint8Array(data), alpha: null };
}

function meanOfBox({ widthPx, rgb }: Pixels, box: Box): Lab65 {
	const sums = [0, 0, 0];
	let count = 0;
	for (let y = box.y + 4; y < box.y + box.height - 4; y++) {
		for (let x = box.x + 4; x < box.x + box.width - 4; x++) {
			count++;
			for (let k = 0; k < 3; k++) sums[k]! += rgb[(y * widthPx + x) * 3 + k]!;
		}
	}
	return labFromSrgb8(sums[0]! / count, sums[1]! / count, sums[2]! / count);
}

/** The picture with its white and grey patches covered by the ground from the upper left corner: nothing neutral is left in it. */
function withoutNeutrals(pixels: Pixels, boxes: readonly Box[]): Pixels {
	const { widthPx, rgb } = pixels;
	const covered = Uint8Array.from(rgb);
	for (const box of boxes.filter(({ number }) => number >= WHITE_AND_GREYS_FROM)) {
		for (let y = box.y - 3; y < box.y + box.height + 3; y++) {
			for (let x = box.x - 3; x < box.x + box.width + 3; x++) {
				for (let k = 0; k < 3; k++) covered[(y * widthPx + x) * 3 + k] = rgb[((y % 15) * widthPx + (x % 15)) * 3 + k]!;
			}
		}
	}
	return { ...pixels, rgb: covered };
}

/** Made once for all test files of a worker: these hold what is made from the photos. */
const charts = new Map<boolean, Promise<readonly ChartPhoto[]>>();
let cloths: Promise<readonly ClothPhoto[]> | null = null;

/** All chart photos; `hideNeutrals` covers the row of white and greys. */
export function chartPhotos(hideNeutrals: boolean): Promise<readonly ChartPhoto[]> {
	const made = charts.get(hideNeutrals) ?? readCharts(hideNeutrals);
	charts.set(hideNeutrals, made);
	return made;
}

async function readCharts(hideNeutrals: boolean): Promise<readonly ChartPhoto[]> {
	const folder = new URL('../../fixtures/charts/', import.meta.url);
	const { patches, charts } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as {
		patches: { number: number; lab: Lab }[];
		charts: { file: string; neutral: Point; boxes: Box[] }[];
	};
	return Promise.all(
		charts.map(async ({ file, neutral, boxes }) => {
			const pixels = await pixelsOf(new URL(file, folder));
			const { widthPx, heightPx } = pixels;
			return {
				file,
				pixels: hideNeutrals ? withoutNeutrals(pixels, boxes) : pixels,
				labels: { widthPx, heightPx, classes: new Uint8Array(widthPx * heightPx) },
				neutral,
				patches: boxes.map((box) => ({
					seen: meanOfBox(pixels, box),
					truth: patches.find(({ number }) => number === box.number)!.lab,
				})),
			};
		}),
	);
}

/** A rendered photo of cloth of known colour, see fixtures/renders. */
export type ClothPhoto = {
	readonly file: string;
	readonly pattern: PatternType;
	readonly colours: readonly { readonly lab: Lab65; readonly share: number }[];
	readonly neutral: (Point & { readonly kind: string }) | null;
	readonly stripePeriodPx?: number;
	readonly directionDegrees?: number;
	readonly pixels: Pixels;
	/** Class 1 where the mask is white. */
	readonly labels: LabelMap;
	/** Class 1 a little inside the mask's edge. */
	readonly inside: Uint8Array;
	/** The uncorrected swatches. */
	readonly swatches: readonly RawSwatch[];
};

type ClothTruth = Omit<ClothPhoto, 'pixels' | 'labels' | 'inside' | 'swatches'> & { readonly maskFile: string };

/** All rendered photos with their masks and swatches. */
export function clothPhotos(): Promise<readonly ClothPhoto[]> {
	cloths ??= readCloths();
	return cloths;
}

async function readCloths(): Promise<readonly ClothPhoto[]> {
	const folder = new URL('../../fixtures/renders/', import.meta.url);
	const { pictures } = JSON.parse(readFileSync(new URL('truth.json', folder), 'utf8')) as { pictures: ClothTruth[] };
	return Promise.all(
		pictures.map(async ({ maskFile, ...truth }) => {
			const pixels = await pixelsOf(new URL(truth.file, folder));
			const mask = await sharp(fileURLToPath(new URL(maskFile, folder)))
				.toColourspace('b-w')
				.raw()
				.toBuffer();
			const { widthPx, heightPx } = pixels;
			const labels = { widthPx, heightPx, classes: Uint8Array.from(mask, (value) => (value >= 128 ? 1 : 0)) };
			const inside = insideClothes(labels).marks;
			return { ...truth, pixels, labels, inside, swatches: swatchesOf([sampleOf(pixels, inside, 1, 'top')]) };
		}),
	);
}

/** The middle value; the lower of the two middle ones for an even count. */
export const medianOf = (values: readonly number[]): number =>
	[...values].sort((a, b) => a - b)[Math.floor((values.length - 1) / 2)]!;

export const meanOf = (values: readonly number[]): number =>
	values.reduce((sum, value) => sum + value, 0) / values.length;
