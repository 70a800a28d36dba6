import decodeHeic from 'heic-decode';
import { rgbaTiff } from './rgba-tiff.ts';

/**
 * The pixels of a phone's HEIC as a TIFF that sharp can read, with the file's colour profile in it: the decoder hands out pixels
 * without their profile, and Display P3 numbers taken for sRGB are 3 to 5 CIEDE2000 off. The decoder has already turned the picture
 * upright, so the EXIF orientation must not be applied again. Throws where the file has no pixels that can be decoded.
 */
export async function tiffFromHeic(bytes: Uint8Array, iccProfile: Uint8Array | null): Promise<Buffer> {
	const { width, height, data } = await decodeHeic({ buffer: bytes });
	return rgbaTiff(new Uint8Array(data.buffer, data.byteOffset, data.byteLength), width, height, iccProfile);
}
