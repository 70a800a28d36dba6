import { pictureOnScreen } from '../../../src/reading/screen-picture.ts';
import type { PictureBox } from '../../../src/wardrobe/words/reading.ts';

/** Longest side on which outlines are corrected: fine enough for a finger, small enough that a tap answers at once. */
const WORKING_SIDE = 512;

/** Size to work at for a picture of this size. */
export function workingSize(width: number, height: number): { readonly width: number; readonly height: number } {
	const scale = Math.min(1, WORKING_SIDE / Math.max(width, height));
	return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}

/** The size that screenshots are looked at in, see `pictureOnScreen`. */
const SCREEN_SIDE = 320;

/** Where the picture lies in a screenshot; null where it is no screenshot. */
export function offeredPicture(picture: HTMLImageElement): PictureBox | null {
	const scale = Math.min(1, SCREEN_SIDE / Math.max(picture.naturalWidth, picture.naturalHeight));
	const width = Math.max(1, Math.round(picture.naturalWidth * scale));
	const height = Math.max(1, Math.round(picture.naturalHeight * scale));
	return pictureOnScreen(pixelsOf(picture, { width, height }, true));
}

/** Fetches a picture of our own server, ready to draw. */
export async function loadPicture(address: string): Promise<HTMLImageElement> {
	const picture = new Image();
	picture.src = address;
	await picture.decode();
	return picture;
}

/** The picture's pixels at a size, as RGBA bytes. `smooth` off keeps values of a map of labels as they are. */
export function pixelsOf(
	picture: CanvasImageSource,
	size: { width: number; height: number },
	smooth: boolean,
): ImageData {
	const canvas = document.createElement('canvas');
	canvas.width = size.width;
	canvas.height = size.height;
	const context = canvas.getContext('2d', { willReadFrequently: true });
	if (!context) throw new Error('expected a 2d drawing context from the browser');
	context.imageSmoothingEnabled = smooth;
	context.drawImage(picture, 0, 0, size.width, size.height);
	return context.getImageData(0, 0, size.width, size.height);
}

/** First channel of every pixel. */
export function greyOf({ data }: ImageData): Uint8Array {
	const grey = new Uint8Array(data.length / 4);
	for (let pixel = 0; pixel < grey.length; pixel++) grey[pixel] = data[pixel * 4]!;
	return grey;
}

/** A mask as a grey PNG, 255 = clothes: the form in which the program keeps it. */
export function maskAsPng(mask: Uint8Array, { width, height }: { width: number; height: number }): Promise<Blob> {
	const canvas = document.createElement('canvas');
	canvas.width = width;
	canvas.height = height;
	const image = new ImageData(width, height);
	for (let pixel = 0; pixel < mask.length; pixel++) {
		image.data.fill(mask[pixel]!, pixel * 4, pixel * 4 + 3);
		image.data[pixel * 4 + 3] = 255;
	}
	canvas.getContext('2d')?.putImageData(image, 0, 0);
	return new Promise((resolve, reject) =>
		canvas.toBlob(
			(blob) => (blob ? resolve(blob) : reject(new Error('expected the browser to make a PNG of the outline'))),
			'image/png',
		),
	);
}

/** A piece of a picture as a JPEG file; `box` in pixels of the picture. */
export function cropAsFile(
	picture: HTMLImageElement,
	box: { x: number; y: number; width: number; height: number },
	name: string,
): Promise<File> {
	const canvas = document.createElement('canvas');
	canvas.width = Math.max(1, Math.round(box.width));
	canvas.height = Math.max(1, Math.round(box.height));
	canvas.getContext('2d')?.drawImage(picture, box.x, box.y, box.width, box.height, 0, 0, canvas.width, canvas.height);
	return new Promise((resolve, reject) =>
		canvas.toBlob(
			(blob) =>
				blob
					? resolve(new File([blob], name, { type: 'image/jpeg' }))
					: reject(new Error('expected the browser to crop the picture')),
			'image/jpeg',
			0.95,
		),
	);
}
