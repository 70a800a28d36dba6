import { labFromPixels } from '../../src/colour/lab-pixels.ts';
import { growRegion } from '../../src/colour/region.ts';
import { cameraKindOf } from '../../src/reading/light/camera-kind.ts';
import { ANALYSIS_SIDE_PX, pixelsFromRgba } from '../../src/reading/pixels.ts';
import type { PhotoInHand } from './reading-in-hand.ts';

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
	let cursor = { x: 0, y: 0 };
	let cursorShown = false;

	function draw(): void {
		context.putImageData(photo, 0, 0);
		if (mask) {
			// A light line inside a dark one reads on any cloth.
			const edge = context.getImageData(0, 0, photo.width, photo.height);
			for (let y = 1; y < photo.height - 1; y++) {
				for (let x = 1; x < photo.width - 1; x++) {
					const at = y * photo.width + x;
					const inside = mask[at] === 1;
					const border = inside && !(mask[at - 1] && mask[at + 1] && mask[at - photo.width] && mask[at + photo.width]);
					const near = !inside && (mask[at - 1] || mask[at + 1] || mask[at - photo.width] || mask[at + photo.width]);
					if (border) edge.data.fill(255, at * 4, at * 4 + 4);
					else if (near) edge.data.set([0, 0, 0, 255], at * 4);
				}
			}
			context.putImageData(edge, 0, 0);
		}
		if (cursorShown) {
			for (const [colour, width] of [
				['#000', 3],
				['#fff', 1],
			] as const) {
				context.strokeStyle = colour;
				context.lineWidth = width;
				context.beginPath();
				context.moveTo(cursor.x - 12, cursor.y);
				context.lineTo(cursor.x + 12, cursor.y);
				context.moveTo(cursor.x, cursor.y - 12);
				context.lineTo(cursor.x, cursor.y + 12);
				context.stroke();
			}
		}
	}

	function tap(x: number, y: number): void {
		if (mode() === 'white') {
			tapped.white({ x, y });
			return;
		}
		const grown = growRegion({ labs, width: photo.width, height: photo.height }, x, y).map((value) =>
			value > 0 ? 1 : 0,
		);
		mask = mask ? mask.map((inside, at) => inside | grown[at]!) : grown;
		draw();
		tapped.piece();
	}

	canvas.addEventListener('pointerdown', (event) => {
		const box = canvas.getBoundingClientRect();
		const at = (place: number, from: number, size: number, pixels: number) =>
			Math.min(pixels - 1, Math.max(0, Math.floor(((place - from) / size) * pixels)));
		cursorShown = false;
		tap(at(event.clientX, box.left, box.width, photo.width), at(event.clientY, box.top, box.height, photo.height));
	});
	stage.addEventListener('keydown', (event) => {
		const step = event.shiftKey ? 20 : 4;
		const moves: Readonly<Record<string, readonly [number, number]>> = {
			ArrowLeft: [-step, 0],
			ArrowRight: [step, 0],
			ArrowUp: [0, -step],
			ArrowDown: [0, step],
		};
		const move = moves[event.key];
		if (move) {
			cursor = {
				x: Math.min(photo.width - 1, Math.max(0, cursor.x + move[0])),
				y: Math.min(photo.height - 1, Math.max(0, cursor.y + move[1])),
			};
			cursorShown = true;
			draw();
		} else if (event.key === 'Enter' || event.key === ' ') tap(cursor.x, cursor.y);
		else return;
		event.preventDefault();
	});

	return {
		async show(file) {
			const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' });
			longestSidePx = Math.max(bitmap.width, bitmap.height);
			const scale = Math.min(1, ANALYSIS_SIDE_PX / longestSidePx);
			canvas.width = Math.max(1, Math.round(bitmap.width * scale));
			canvas.height = Math.max(1, Math.round(bitmap.height * scale));
			context.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
			bitmap.close();
			photo = context.getImageData(0, 0, canvas.width, canvas.height);
			labs = labFromPixels(photo.data, 4);
			mask = null;
			cursor = { x: Math.floor(canvas.width / 2), y: Math.floor(canvas.height / 2) };
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
