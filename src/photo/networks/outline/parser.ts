import sharp from 'sharp';
import type { Frame, OutlinePicture } from '../../../reading/outline/outline-picture.ts';
import type { Parse } from '../../../reading/outline/parse.ts';
import { CLASSES, isClothes, type Pixels, visiblePixels } from '../../../reading/pixels.ts';
import { softmax } from '../softmax.ts';
import { type NetworkAnswer, parserNetwork } from './parser-network.ts';

/** What the network says of a photo, and what it was shown. */
export type ParsedPhoto = Parse & { readonly picture: OutlinePicture };

/** The photo fitted into the network's picture, its edge drawn out around it. */
async function letterboxed(
	pixels: Pixels,
	widthPx: number,
	heightPx: number,
): Promise<{ rgb: Uint8Array; frame: Frame }> {
	const scale = Math.min(widthPx / pixels.widthPx, heightPx / pixels.heightPx);
	const fitted = {
		width: Math.max(1, Math.round(pixels.widthPx * scale)),
		height: Math.max(1, Math.round(pixels.heightPx * scale)),
	};
	const left = Math.floor((widthPx - fitted.width) / 2);
	const top = Math.floor((heightPx - fitted.height) / 2);
	// Around it the photo's outermost pixels go on: a plain colour there would look like the ground, and the real ground like the garment.
	const rgb = await sharp(pixels.rgb, { raw: { width: pixels.widthPx, height: pixels.heightPx, channels: 3 } })
		.resize(fitted.width, fitted.height, { fit: 'fill' })
		.extend({
			left,
			top,
			right: widthPx - fitted.width - left,
			bottom: heightPx - fitted.height - top,
			extendWith: 'copy',
		})
		.raw()
		.toBuffer();
	return {
		rgb,
		frame: {
			left: left / widthPx,
			top: top / heightPx,
			widthPx: fitted.width / widthPx,
			heightPx: fitted.height / heightPx,
		},
	};
}

/** Class probabilities at the network's own resolution, pixel by pixel (all classes of a pixel together). */
function probabilities({ logits, classCount, widthPx, heightPx }: NetworkAnswer): Float32Array {
	const plane = widthPx * heightPx;
	const out = new Float32Array(plane * classCount);
	for (let i = 0; i < plane; i++) {
		let most = Number.NEGATIVE_INFINITY;
		for (let c = 0; c < classCount; c++) if (logits[c * plane + i]! > most) most = logits[c * plane + i]!;
		let sum = 0;
		for (let c = 0; c < classCount; c++) {
			const power = Math.exp(logits[c * plane + i]! - most);
			out[i * classCount + c] = power;
			sum += power;
		}
		for (let c = 0; c < classCount; c++) out[i * classCount + c]! /= sum;
	}
	return out;
}

/** Positions and weights for sampling one axis between two neighbours. */
function axisSamples(count: number, start: number, extent: number, size: number) {
	const low = new Int32Array(count);
	const high = new Int32Array(count);
	const weight = new Float32Array(count);
	for (let i = 0; i < count; i++) {
		const at = Math.min(size - 1, Math.max(0, (start + ((i + 0.5) / count) * extent) * size - 0.5));
		low[i] = Math.floor(at);
		high[i] = Math.min(size - 1, low[i]! + 1);
		weight[i] = at - low[i]!;
	}
	return { low, high, weight };
}

/** What each cell of the network's answer says: its label, and its probability of clothes. */
function cellsOf(grid: Float32Array, classCount: number): { labels: Uint8Array; clothes: Float32Array } {
	const labels = new Uint8Array(grid.length / classCount);
	const clothes = new Float32Array(labels.length);
	for (let cell = 0, from = 0; cell < labels.length; cell++, from += classCount) {
		for (let k = 0; k < classCount; k++) if (isClothes(k)) clothes[cell]! += grid[from + k]!;
		labels[cell] = labelOf(grid, from, classCount, clothes[cell]!);
	}
	return { labels, clothes };
}

/** The likeliest class. Whether it is cloth is decided before which cloth it is: a coat that might be a dress is still no background. */
function labelOf(values: Float32Array, from: number, classCount: number, clothes: number): number {
	const wanted = clothes > 0.5;
	let best = 0;
	let most = -1;
	for (let k = 0; k < classCount; k++) {
		const value = values[from + k]!;
		if (value <= most || isClothes(k) !== wanted) continue;
		most = value;
		best = k;
	}
	return best;
}

/**
 * Labels and clothes probability of every photo pixel, by bilinear sampling of the class probabilities. What all four cells around a pixel say
 * is true between them, so that the classes are only weighed along the borders.
 */
function labelled(answer: NetworkAnswer, frame: Frame, pixels: Pixels): { classes: Uint8Array; clothes: Uint8Array } {
	const { classCount, widthPx: gridWidth, heightPx: gridHeight } = answer;
	const grid = probabilities(answer);
	const cells = cellsOf(grid, classCount);
	const columns = axisSamples(pixels.widthPx, frame.left, frame.widthPx, gridWidth);
	const rows = axisSamples(pixels.heightPx, frame.top, frame.heightPx, gridHeight);
	const classes = new Uint8Array(pixels.widthPx * pixels.heightPx);
	const clothes = new Uint8Array(classes.length);
	const mixed = new Float32Array(classCount);
	for (let y = 0, at = 0; y < pixels.heightPx; y++) {
		const above = rows.low[y]! * gridWidth;
		const below = rows.high[y]! * gridWidth;
		const v = rows.weight[y]!;
		for (let x = 0; x < pixels.widthPx; x++, at++) {
			const u = columns.weight[x]!;
			const a = above + columns.low[x]!;
			const b = above + columns.high[x]!;
			const c = below + columns.low[x]!;
			const d = below + columns.high[x]!;
			const upper = cells.clothes[a]! * (1 - u) + cells.clothes[b]! * u;
			const lower = cells.clothes[c]! * (1 - u) + cells.clothes[d]! * u;
			const cloth = upper * (1 - v) + lower * v;
			clothes[at] = cloth * 255 + 0.5;
			const label = cells.labels[a]!;
			if (label === cells.labels[b] && label === cells.labels[c] && label === cells.labels[d]) {
				classes[at] = label;
				continue;
			}
			for (let k = 0; k < classCount; k++) {
				const over = grid[a * classCount + k]! * (1 - u) + grid[b * classCount + k]! * u;
				const under = grid[c * classCount + k]! * (1 - u) + grid[d * classCount + k]! * u;
				mixed[k] = over * (1 - v) + under * v;
			}
			classes[at] = labelOf(mixed, 0, classCount, cloth);
		}
	}
	return { classes, clothes };
}

const chance = (logOdds: number): number => 1 / (1 + Math.exp(-logOdds));

/** Labels every pixel of the photo. Deterministic; any shape of photo; transparent pixels are background. */
export async function parsePhoto(pixels: Pixels): Promise<ParsedPhoto> {
	const network = await parserNetwork();
	const { rgb, frame } = await letterboxed(pixels, network.widthPx, network.heightPx);
	const answer = await network.run(rgb);
	if (answer.classCount !== CLASSES.length)
		throw new TypeError(`expected ${CLASSES.length} classes, the network has ${answer.classCount}`);
	const { classes, clothes } = labelled(answer, frame, pixels);
	if (pixels.alpha) {
		const visible = visiblePixels(pixels);
		for (let i = 0; i < classes.length; i++) if (!visible[i]) classes[i] = clothes[i] = 0;
	}
	return {
		widthPx: pixels.widthPx,
		heightPx: pixels.heightPx,
		classes,
		clothes,
		photoKind: softmax(answer.photoKind) as [number, number, number],
		garmentKind: softmax(answer.garmentKind),
		noPieces: chance(answer.noPieces),
		several: chance(answer.several),
		picture: { frame, rgb, widthPx: network.widthPx, heightPx: network.heightPx },
	};
}
