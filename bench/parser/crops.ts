import type { Pixels } from '../../src/reading/pixels.ts';
import type { LabelledPhoto } from './labelled-folder.ts';

/** Where a photo's pixel (x, y) comes from in a source of the same size; null = from nowhere, the neighbour's frame or the ground. */
type Source = (x: number, y: number) => { readonly x: number; readonly y: number } | null;

/** Column of a photo that holds no person in any row: what a new ground is stretched from. */
function groundColumn({ truth: { widthPx, heightPx, classes } }: LabelledPhoto): number {
	let best = 0;
	let fewest = heightPx + 1;
	for (let x = 0; x < widthPx; x++) {
		let person = 0;
		for (let y = 0; y < heightPx; y++) if (classes[y * widthPx + x] !== 0) person++;
		if (person < fewest) [best, fewest] = [x, person];
	}
	return best;
}

/** The photo seen through `source`; where that gives nothing, the street mirrored at the frame, and nobody in it. */
function moved(photo: LabelledPhoto, name: string, source: Source): LabelledPhoto {
	const { widthPx, heightPx } = photo.pixels;
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	const classes = new Uint8Array(widthPx * heightPx);
	const ground = groundColumn(photo);
	for (let y = 0, at = 0; y < heightPx; y++) {
		for (let x = 0; x < widthPx; x++, at++) {
			const from = source(x, y);
			const fromX = from ? Math.floor(from.x) : -1;
			const fromY = from ? Math.floor(from.y) : y;
			const inside = fromX >= 0 && fromX < widthPx && fromY >= 0 && fromY < heightPx;
			const index = inside ? fromY * widthPx + fromX : Math.min(heightPx - 1, Math.max(0, fromY)) * widthPx + ground;
			for (let channel = 0; channel < 3; channel++) rgb[at * 3 + channel] = photo.pixels.rgb[index * 3 + channel]!;
			classes[at] = inside ? photo.truth.classes[index]! : 0;
		}
	}
	return {
		name: `${photo.name} ${name}`,
		pixels: { widthPx, heightPx, rgb, alpha: null },
		truth: { widthPx, heightPx, classes },
	};
}

/** The right or left part of the frame gone, the rest in its place: the person stands at the side. */
const offCentre = (photo: LabelledPhoto, share: number): LabelledPhoto =>
	moved(photo, 'off centre', (x, y) => ({ x: x - share * photo.pixels.widthPx, y }));

function cropped(photo: LabelledPhoto, name: string, left: number, top: number, width: number, height: number) {
	const crop = (data: Uint8Array, channels: number) => {
		const out = new Uint8Array(width * height * channels);
		for (let y = 0; y < height; y++) {
			const start = ((top + y) * photo.pixels.widthPx + left) * channels;
			out.set(data.subarray(start, start + width * channels), y * width * channels);
		}
		return out;
	};
	const pixels: Pixels = { widthPx: width, heightPx: height, rgb: crop(photo.pixels.rgb, 3), alpha: null };
	return {
		name: `${photo.name} ${name}`,
		pixels,
		truth: { widthPx: width, heightPx: height, classes: crop(photo.truth.classes, 1) },
	};
}

/** The person from about the waist up or down, and one side of the frame gone. */
function cutByFrame(photo: LabelledPhoto, index: number): LabelledPhoto {
	const { widthPx, heightPx } = photo.pixels;
	const width = Math.round(widthPx * 0.7);
	const height = Math.round(heightPx * 0.6);
	const left = index % 2 === 0 ? widthPx - width : 0;
	const top = index % 4 < 2 ? 0 : heightPx - height;
	return cropped(photo, 'cut by the frame', left, top, width, height);
}

/** The whole scene at less than half its size, in a corner of the street. */
function small(photo: LabelledPhoto, index: number): LabelledPhoto {
	const { widthPx, heightPx } = photo.pixels;
	const share = 0.45;
	const left = (index % 3) * 0.5 * (1 - share) * widthPx;
	const top = (1 - share) * heightPx * (index % 2 === 0 ? 1 : 0.5);
	return moved(photo, 'small', (x, y) => ({ x: (x - left) / share, y: (y - top) / share }));
}

/** Two photos side by side: both people count. */
function besides(photo: LabelledPhoto, other: LabelledPhoto): LabelledPhoto {
	const halves = [photo, other].map((one) => {
		const width = Math.round(one.pixels.widthPx * 0.6);
		return cropped(one, 'half', Math.floor((one.pixels.widthPx - width) / 2), 0, width, one.pixels.heightPx);
	});
	const [a, b] = halves as [LabelledPhoto, LabelledPhoto];
	const heightPx = Math.min(a.pixels.heightPx, b.pixels.heightPx);
	const widthPx = a.pixels.widthPx + b.pixels.widthPx;
	const join = (one: Uint8Array, next: Uint8Array, channels: number) => {
		const out = new Uint8Array(widthPx * heightPx * channels);
		for (let y = 0; y < heightPx; y++) {
			const [first, second] = [a.pixels.widthPx * channels, b.pixels.widthPx * channels];
			out.set(one.subarray(y * first, (y + 1) * first), y * widthPx * channels);
			out.set(next.subarray(y * second, (y + 1) * second), y * widthPx * channels + first);
		}
		return out;
	};
	return {
		name: `${photo.name} with ${other.name}`,
		pixels: { widthPx, heightPx, rgb: join(a.pixels.rgb, b.pixels.rgb, 3), alpha: null },
		truth: { widthPx, heightPx, classes: join(a.truth.classes, b.truth.classes, 1) },
	};
}

/** How a photo may be taken apart from the usual "one person in the middle", by name; `next` is another photo of the same set. */
export const CROPS: Readonly<
	Record<string, (photo: LabelledPhoto, index: number, next: LabelledPhoto) => LabelledPhoto>
> = {
	'as it is': (photo) => photo,
	'off centre by 20 %': (photo, index) => offCentre(photo, index % 2 === 0 ? 0.2 : -0.2),
	'off centre by 35 %': (photo, index) => offCentre(photo, index % 2 === 0 ? 0.35 : -0.35),
	'cut by the frame': cutByFrame,
	small,
	'one of two': (photo, _, next) => besides(photo, next),
};
