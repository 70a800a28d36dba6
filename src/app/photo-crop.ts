import { say } from '../language/speak.ts';
import type { NewPhoto, PhotoRecord } from '../store/store.ts';
import { type Correction, neutralsOf, type PictureBox } from '../wardrobe/words/reading.ts';
import { notFound } from './errors.ts';
import type { Services } from './services.ts';

/** The rectangle in whole pixels of a picture of this size, at least one each way. */
function pixelsOf({ left, top, right, bottom }: PictureBox, widthPx: number, heightPx: number) {
	const x = Math.min(widthPx - 1, Math.round(left * widthPx));
	const y = Math.min(heightPx - 1, Math.round(top * heightPx));
	return {
		left: x,
		top: y,
		width: Math.max(1, Math.round(right * widthPx) - x),
		height: Math.max(1, Math.round(bottom * heightPx) - y),
	};
}

/** The correction as far as it holds for the part alone: a neutral outside of it does not. `scale` = pixels of the part a pixel of the upright photo. */
function correctionWithin(photo: PhotoRecord, box: PictureBox, scale: number): Correction {
	const { neutral: _one, neutrals: _all, ...rest } = photo.correction;
	if (!photo.reading) return rest;
	const { widthPx, heightPx } = photo.reading;
	const neutrals = neutralsOf(photo.correction).flatMap((point) => {
		const x = point.x - box.left * widthPx;
		const y = point.y - box.top * heightPx;
		const isInside = x >= 0 && y >= 0 && point.x < box.right * widthPx && point.y < box.bottom * heightPx;
		return isInside ? [{ ...point, x: x * scale, y: y * scale }] : [];
	});
	return neutrals.length > 0 ? { ...rest, neutrals } : rest;
}

/** Part of a photo that is kept already, for a decision to bring in. */
export type Crop = {
	readonly photo: NewPhoto;
	/** null where nothing of the photo's correction holds for the part, or the part is known and read already. */
	readonly correction: {
		readonly photoId: string;
		readonly correction: Correction;
		readonly mask: string | null;
	} | null;
};

/**
 * Keeps the part of a read photo that lies in the box as a photo of its own. What the user corrected comes along: steps by hand, the outline,
 * the shared light, a neutral that lies within. The photo itself stays as it is.
 */
export async function cropOf(services: Services, photo: PhotoRecord, box: PictureBox): Promise<Crop> {
	const { photos } = services.store;
	const display = await photos.derived(photo.id, 'display');
	if (!display || !photo.reading) throw notFound(say('nouns.readPhoto'), photo.id);
	const { part, widthPx } = await cut(display, box);
	const bytes = await part.jpeg({ quality: 95 }).toBuffer();
	const id = await photos.keepOriginal(bytes);
	const { originalName } = photo;
	const addedAt = services.now().toISOString();
	const added = { id, originalName, mediaType: 'image/jpeg', sizeBytes: bytes.length, addedAt };
	const correction = correctionWithin(photo, box, widthPx / photo.reading.widthPx);
	const isRead = (await photos.get(id))?.status === 'read';
	if (isRead || Object.keys(correction).length === 0) return { photo: added, correction: null };
	const whole = correction.mask ? await photos.derived(photo.id, 'mask') : null;
	const mask = whole ? await photos.keepMask(id, await cropOfMask(whole, box)) : null;
	return { photo: added, correction: { photoId: id, correction, mask } };
}

async function cropOfMask(mask: Uint8Array, box: PictureBox): Promise<Uint8Array> {
	const { part } = await cut(mask, box);
	return part.toColourspace('b-w').png().toBuffer();
}

/** The part of an encoded picture that lies in the box, and how wide the whole picture is. */
async function cut(picture: Uint8Array, box: PictureBox) {
	// Loaded when it is first needed: the program starts without it.
	const { default: sharp } = await import('sharp');
	const { width, height } = await sharp(picture).metadata();
	return { part: sharp(picture).extract(pixelsOf(box, width, height)), widthPx: width };
}
