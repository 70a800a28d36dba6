import { boxAround } from '../../../src/reading/box.ts';
import { labelOfSlot } from '../../../src/reading/pixels.ts';
import type { Slot } from '../../../src/wardrobe/words/slot.ts';
import { pictureAddress } from '../api/pictures.ts';
import { greyOf, loadPicture, pixelsOf, workingSize } from './picture-pixels.ts';

/**
 * The piece of one slot that a photo shows, alone on transparent ground, cropped to itself; null where the photo's labels show nothing of the
 * slot. Both pictures are the program's own.
 */
export async function pieceCutout(photoId: string, slot: Slot): Promise<ImageData | null> {
	const [picture, map] = await Promise.all([
		loadPicture(pictureAddress(photoId, 'display')),
		loadPicture(pictureAddress(photoId, 'labels')),
	]);
	const size = workingSize(picture.naturalWidth, picture.naturalHeight);
	const labels = greyOf(pixelsOf(map, size, false));
	const own = labelOfSlot(slot);
	const box = boxAround(labels, size.width, (label) => label === own);
	if (!box) return null;
	const { data } = pixelsOf(picture, size, true);
	const cut = new ImageData(box.width, box.height);
	for (let row = 0; row < box.height; row++)
		for (let column = 0; column < box.width; column++) {
			const from = (box.top + row) * size.width + box.left + column;
			if (labels[from] !== own) continue;
			cut.data.set(data.subarray(from * 4, from * 4 + 4), (row * box.width + column) * 4);
		}
	return cut;
}
