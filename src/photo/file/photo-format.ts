import { fileTypeFromBuffer } from 'file-type';
import { MAX_PHOTO_BYTES } from './limits.ts';
import { type ReadFailure, readFailure } from './read-failure.ts';

/**
 * Kinds of photo file that can be read, by what their bytes say; the name is never trusted. SVG is not among them: the decoder could draw it,
 * but markup never gets that far.
 */
const READABLE: ReadonlySet<string> = new Set([
	'image/jpeg',
	'image/png',
	'image/apng',
	'image/webp',
	'image/avif',
	'image/gif',
	'image/tiff',
	'image/heic',
	'image/heif',
	'image/heic-sequence',
	'image/heif-sequence',
]);

const FORMATS_SHOWN = 'a photo (JPEG, PNG, WebP, AVIF, GIF, TIFF or HEIC)';

export type PhotoFormat = { readonly ok: true; readonly mediaType: string; readonly isHeif: boolean };

/** What kind of photo these bytes are, or why they are none. */
export async function photoFormatOf(bytes: Uint8Array): Promise<PhotoFormat | ReadFailure> {
	if (bytes.length === 0) return readFailure('empty', `Expected ${FORMATS_SHOWN}; the file is empty.`);
	if (bytes.length > MAX_PHOTO_BYTES) {
		const size = (n: number) => `${Math.round(n / 1024 / 1024)} MB`;
		return readFailure(
			'too-many-bytes',
			`Expected at most ${size(MAX_PHOTO_BYTES)} for one photo; this file has ${size(bytes.length)}.`,
		);
	}
	const type = await fileTypeFromBuffer(bytes);
	const head = new TextDecoder('latin1').decode(bytes.subarray(0, 512)).trimStart().toLowerCase();
	if (head.startsWith('<svg') || (head.startsWith('<?xml') && head.includes('<svg'))) {
		return readFailure('unsupported', `Expected ${FORMATS_SHOWN}; this is an SVG drawing, which shows no cloth.`);
	}
	if (!type)
		return readFailure(
			'not-a-photo',
			`Expected ${FORMATS_SHOWN}; the bytes of this file are none, whatever its name says.`,
		);
	if (!READABLE.has(type.mime)) {
		return readFailure('unsupported', `Expected ${FORMATS_SHOWN}; this file is ${type.mime}.`);
	}
	return { ok: true, mediaType: type.mime, isHeif: /heic|heif/.test(type.mime) };
}
