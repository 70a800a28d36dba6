import { labFromPixels } from '../colour/lab-pixels.ts';
import type { Pixels } from './pixels.ts';

/** Square pieces of cloth, free of edges of the garment, light made even. */
export type ClothTiles = {
	/** Side of each tile in its own pixels. */
	readonly side: number;
	/** Pixels of the picture per tile pixel. */
	readonly scale: number;
	/** One array a tile: CIELAB differences from the local mean, L, a, b triples, row by row. */
	readonly tiles: readonly Float32Array[];
};

/** The cloth's longer side is brought to this many pixels, so that fold and weave look alike in every photo. */
const CLOTH_SIDE = 224;
const TILE_SIDE = 48;
/** Tiles overlap by half; one with more than this share outside the cloth is left out. */
const LARGEST_OUTSIDE = 0.12;
const MOST_TILES = 14;
/** Half the window that the local mean is taken over, tile pixels. */
const FINE_RADIUS = 4;

type Cloth = {
	readonly width: number;
	readonly height: number;
	readonly labs: Float32Array;
	readonly inside: Uint8Array;
};

function boundsOf(marks: Uint8Array, wanted: number, width: number) {
	let [left, right, top, bottom] = [Infinity, -1, Infinity, -1];
	for (let at = 0; at < marks.length; at++) {
		if (marks[at] !== wanted) continue;
		const column = at % width;
		const row = (at - column) / width;
		left = Math.min(left, column);
		right = Math.max(right, column);
		top = Math.min(top, row);
		bottom = Math.max(bottom, row);
	}
	return right < 0 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}

/** The cloth cut out and shrunk by averaging; a cell counts as inside where all of its pixels do. */
function shrunkCloth(
	pixels: Pixels,
	marks: Uint8Array,
	wanted: number,
	bounds: { left: number; top: number; width: number; height: number },
	scale: number,
): Cloth {
	const [width, height] = [
		Math.max(1, Math.floor(bounds.width / scale)),
		Math.max(1, Math.floor(bounds.height / scale)),
	];
	const bytes = new Uint8Array(width * height * 3);
	const inside = new Uint8Array(width * height);
	for (let row = 0; row < height; row++) {
		const [v0, v1] = [bounds.top + Math.floor(row * scale), bounds.top + Math.floor((row + 1) * scale)];
		for (let column = 0; column < width; column++) {
			const [u0, u1] = [bounds.left + Math.floor(column * scale), bounds.left + Math.floor((column + 1) * scale)];
			let [r, g, b, count, own] = [0, 0, 0, 0, 0];
			for (let v = v0; v < v1; v++) {
				for (let u = u0; u < u1; u++) {
					const at = v * pixels.widthPx + u;
					r += pixels.rgb[at * 3]!;
					g += pixels.rgb[at * 3 + 1]!;
					b += pixels.rgb[at * 3 + 2]!;
					count++;
					if (marks[at] === wanted) own++;
				}
			}
			const cell = row * width + column;
			inside[cell] = own === count ? 1 : 0;
			bytes.set([Math.round(r / count), Math.round(g / count), Math.round(b / count)], cell * 3);
		}
	}
	return { width, height, labs: labFromPixels(bytes, 3), inside };
}

/** The tile at a place with its plane of light (least squares over the inside pixels of each coordinate) taken off; what lies outside is 0. */
function levelledTile({ width, labs, inside }: Cloth, left: number, top: number): Float32Array {
	const tile = new Float32Array(TILE_SIDE * TILE_SIDE * 3);
	const middle = (TILE_SIDE - 1) / 2;
	for (let k = 0; k < 3; k++) {
		let [n, sum, sx, sy, xx, yy] = [0, 0, 0, 0, 0, 0];
		for (let v = 0; v < TILE_SIDE; v++) {
			for (let u = 0; u < TILE_SIDE; u++) {
				const at = (top + v) * width + left + u;
				if (!inside[at]) continue;
				const value = labs[at * 3 + k]!;
				const [x, y] = [u - middle, v - middle];
				n++;
				sum += value;
				sx += x * value;
				sy += y * value;
				xx += x * x;
				yy += y * y;
			}
		}
		const mean = sum / n;
		for (let v = 0; v < TILE_SIDE; v++) {
			for (let u = 0; u < TILE_SIDE; u++) {
				const at = (top + v) * width + left + u;
				if (!inside[at]) continue;
				const plane = mean + (sx / xx) * (u - middle) + (sy / yy) * (v - middle);
				tile[(v * TILE_SIDE + u) * 3 + k] = labs[at * 3 + k]! - plane;
			}
		}
	}
	return tile;
}

/**
 * Tiles from all over one cloth: the pixels whose mark is `wanted`. No tiles where the cloth is too small or too narrow for one. At most 14,
 * evenly spread.
 */
export function clothTiles(pixels: Pixels, marks: Uint8Array, wanted: number): ClothTiles {
	const bounds = boundsOf(marks, wanted, pixels.widthPx);
	if (!bounds) return { side: TILE_SIDE, scale: 1, tiles: [] };
	const scale = Math.max(1, Math.max(bounds.width, bounds.height) / CLOTH_SIDE);
	const cloth = shrunkCloth(pixels, marks, wanted, bounds, scale);
	const places: [number, number][] = [];
	for (let top = 0; top + TILE_SIDE <= cloth.height; top += TILE_SIDE / 2) {
		for (let left = 0; left + TILE_SIDE <= cloth.width; left += TILE_SIDE / 2) {
			let outside = 0;
			for (let v = 0; v < TILE_SIDE; v++) {
				for (let u = 0; u < TILE_SIDE; u++) if (!cloth.inside[(top + v) * cloth.width + left + u]) outside++;
			}
			if (outside <= LARGEST_OUTSIDE * TILE_SIDE * TILE_SIDE) places.push([left, top]);
		}
	}
	const step = Math.max(1, places.length / MOST_TILES);
	const chosen = Array.from({ length: Math.min(places.length, MOST_TILES) }, (_, i) => places[Math.floor(i * step)]!);
	return { side: TILE_SIDE, scale, tiles: chosen.map(([left, top]) => levelledTile(cloth, left, top)) };
}

/** The tile without what is coarser than about nine pixels: folds go, stripes, checks, small prints and weave stay. */
export function fineTile(tile: Float32Array, side: number): Float32Array {
	const stride = side + 1;
	const fine = new Float32Array(tile.length);
	const sums = new Float64Array(stride * stride);
	for (let k = 0; k < 3; k++) {
		for (let v = 0; v < side; v++) {
			for (let u = 0; u < side; u++) {
				const above = sums[v * stride + u + 1]! - sums[v * stride + u]!;
				sums[(v + 1) * stride + u + 1] = tile[(v * side + u) * 3 + k]! + sums[(v + 1) * stride + u]! + above;
			}
		}
		for (let v = 0; v < side; v++) {
			const [top, bottom] = [Math.max(0, v - FINE_RADIUS), Math.min(side, v + FINE_RADIUS + 1)];
			for (let u = 0; u < side; u++) {
				const [left, right] = [Math.max(0, u - FINE_RADIUS), Math.min(side, u + FINE_RADIUS + 1)];
				const sum =
					sums[bottom * stride + right]! -
					sums[top * stride + right]! -
					sums[bottom * stride + left]! +
					sums[top * stride + left]!;
				fine[(v * side + u) * 3 + k] = tile[(v * side + u) * 3 + k]! - sum / ((bottom - top) * (right - left));
			}
		}
	}
	return fine;
}
