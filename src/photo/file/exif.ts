import exifReader from 'exif-reader';
import type { CameraNames } from '../../reading/light/camera-kind.ts';

/** What is read of a photo's EXIF: the date, and the maker and model of what took it. Nothing else; position least of all. */
export type ExifFacts = CameraNames & {
	/** ISO 8601 local time without zone, or null. */
	readonly takenAt: string | null;
};

/** Dates before this year are a camera whose clock was never set. */
const FIRST_YEAR = 1990;
const NOTHING: ExifFacts = { takenAt: null, make: null, model: null };

const dateOf = (date: unknown): string | null =>
	date instanceof Date && !Number.isNaN(date.getTime()) && date.getUTCFullYear() >= FIRST_YEAR
		? date.toISOString().slice(0, 19)
		: null;

/** A name without padding, or null; some cameras fill the field with blanks or NULs. */
function nameOf(text: unknown): string | null {
	const name = typeof text === 'string' ? text.replace(/\0/g, '').trim() : '';
	return name === '' ? null : name;
}

/** Date, maker and model by the EXIF, each null where it says nothing; all null for no EXIF and for a damaged one. */
export function exifFactsOf(exif: Buffer | undefined): ExifFacts {
	if (!exif) return NOTHING;
	try {
		const { Photo, Image } = exifReader(exif);
		return {
			takenAt: dateOf(Photo?.DateTimeOriginal ?? Photo?.DateTimeDigitized ?? Image?.DateTime),
			make: nameOf(Image?.Make),
			model: nameOf(Image?.Model),
		};
	} catch {
		// Damaged EXIF says nothing; the picture itself is still good.
		return NOTHING;
	}
}
