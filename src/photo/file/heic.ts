import sharp from 'sharp';
import { rgbaTiff } from './rgba-tiff.ts';

/**
 * The pixels of a phone's HEIC, longest side at most `sidePx`, as a TIFF that sharp can read, with the file's colour profile in it:
 * the decoder hands out pixels without their profile, and Display P3 numbers taken for sRGB are 3 to 5 CIEDE2000 off. The decoder has already
 * turned the picture upright, so the EXIF orientation must not be applied again. Throws where the file has no pixels that can be decoded.
 */
export async function tiffFromHeic(bytes: Uint8Array, iccProfile: Uint8Array | null, sidePx: number): Promise<Buffer> {
	// Its WebAssembly takes 20 MB a thread, so it is only loaded for those who have such photos.
	const { default: decodeHeic } = await import('heic-decode');
	const { width, height, data } = await decodeHeic({ buffer: bytes });
	const rgba = new Uint8Array(data.buffer, data.byteOffset, data.byteLength);
	// Shrunk before it is wrapped: a second copy of 12 megapixels would cost 48 MB.
	const small = await sharp(rgba, { raw: { width, height, channels: 4 } })
		.resize(sidePx, sidePx, { fit: 'inside', withoutEnlargement: true })
		.raw()
		.toBuffer({ resolveWithObject: true });
	return rgbaTiff(small.data, small.info.width, small.info.height, iccProfile);
}
