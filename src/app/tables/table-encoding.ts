import { isUtf8 } from 'node:buffer';

/** An encoding as it is told to the user, the name a decoder knows it by, and the bytes of the mark before the text. */
export type Encoding = {
	readonly name: 'UTF-8' | 'UTF-16' | 'Windows-1252';
	readonly decoder: 'utf-8' | 'utf-16le' | 'utf-16be' | 'windows-1252';
	readonly markBytes: number;
};

/** Enough of a table to see where its zero bytes lie. */
const LOOKED_AT_BYTES = 4096;

/** Byte order marks: The Unicode Standard, section 23.8. */
function markedEncoding(bytes: Uint8Array): Encoding | null {
	const [a, b, c] = bytes;
	if (a === 0xef && b === 0xbb && c === 0xbf) return { name: 'UTF-8', decoder: 'utf-8', markBytes: 3 };
	if (a === 0xff && b === 0xfe) return { name: 'UTF-16', decoder: 'utf-16le', markBytes: 2 };
	if (a === 0xfe && b === 0xff) return { name: 'UTF-16', decoder: 'utf-16be', markBytes: 2 };
	return null;
}

/** UTF-16 without a mark: in a table of Latin text every other byte is zero. */
function unmarkedUtf16(bytes: Uint8Array): Encoding | null {
	const seen = bytes.subarray(0, LOOKED_AT_BYTES);
	const zeros: [even: number, odd: number] = [0, 0];
	for (const [index, byte] of seen.entries()) if (byte === 0) zeros[index % 2 === 0 ? 0 : 1]++;
	const many = seen.length / 5;
	if (zeros[1] > many && zeros[0] < zeros[1] / 4) return { name: 'UTF-16', decoder: 'utf-16le', markBytes: 0 };
	if (zeros[0] > many && zeros[1] < zeros[0] / 4) return { name: 'UTF-16', decoder: 'utf-16be', markBytes: 0 };
	return null;
}

/**
 * The encoding of a table's bytes: by its mark, else UTF-16 where every other byte is zero, else UTF-8 where the bytes are that, else
 * Windows-1252, in which every byte is a character (what spreadsheets on Windows write in Western Europe; common practice, no source).
 */
export function encodingOf(bytes: Uint8Array): Encoding {
	return (
		markedEncoding(bytes) ??
		unmarkedUtf16(bytes) ??
		(isUtf8(bytes)
			? { name: 'UTF-8', decoder: 'utf-8', markBytes: 0 }
			: { name: 'Windows-1252', decoder: 'windows-1252', markBytes: 0 })
	);
}
