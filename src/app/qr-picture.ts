import { encode } from 'uqr';

/** A QR picture as one path of unit squares, for a square drawing of this side. */
export type QrPicture = { readonly sideModules: number; readonly path: string };

/** White modules that a reader needs around the picture (ISO/IEC 18004, section on the quiet zone; from memory). */
const QUIET_MODULES = 4;

/** The QR picture of a text, quiet zone included; a seventh of it may be hidden or spoilt (error correction M). */
export function qrPicture(text: string): QrPicture {
	const { size, data } = encode(text, { ecc: 'M', border: QUIET_MODULES });
	const squares = data.flatMap((row, y) => row.flatMap((isDark, x) => (isDark ? [`M${x} ${y}h1v1h-1z`] : [])));
	return { sideModules: size, path: squares.join('') };
}
