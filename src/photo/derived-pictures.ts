import sharp from 'sharp';
import { CUTOUT_SIDE_PX, THUMB_SIDE_PX } from './limits.ts';
import { isClothes, type LabelMap, type Pixels } from './pixels.ts';

/** Of 0..6. Measured on a display copy: a third of the default's processor time for a fifth more bytes. */
const WEBP_EFFORT = 1;

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

/** The smallest box that holds the clothes, or null without any. */
function boxOfClothes({
	widthPx,
	heightPx,
	classes,
}: LabelMap): { left: number; top: number; width: number; height: number } | null {
	let [left, top, right, bottom] = [widthPx, heightPx, -1, -1];
	for (let y = 0; y < heightPx; y++) {
		for (let x = 0; x < widthPx; x++) {
			if (!isClothes(classes[y * widthPx + x]!)) continue;
			left = Math.min(left, x);
			right = Math.max(right, x);
			top = Math.min(top, y);
			bottom = Math.max(bottom, y);
		}
	}
	return right < 0 ? null : { left, top, width: right - left + 1, height: bottom - top + 1 };
}

/** The clothes alone on transparent ground, for flat-lays of outfits. */
async function cutoutOf(pixels: Pixels, labels: LabelMap): Promise<Uint8Array | undefined> {
	const box = boxOfClothes(labels);
	if (!box) return undefined;
	const alpha = labels.classes.map((label) => (isClothes(label) ? 255 : 0));
	return rawOf({ ...pixels, alpha })
		.extract(box)
		.resize(CUTOUT_SIDE_PX, CUTOUT_SIDE_PX, { fit: 'inside', withoutEnlargement: true })
		.webp({ quality: 80, alphaQuality: 90, effort: WEBP_EFFORT })
		.toBuffer();
}

/** The pictures kept beside a photo: thumbnail, display copy, label map (grey PNG, value = class) and, where there are clothes, the cut-out. */
export async function derivedPictures(display: Pixels, analysis: Pixels, labels: LabelMap): Promise<DerivedPictures> {
	const raw = { width: labels.widthPx, height: labels.heightPx, channels: 1 } as const;
	const [displayWebp, thumb, labelPng, cutout] = await Promise.all([
		rawOf(display).webp({ quality: 82, effort: WEBP_EFFORT }).toBuffer(),
		rawOf(analysis)
			.resize(THUMB_SIDE_PX, THUMB_SIDE_PX, { fit: 'inside', withoutEnlargement: true })
			.webp({ quality: 78, effort: WEBP_EFFORT })
			.toBuffer(),
		sharp(labels.classes, { raw }).toColourspace('b-w').png({ palette: false }).toBuffer(),
		cutoutOf(analysis, labels),
	]);
	return { display: displayWebp, thumb, labels: labelPng, ...(cutout ? { cutout } : {}) };
}
