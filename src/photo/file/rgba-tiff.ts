/** TIFF 6.0 field types. */
const SHORT = 3;
const LONG = 4;
const UNDEFINED = 7;

/** TIFF tag of an embedded ICC profile (ICC.1:2022, annex B.4). */
const ICC_TAG = 34675;

/** An uncompressed little-endian TIFF 6.0 of 8-bit RGBA rows, with an ICC profile where one is given. */
export function rgbaTiff(rgba: Uint8Array, widthPx: number, heightPx: number, iccProfile: Uint8Array | null): Buffer {
	const entryCount = iccProfile ? 12 : 11;
	const directoryAt = 8;
	const bitsAt = directoryAt + 2 + entryCount * 12 + 4;
	const iccAt = bitsAt + 8;
	const pixelsAt = iccAt + (iccProfile?.length ?? 0) + ((iccProfile?.length ?? 0) % 2);
	const tiff = Buffer.alloc(pixelsAt + rgba.length);
	tiff.write('II', 0, 'latin1');
	tiff.writeUInt16LE(42, 2);
	tiff.writeUInt32LE(directoryAt, 4);
	tiff.writeUInt16LE(entryCount, directoryAt);
	let at = directoryAt + 2;
	const entry = (tag: number, type: number, count: number, value: number) => {
		tiff.writeUInt16LE(tag, at);
		tiff.writeUInt16LE(type, at + 2);
		tiff.writeUInt32LE(count, at + 4);
		if (type === SHORT && count === 1) tiff.writeUInt16LE(value, at + 8);
		else tiff.writeUInt32LE(value, at + 8);
		at += 12;
	};
	entry(256, LONG, 1, widthPx);
	entry(257, LONG, 1, heightPx);
	entry(258, SHORT, 4, bitsAt); // bits per sample, four times 8
	entry(259, SHORT, 1, 1); // no compression
	entry(262, SHORT, 1, 2); // RGB
	entry(273, LONG, 1, pixelsAt);
	entry(277, SHORT, 1, 4); // samples per pixel
	entry(278, LONG, 1, heightPx); // all rows in one strip
	entry(279, LONG, 1, rgba.length);
	entry(284, SHORT, 1, 1); // channels interleaved
	entry(338, SHORT, 1, 2); // fourth sample: unassociated alpha
	if (iccProfile) entry(ICC_TAG, UNDEFINED, iccProfile.length, iccAt);
	for (let i = 0; i < 4; i++) tiff.writeUInt16LE(8, bitsAt + i * 2);
	if (iccProfile) tiff.set(iccProfile, iccAt);
	tiff.set(rgba, pixelsAt);
	return tiff;
}
