import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { CLASSES, type LabelMap, type Pixels } from '../../src/reading/pixels.ts';

/** A photo with the class of every pixel, as somebody marked it. */
export type LabelledPhoto = { readonly name: string; readonly pixels: Pixels; readonly truth: LabelMap };

/** Colours of a PNG's palette by index, or null without one (PNG specification, third edition, 11.2.2). */
function paletteOfPng(png: Buffer): number[][] | null {
	const at = png.indexOf('PLTE', 0, 'latin1');
	if (at < 0) return null;
	const size = png.readUInt32BE(at - 4) / 3;
	return Array.from({ length: size }, (_, i) => [...png.subarray(at + 4 + i * 3, at + 7 + i * 3)]);
}

/** One class a pixel: the palette's index in an indexed PNG, the value in a grey one. */
async function classesOfPng(png: Buffer, name: string): Promise<Uint8Array> {
	const palette = paletteOfPng(png);
	const { data, info } = await sharp(png).raw().toBuffer({ resolveWithObject: true });
	const pixel = (i: number) => data.subarray(i * info.channels, i * info.channels + 3);
	if (!palette) return new Uint8Array(info.width * info.height).map((_, i) => pixel(i)[0]!);
	const key = (colour: ArrayLike<number>) => (colour[0]! << 16) | (colour[1]! << 8) | colour[2]!;
	const known = palette.slice(0, CLASSES.length);
	const indexOf = new Map(known.map((colour, index) => [key(colour), index]));
	if (indexOf.size < known.length)
		throw new Error(
			`Expected ${known.length} different colours for the classes in the label map of ${name}; received ${indexOf.size}.`,
		);
	return new Uint8Array(info.width * info.height).map((_, i) => indexOf.get(key(pixel(i))) ?? 255);
}

/** The photo and its marks from two files of the same size. */
async function labelledPhoto(folder: string, name: string): Promise<LabelledPhoto> {
	const photo = await sharp(join(folder, 'photo', `${name}.jpg`))
		.removeAlpha()
		.toColourspace('srgb')
		.raw()
		.toBuffer({ resolveWithObject: true });
	const { width: widthPx, height: heightPx } = photo.info;
	const classes = await classesOfPng(readFileSync(join(folder, 'label', `${name}.png`)), name);
	if (classes.length !== widthPx * heightPx)
		throw new Error(
			`Expected a label map of ${widthPx} x ${heightPx} pixels for ${name}; received ${classes.length} pixels.`,
		);
	const unknown = classes.find((one) => one >= CLASSES.length);
	if (unknown !== undefined)
		throw new Error(`Expected classes 0 to ${CLASSES.length - 1} in the label map of ${name}; received ${unknown}.`);
	return {
		name,
		pixels: { widthPx, heightPx, rgb: photo.data, alpha: null },
		truth: { widthPx, heightPx, classes },
	};
}

/** Names of the photos in a folder: those of a split of index.json, or all in photo/ where there is no such split. */
function namesIn(folder: string, split: string | null): string[] {
	const path = join(folder, 'index.json');
	if (split !== null && existsSync(path)) {
		const index = JSON.parse(readFileSync(path, 'utf8')) as Record<string, unknown>;
		const names = index[split];
		if (!Array.isArray(names))
			throw new Error(`Expected a list "${split}" in ${path}; received the keys ${Object.keys(index).join(', ')}.`);
		return names.map(String);
	}
	return readdirSync(join(folder, 'photo'))
		.filter((name) => name.endsWith('.jpg'))
		.map((name) => name.slice(0, -'.jpg'.length))
		.sort();
}

/** The labelled photos of a folder (photo/NAME.jpg, label/NAME.png, index.json with splits), one after the other. */
export async function* labelledPhotos(folder: string, split: string | null): AsyncGenerator<LabelledPhoto> {
	for (const name of namesIn(folder, split)) yield await labelledPhoto(folder, name);
}
