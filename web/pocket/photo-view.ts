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

/** Draws the photo upright, no larger than it is analysed, on a canvas that takes its size; returns the photo's own longer side in pixels. */
async function drawUpright(file: Blob, canvas: HTMLCanvasElement, context: CanvasRenderingContext2D): Promise<number> {
	const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
	const longestSidePx = Math.max(bitmap.width, bitmap.height);
	const scale = Math.min(1, ANALYSIS_SIDE_PX / longestSidePx);
	canvas.width = Math.max(1, Math.round(bitmap.width * scale));
	canvas.height = Math.max(1, Math.round(bitmap.height * scale));
	context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
	bitmap.close();
	return longestSidePx;
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
	let photo: ImageData = context.createImageData(1, 1);
	let labs: Float32Array = new Float32Array(3);
	let mask: Uint8Array | null = null;
	let longestSidePx = 1;
	let cross: Point = { x: 0, y: 0 };
	let crossShown = false;

	function draw(): void {
		context.putImageData(photo, 0, 0);
		if (mask) drawOutline(context, photo, mask);
		if (crossShown) drawCross(context, cross);
	}

	function tap({ x, y }: Point): void {
		if (mode() === 'white') {
			tapped.white({ x, y });
			return;
		}
		const region = growRegion({ labs, width: photo.width, height: photo.height }, x, y);
		mask = region.map((value, at) => (value > 0 || mask?.[at] === 1 ? 1 : 0));
		draw();
		tapped.piece();
	}

	listenToStage(stage, canvas, {
		tap(at) {
			crossShown = false;
			tap(at);
		},
		move(x, y) {
			const within = (place: number, pixels: number) => Math.min(pixels - 1, Math.max(0, place));
			cross = { x: within(cross.x + x, photo.width), y: within(cross.y + y, photo.height) };
			crossShown = true;
			draw();
		},
		enter: () => tap(cross),
	});

	return {
		async show(file) {
			longestSidePx = await drawUpright(file, canvas, context);
			photo = context.getImageData(0, 0, canvas.width, canvas.height);
			labs = labFromPixels(photo.data, 4);
			mask = null;
			cross = { x: Math.floor(canvas.width / 2), y: Math.floor(canvas.height / 2) };
			draw();
		},
		mask: () => mask,
		inHand: () => ({
			pixels: pixelsFromRgba(photo.data, photo.width, photo.height),
			camera: cameraKindOf({ make: null, model: null }, longestSidePx),
		}),
		clearPiece() {
			mask = null;
			draw();
		},
	};
}
