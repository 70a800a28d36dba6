import sharp from 'sharp';
import { type Box, boxAround } from '../../reading/box.ts';
import { isClothes, type LabelMap, type Pixels } from '../../reading/pixels.ts';
import { CUTOUT_SIDE_PX, THUMB_SIDE_PX } from './limits.ts';

/** Of 0..6: the quickest. Measured on thumbnails and cut-outs: a tenth more bytes than the next. */
const WEBP_EFFORT = 0;

/** Of 0..9: labels lie in large patches, and half the time of the usual level costs a kilobyte a photo. */
const LABELS_LEVEL = 3;

/** What stands behind transparent pixels in a JPEG: the page's mid-grey, on which all photos stand. */
const GROUND = '#777777';

export type DerivedPictures = {
	readonly thumb: Uint8Array;
	readonly display: Uint8Array;
	readonly labels: Uint8Array;
	readonly cutout?: Uint8Array;
};

function rawOf(pixels: Pixels) {
	const { widthPx: width, heightPx: height, rgb, alpha } = pixels;
	if (!alpha) return sharp(rgb, { raw: { width, height, channels: 3 } });
	const rgba = new Uint8Array(width * height * 4);
	for (let i = 0; i < alpha.length; i++) {
		rgba[i * 4] = rgb[i * 3]!;
		rgba[i * 4 + 1] = rgb[i * 3 + 1]!;
		rgba[i * 4 + 2] = rgb[i * 3 + 2]!;
		rgba[i * 4 + 3] = alpha[i]!;
	}
	return sharp(rgba, { raw: { width, height, channels: 4 } });
}

/** The part of the pixels within a box, opaque where there are clothes. */
function clothesWithin({ widthPx, rgb }: Pixels, { classes }: LabelMap, box: Box): Pixels {
	const own = { widthPx: box.width, heightPx: box.height };
	const part = {
		...own,
		rgb: new Uint8Array(box.width * box.height * 3),
		alpha: new Uint8Array(box.width * box.height),
	};
	for (let row = 0, at = 0; row < box.height; row++) {
		const from = (box.top + row) * widthPx + box.left;
		part.rgb.set(rgb.subarray(from * 3, (from + box.width) * 3), at * 3);
		for (let i = from; i < from + box.width; i++) part.alpha[at++] = isClothes(classes[i]!) ? 255 : 0;
	}
	return part;
}

/** The clothes alone on transparent ground, for flat-lays of outfits. */
async function cutoutOf(pixels: Pixels, labels: LabelMap): Promise<Uint8Array | undefined> {
	const box = boxAround(labels.classes, labels.widthPx, isClothes);
	if (!box) return undefined;
	return rawOf(clothesWithin(pixels, labels, box))
		.resize(CUTOUT_SIDE_PX, CUTOUT_SIDE_PX, { fit: 'inside', withoutEnlargement: true })
		.webp({ quality: 80, alphaQuality: 90, effort: WEBP_EFFORT })
		.toBuffer();
}

/** The pictures kept beside a photo: thumbnail, display copy, label map (grey PNG, value = class) and, where there are clothes, the cut-out. */
export async function derivedPictures(display: Pixels, analysis: Pixels, labels: LabelMap): Promise<DerivedPictures> {
	const raw = { width: labels.widthPx, height: labels.heightPx, channels: 1 } as const;
	const [displayJpeg, thumb, labelPng, cutout] = await Promise.all([
		rawOf(display).flatten({ background: GROUND }).jpeg({ quality: 82, optimiseCoding: false }).toBuffer(),
		rawOf(analysis)
			.resize(THUMB_SIDE_PX, THUMB_SIDE_PX, { fit: 'inside', withoutEnlargement: true })
			.webp({ quality: 78, effort: WEBP_EFFORT })
			.toBuffer(),
		sharp(labels.classes, { raw })
			.toColourspace('b-w')
			.png({ palette: false, compressionLevel: LABELS_LEVEL })
			.toBuffer(),
		cutoutOf(analysis, labels),
	]);
	return { display: displayJpeg, thumb, labels: labelPng, ...(cutout ? { cutout } : {}) };
}
