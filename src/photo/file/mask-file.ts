import sharp from 'sharp';
import type { Pixels } from '../../reading/pixels.ts';

/** The user's mask, a grey picture with 255 = clothes, at the size of the pixels: one byte a pixel, 1 = clothes. */
export async function maskFromFile(picture: Uint8Array, { widthPx, heightPx }: Pixels): Promise<Uint8Array> {
	const grey = await sharp(picture)
		.resize(widthPx, heightPx, { fit: 'fill', kernel: 'nearest' })
		.greyscale()
		.raw()
		.toBuffer();
	return grey.map((value) => (value >= 128 ? 1 : 0));
}
