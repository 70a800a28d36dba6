import sharp, { type Metadata, type Sharp } from 'sharp';
import { say } from '../../language/speak.ts';
import { cameraKindOf } from '../../reading/light/camera-kind.ts';
import { ANALYSIS_SIDE_PX, type Pixels, pixelsFromRgba } from '../../reading/pixels.ts';
import type { CameraKind } from '../../wardrobe/words/light.ts';
import { exifFactsOf } from './exif.ts';
import { tiffFromHeic } from './heic.ts';
import { DISPLAY_SIDE_PX, MAX_PHOTO_PIXELS } from './limits.ts';
import { photoFormatOf } from './photo-format.ts';
import { type ReadFailure, readFailure } from './read-failure.ts';

// One thread a photo: the pool reads several photos side by side.
sharp.concurrency(1);
sharp.cache(false);

/** A photo made upright and sRGB, at the two sizes that everything else is made from. */
export type DecodedPhoto = {
	readonly ok: true;
	/** Longest side at most `DISPLAY_SIDE_PX`. */
	readonly display: Pixels;
	/** Longest side at most `ANALYSIS_SIDE_PX`. */
	readonly analysis: Pixels;
	/** Size of the upright original. */
	readonly widthPx: number;
	readonly heightPx: number;
	readonly takenAt: string | null;
	/** What took it, as far as the file tells. */
	readonly camera: CameraKind;
};

type Raw = {
	readonly data: Buffer;
	readonly info: { readonly width: number; readonly height: number; readonly channels: number };
};

function pixelsFromRaw({ data, info }: Raw): Pixels {
	const { width: widthPx, height: heightPx, channels } = info;
	if (channels === 3) return { widthPx, heightPx, rgb: data, alpha: null };
	return pixelsFromRgba(data, widthPx, heightPx);
}

const shrunk = (picture: Sharp, side: number): Sharp =>
	picture.resize(side, side, { fit: 'inside', withoutEnlargement: true });

/** sRGB, 8 bits, three or four channels, whatever the file holds (CMYK, grey, 16 bits, wide gamut by its profile). */
const toRaw = (picture: Sharp): Promise<Raw> =>
	picture.toColourspace('srgb').raw({ depth: 'uchar' }).toBuffer({ resolveWithObject: true });

/**
 * Decodes at reduced size where the format allows it (JPEG), which averages in gamma space: for cloth, where neighbours are
 * alike, that is the price of a decode four times as fast.
 */
async function decodeSharp(bytes: Uint8Array, isHeif: boolean, metadata: Metadata): Promise<Raw> {
	const options = { limitInputPixels: MAX_PHOTO_PIXELS, failOn: 'error' as const, pages: 1 };
	try {
		return await toRaw(shrunk(sharp(bytes, options).autoOrient(), DISPLAY_SIDE_PX));
	} catch (error) {
		// A container of this kind may hold AV1, which sharp has just read, or a phone's HEVC, which it refuses at once.
		if (isHeif) return toRaw(sharp(await tiffFromHeic(bytes, metadata.icc ?? null, DISPLAY_SIDE_PX)));
		// A damaged colour profile is no reason to lose the photo: once more without it.
		if (!metadata.icc) throw error;
		return toRaw(shrunk(sharp(bytes, { ...options, ignoreIcc: true }).autoOrient(), DISPLAY_SIDE_PX));
	}
}

/** The part of a message from a decoder that helps a person. */
const firstLine = (error: unknown): string =>
	(error instanceof Error ? error.message : String(error)).split('\n')[0]!.slice(0, 120);

/** A photo's pixels, upright and in sRGB, or why there are none. */
export async function decodePhoto(bytes: Uint8Array): Promise<DecodedPhoto | ReadFailure> {
	const format = await photoFormatOf(bytes);
	if (!format.ok) return format;
	try {
		const metadata = await sharp(bytes, { limitInputPixels: false, failOn: 'none' }).metadata();
		if (metadata.width * (metadata.pageHeight ?? metadata.height) > MAX_PHOTO_PIXELS) {
			const shown = `${metadata.width} x ${metadata.height}`;
			return readFailure('too-many-pixels', say('photoFiles.tooManyPixels', { most: MAX_PHOTO_PIXELS / 1e6, shown }));
		}
		const raw = await decodeSharp(bytes, format.isHeif, metadata);
		const display = pixelsFromRaw(raw);
		const small = shrunk(
			sharp(raw.data, { raw: { ...raw.info, channels: raw.info.channels as 3 | 4 } }),
			ANALYSIS_SIDE_PX,
		);
		const analysis = pixelsFromRaw(await small.raw().toBuffer({ resolveWithObject: true }));
		const upright = uprightSize(metadata, display);
		const { takenAt, ...names } = exifFactsOf(metadata.exif);
		// Whoever cut a picture out has seen to its colours.
		const camera = analysis.alpha ? 'camera' : cameraKindOf(names, Math.max(upright.widthPx, upright.heightPx));
		return { ok: true, display, analysis, ...upright, takenAt, camera };
	} catch (error) {
		return readFailure(
			'damaged',
			say('photoFiles.undecoded', { format: format.mediaType.slice(6).toUpperCase(), error: firstLine(error) }),
		);
	}
}

/** The original's size as the picture stands upright: the sides that make the display copy's shape. */
function uprightSize(metadata: Metadata, display: Pixels): { widthPx: number; heightPx: number } {
	const { width } = metadata;
	const height = metadata.pageHeight ?? metadata.height;
	const isTall = display.heightPx > display.widthPx;
	const turned = width !== height && isTall !== height > width;
	return turned ? { widthPx: height, heightPx: width } : { widthPx: width, heightPx: height };
}
