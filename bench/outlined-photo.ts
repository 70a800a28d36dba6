import { readFileSync } from 'node:fs';
import { decodePhoto } from '../src/photo/file/decode.ts';
import { parsePhoto } from '../src/photo/networks/outline/parser.ts';
import { type Outline, outlineOf } from '../src/reading/outline/outline.ts';
import type { Pixels } from '../src/reading/pixels.ts';

/** A photo as the program analyses it, and the outline that it draws. Throws where the photo cannot be read. */
export async function outlinedPhoto(path: string): Promise<{ analysis: Pixels; outline: Outline }> {
	const photo = await decodePhoto(readFileSync(path));
	if (!photo.ok) throw new Error(`${path}: ${photo.message}`);
	const { analysis } = photo;
	return { analysis, outline: outlineOf(analysis, await parsePhoto(analysis), null) };
}
