import type { Point } from './photo-view.ts';

/** Draws the outline of what is marked (1 = inside) on the photo: a light line inside a dark one reads on any cloth. */
export function drawOutline(context: CanvasRenderingContext2D, { width, height }: ImageData, mask: Uint8Array): void {
	const drawn = context.getImageData(0, 0, width, height);
	for (let y = 1; y < height - 1; y++) {
		for (let x = 1; x < width - 1; x++) {
			const at = y * width + x;
			const around = mask[at - 1]! + mask[at + 1]! + mask[at - width]! + mask[at + width]!;
			if (mask[at] === 1 && around < 4) drawn.data.fill(255, at * 4, at * 4 + 4);
			else if (mask[at] !== 1 && around > 0) drawn.data.set([0, 0, 0, 255], at * 4);
		}
	}
	context.putImageData(drawn, 0, 0);
}

/** Draws the cross that the keys move, light on dark. */
export function drawCross(context: CanvasRenderingContext2D, { x, y }: Point): void {
	for (const [colour, width] of [
		['#000', 3],
		['#fff', 1],
	] as const) {
		context.strokeStyle = colour;
		context.lineWidth = width;
		context.beginPath();
		context.moveTo(x - 12, y);
		context.lineTo(x + 12, y);
		context.moveTo(x, y - 12);
		context.lineTo(x, y + 12);
		context.stroke();
	}
}
