import { readFileSync } from 'node:fs';
import { getPalette } from 'colorthief';
import { extractColors } from 'extract-colors';
import { Vibrant } from 'node-vibrant/node';
import sharp from 'sharp';
import { type DecodedPhoto, decodePhoto } from '../src/photo/decode.ts';
import { derivedPictures } from '../src/photo/derived-pictures.ts';
import { DISPLAY_SIDE_PX } from '../src/photo/limits.ts';
import { parsePhoto } from '../src/photo/parser.ts';
import read from '../src/photo/worker.ts';
import { medianMs } from './table.ts';

/** What one process measured: CPU milliseconds by step, and the most memory it ever held. */
export type CaseAnswer = { readonly cpuMs: Readonly<Record<string, number>>; readonly peakMb: number };

/** What can be done with a photo here; each in a process of its own, so that its peak of memory is its own. */
export type CaseName = 'idle' | 'floor' | 'stages' | 'whole' | 'node-vibrant' | 'colorthief' | 'extract-colors';

/** All pixels as extract-colors takes them: outside a browser it leaves decoding to its caller. */
async function allPixels(bytes: Uint8Array) {
	const { data, info } = await sharp(bytes).ensureAlpha().raw().toBuffer({ resolveWithObject: true });
	return { data: new Uint8ClampedArray(data.buffer, data.byteOffset, data.length), ...info };
}

async function decoded(bytes: Uint8Array): Promise<DecodedPhoto> {
	const photo = await decodePhoto(bytes);
	if (!photo.ok) throw new Error(photo.message);
	return photo;
}

/** As the pool's threads do it, clearing up included. */
async function wholeReading(bytes: Uint8Array, derived: boolean): Promise<void> {
	const result = await read({ source: bytes, options: { derived } });
	if (!result.ok) throw new Error(result.message);
}

/** The steps of a case, by name. */
async function stepsOf(name: CaseName, bytes: Buffer): Promise<Record<string, () => Promise<unknown>>> {
	switch (name) {
		case 'idle':
			return {};
		case 'floor':
			return {
				floor: () =>
					sharp(bytes).autoOrient().resize(DISPLAY_SIDE_PX, DISPLAY_SIDE_PX, { fit: 'inside' }).raw().toBuffer(),
			};
		case 'whole':
			return { reading: () => wholeReading(bytes, false), whole: () => wholeReading(bytes, true) };
		case 'stages': {
			const photo = await decoded(bytes);
			const parse = await parsePhoto(photo.analysis);
			return {
				decode: () => decoded(bytes),
				parser: () => parsePhoto(photo.analysis),
				derived: () => derivedPictures(photo.display, photo.analysis, parse),
			};
		}
		case 'node-vibrant':
			return { peer: () => Vibrant.from(bytes).getPalette() };
		case 'colorthief':
			return { peer: () => getPalette(bytes, { colorCount: 6 }) };
		case 'extract-colors':
			return { peer: async () => extractColors(await allPixels(bytes)) };
	}
}

const [name, path, runs] = process.argv.slice(2);
if (!name || !path || !runs) throw new TypeError('expected a case, a photo and a number of runs');
// As in the reader: one photo a thread.
sharp.concurrency(1);
sharp.cache(false);
const cpuMs: Record<string, number> = {};
for (const [step, work] of Object.entries(await stepsOf(name as CaseName, readFileSync(path))))
	cpuMs[step] = (await medianMs(Number(runs), work)).cpuMs;
const answer: CaseAnswer = { cpuMs, peakMb: process.resourceUsage().maxRSS / 1024 };
console.log(JSON.stringify(answer));
