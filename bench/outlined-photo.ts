import { readFileSync } from 'node:fs';
import { decodePhoto } from '../src/photo/decode.ts';
import { type Outline, outlineOf } from '../src/photo/outline.ts';
import { parsePhoto } from '../src/photo/parser.ts';
import type { Pixels } from '../src/photo/pixels.ts';

/** A photo as the program analyses it, and the outline that it draws. Throws where the photo cannot be read. */
export async function outlinedPhoto(path: string): Promise<{ analysis: Pixels; outline: Outline }> {
	const photo = await decodePhoto(readFileSync(path));
	if (!photo.ok) throw new Error(`${path}: ${photo.message}`);
	const { analysis } = photo;
	return { analysis, outline: await outlineOf(analysis, await parsePhoto(analysis), {}) };
}
