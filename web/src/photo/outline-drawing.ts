/** Longest side of the drawing; the picture itself is finer than the outline. */
const DRAWN_SIDE = 900;

/** The edge of the mask as a layer of its own: black beside white, to be seen on any cloth; what is outside dimmed to grey. */
function outlineLayer(mask: Uint8Array, { width, height }: { width: number; height: number }): ImageData {
	const layer = new ImageData(width, height);
	for (let y = 0; y < height; y++) {
		for (let x = 0; x < width; x++) {
			const at = y * width + x;
			const inside = mask[at]! > 0;
			const edge =
				(x > 0 && mask[at - 1]! > 0 !== inside) ||
				(x < width - 1 && mask[at + 1]! > 0 !== inside) ||
				(y > 0 && mask[at - width]! > 0 !== inside) ||
				(y < height - 1 && mask[at + width]! > 0 !== inside);
			const pixel = at * 4;
			if (edge) layer.data.set(inside ? [255, 255, 255, 255] : [0, 0, 0, 255], pixel);
			else if (!inside) layer.data.set([119, 119, 119, 170], pixel);
		}
	}
	return layer;
}

/** Draws the photo with its outline onto a canvas, at the photo's own proportions. */
export function drawOutline(
	canvas: HTMLCanvasElement,
	picture: HTMLImageElement,
	mask: Uint8Array,
	size: { width: number; height: number },
): void {
	const scale = Math.min(1, DRAWN_SIDE / Math.max(picture.naturalWidth, picture.naturalHeight));
	const width = Math.round(picture.naturalWidth * scale);
	const height = Math.round(picture.naturalHeight * scale);
	if (canvas.width !== width) canvas.width = width;
	if (canvas.height !== height) canvas.height = height;
	const context = canvas.getContext('2d');
	if (!context) return;
	const layer = document.createElement('canvas');
	layer.width = size.width;
	layer.height = size.height;
	layer.getContext('2d')?.putImageData(outlineLayer(mask, size), 0, 0);
	context.drawImage(picture, 0, 0, width, height);
	context.imageSmoothingEnabled = false;
	context.drawImage(layer, 0, 0, width, height);
}
