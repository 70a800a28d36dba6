import exifReader from 'exif-reader';

/** Dates outside this range are a camera whose clock was never set. */
const FIRST_YEAR = 1990;

/**
 * When the photo was taken by its EXIF, ISO 8601 local time without zone, or null: no EXIF, a lying or damaged one, or no date
 * in it. Nothing else of the EXIF is read; position least of all.
 */
export function takenAtOf(exif: Buffer | undefined): string | null {
	if (!exif) return null;
	let date: unknown;
	try {
		const { Photo, Image } = exifReader(exif);
		date = Photo?.DateTimeOriginal ?? Photo?.DateTimeDigitized ?? Image?.DateTime;
	} catch {
		// Damaged EXIF says nothing about the date; the picture itself is still good.
		return null;
	}
	if (!(date instanceof Date) || Number.isNaN(date.getTime()) || date.getUTCFullYear() < FIRST_YEAR) return null;
	return date.toISOString().slice(0, 19);
}
