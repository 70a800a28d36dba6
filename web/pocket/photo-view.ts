import { labFromPixels } from '../../src/colour/lab-pixels.ts';
import { growRegion } from '../../src/colour/region.ts';
import { cameraKindOf } from '../../src/reading/light/camera-kind.ts';
import { ANALYSIS_SIDE_PX, pixelsFromRgba } from '../../src/reading/pixels.ts';
import { drawCross, drawOutline } from './photo-drawing.ts';
import type { PhotoInHand } from './reading-in-hand.ts';
import { listenToStage } from './stage-input.ts';

/** A point of the picture, in pixels. */
export type Point = { readonly x: number; readonly y: number };

export type PhotoView = {
	/** Draws the photo upright and forgets the last piece. */
	show(file: Blob): Promise<void>;
	/** Marked pixels, 1 = piece; null before anything was tapped. */
	mask(): Uint8Array | null;
	/** The photo in hand, and what took it by its size: nothing else of the file can be seen here. */
	inHand(): PhotoInHand;
	clearPiece(): void;
};

type Tapped = { readonly white: (at: Point) => void; readonly piece: () => void };

/** A photo as drawn, its colours in CIELAB, and its own longer side in pixels before it was drawn smaller. */
type DrawnPhoto = { readonly image: ImageData; readonly labs: Float32Array; readonly longestSidePx: number };

/** Draws the photo upright, no larger than it is analysed, on a canvas that takes its size. */
async function drawUpright(
	file: Blob,
	canvas: HTMLCanvasElement,
	context: CanvasRenderingContext2D,
): Promise<DrawnPhoto> {
	const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
	const longestSidePx = Math.max(bitmap.width, bitmap.height);
	const scale = Math.min(1, ANALYSIS_SIDE_PX / longestSidePx);
	canvas.width = Math.max(1, Math.round(bitmap.width * scale));
	canvas.height = Math.max(1, Math.round(bitmap.height * scale));
	context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
	bitmap.close();
	const image = context.getImageData(0, 0, canvas.width, canvas.height);
	return { image, labs: labFromPixels(image.data, 4), longestSidePx };
}

/** The cross moved by so many pixels, and held within the picture. */
function movedWithin({ x, y }: Point, byX: number, byY: number, { width, height }: HTMLCanvasElement): Point {
	const within = (place: number, pixels: number) => Math.min(pixels - 1, Math.max(0, place));
	return { x: within(x + byX, width), y: within(y + byY, height) };
}

/** The marked pixels and the region of like colour around a point, 1 each. */
function grownBy(mask: Uint8Array | null, { image: { width, height }, labs }: DrawnPhoto, { x, y }: Point): Uint8Array {
	const region = growRegion({ labs, width, height }, x, y);
	return region.map((value, at) => (value > 0 || mask?.[at] === 1 ? 1 : 0));
}

/**
 * The canvas on its stage (which has the keyboard's focus): shows the photo, takes taps (or arrow keys and Enter), grows the tapped piece and draws its outline.
 * `mode` says what a tap means at the moment.
 */
export function photoView(
	stage: HTMLElement,
	canvas: HTMLCanvasElement,
	mode: () => 'white' | 'piece',
	tapped: Tapped,
): PhotoView {
	const context = canvas.getContext('2d', { willReadFrequently: true })!;
	let photo: DrawnPhoto = { image: context.createImageData(1, 1), labs: new Float32Array(3), longestSidePx: 1 };
	let mask: Uint8Array | null = null;
	let cross: Point = { x: 0, y: 0 };
	let crossShown = false;

	function draw(): void {
		context.putImageData(photo.image, 0, 0);
		if (mask) drawOutline(context, photo.image, mask);
		if (crossShown) drawCross(context, cross);
	}

	function tap(at: Point): void {
		if (mode() === 'white') {
			tapped.white(at);
			return;
		}
		mask = grownBy(mask, photo, at);
		draw();
		tapped.piece();
	}

	listenToStage(stage, canvas, {
		tap(at) {
			crossShown = false;
			tap(at);
		},
		move(x, y) {
			cross = movedWithin(cross, x, y, canvas);
			crossShown = true;
			draw();
		},
		enter: () => tap(cross),
	});

	return {
		async show(file) {
			photo = await drawUpright(file, canvas, context);
			mask = null;
			cross = { x: Math.floor(canvas.width / 2), y: Math.floor(canvas.height / 2) };
			draw();
		},
		mask: () => mask,
		inHand: () => ({
			pixels: pixelsFromRgba(photo.image.data, photo.image.width, photo.image.height),
			camera: cameraKindOf({ make: null, model: null }, photo.longestSidePx),
		}),
		clearPiece() {
			mask = null;
			draw();
		},
	};
}
