import { open } from 'node:fs/promises';
import { fileTypeFromBuffer, fileTypeFromFile } from 'file-type';
import { say } from '../../language/speak.ts';
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

const formatsShown = () => say('photoFiles.formats');

export type PhotoFormat = { readonly ok: true; readonly mediaType: string; readonly isHeif: boolean };

/** What the first bytes and the library say of a file. */
type Signs = { readonly sizeBytes: number; readonly head: Uint8Array; readonly mime: string | undefined };

/** Bytes that are looked at for markup. */
const HEAD_BYTES = 512;

function refusedBySize(sizeBytes: number): ReadFailure | null {
	if (sizeBytes === 0) return readFailure('empty', say('photoFiles.empty', { formats: formatsShown() }));
	if (sizeBytes <= MAX_PHOTO_BYTES) return null;
	const size = (n: number) => say('photoFiles.megabytes', { size: Math.round(n / 1024 / 1024) });
	return readFailure(
		'too-many-bytes',
		say('photoFiles.tooManyBytes', { most: size(MAX_PHOTO_BYTES), shown: size(sizeBytes) }),
	);
}

function formatBy({ sizeBytes, head, mime }: Signs): PhotoFormat | ReadFailure {
	const refused = refusedBySize(sizeBytes);
	if (refused) return refused;
	const text = new TextDecoder('latin1').decode(head).trimStart().toLowerCase();
	if (text.startsWith('<svg') || (text.startsWith('<?xml') && text.includes('<svg')))
		return readFailure('unsupported', say('photoFiles.svg', { formats: formatsShown() }));
	if (!mime) return readFailure('not-a-photo', say('photoFiles.noPhoto', { formats: formatsShown() }));
	if (!READABLE.has(mime))
		return readFailure('unsupported', say('photoFiles.otherFormat', { formats: formatsShown(), format: mime }));
	return { ok: true, mediaType: mime, isHeif: /heic|heif/.test(mime) };
}

/** What kind of photo these bytes are, or why they are none. */
export async function photoFormatOf(bytes: Uint8Array): Promise<PhotoFormat | ReadFailure> {
	const refused = refusedBySize(bytes.length);
	if (refused) return refused;
	const mime = (await fileTypeFromBuffer(bytes))?.mime;
	return formatBy({ sizeBytes: bytes.length, head: bytes.subarray(0, HEAD_BYTES), mime });
}

/** The same of a file on disk, of which only the signs are read. */
export async function photoFormatOfFile(path: string): Promise<PhotoFormat | ReadFailure> {
	const file = await open(path, 'r');
	try {
		const { size } = await file.stat();
		const refused = refusedBySize(size);
		if (refused) return refused;
		const { buffer, bytesRead } = await file.read(Buffer.alloc(HEAD_BYTES), 0, HEAD_BYTES, 0);
		const mime = (await fileTypeFromFile(path))?.mime;
		return formatBy({ sizeBytes: size, head: buffer.subarray(0, bytesRead), mime });
	} finally {
		await file.close();
	}
}
