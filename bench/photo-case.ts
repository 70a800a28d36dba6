import { readFileSync } from 'node:fs';
import { getPalette } from 'colorthief';
import { extractColors } from 'extract-colors';
import { Vibrant } from 'node-vibrant/node';
import sharp from 'sharp';
import { medianOf } from '../src/colour/median.ts';
import { type DecodedPhoto, decodePhoto } from '../src/photo/file/decode.ts';
import { derivedPictures } from '../src/photo/file/derived-pictures.ts';
import { DISPLAY_SIDE_PX } from '../src/photo/file/limits.ts';
import { parsePhoto } from '../src/photo/networks/outline/parser.ts';
import read from '../src/photo/readers/worker.ts';
import { timed } from './table.ts';

/** What can be done with a photo here, in a process of its own: nothing, one reading after the other (for its peak of memory), or every step in turn. */
export type CaseName = 'idle' | 'whole' | 'steps';

/** CPU milliseconds by step, without those that cannot read the photo, and the most memory the process ever held. */
export type CaseAnswer = { readonly cpuMs: Readonly<Partial<Record<StepName, number>>>; readonly peakMb: number };

type OwnStep = 'floor' | 'decode' | 'parser' | 'derived' | 'reading' | 'whole';
export type PeerName = 'node-vibrant' | 'colorthief' | 'extract-colors';
export type StepName = OwnStep | PeerName;

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
	const result = await read({ source: bytes, options: { derived }, language: 'en-GB' });
	if (!result.ok) throw new Error(result.message);
}

async function stepsOf(bytes: Buffer): Promise<Record<OwnStep, () => Promise<unknown>>> {
	const photo = await decoded(bytes);
	const parse = await parsePhoto(photo.analysis);
	return {
		floor: () => sharp(bytes).autoOrient().resize(DISPLAY_SIDE_PX, DISPLAY_SIDE_PX, { fit: 'inside' }).raw().toBuffer(),
		decode: () => decoded(bytes),
		parser: () => parsePhoto(photo.analysis),
		derived: () => derivedPictures(photo.display, photo.analysis, parse),
		reading: () => wholeReading(bytes, false),
		whole: () => wholeReading(bytes, true),
	};
}

/** Libraries that only take colours, on the same photo. */
function peersOf(bytes: Buffer): Record<PeerName, () => Promise<unknown>> {
	return {
		'node-vibrant': () => Vibrant.from(bytes).getPalette(),
		colorthief: () => getPalette(bytes, { colorCount: 6 }),
		'extract-colors': async () => extractColors(await allPixels(bytes)),
	};
}

/** Times a step is done in a row, so that what it leaves for the collector is cleared up in its own time as well. */
const IN_A_ROW = 5;

/** Milliseconds of CPU of one of a row, after one that is not counted: it clears up what the step before left. */
async function inARow(work: () => Promise<unknown>): Promise<number> {
	await work();
	const { cpuMs } = await timed(async () => {
		for (let i = 0; i < IN_A_ROW; i++) await work();
	});
	return cpuMs / IN_A_ROW;
}

/** Medians of the steps that can read the photo, one after the other in each round: a machine that changes its pace changes it for all of them. */
async function inTurn(
	steps: readonly [StepName, () => Promise<unknown>][],
	rounds: number,
): Promise<CaseAnswer['cpuMs']> {
	const figures = new Map<StepName, number[]>();
	for (const [name, work] of steps) {
		const canRead = await work().then(
			() => true,
			() => false,
		);
		if (canRead) figures.set(name, []);
	}
	for (let round = 0; round < rounds; round++)
		for (const [name, work] of steps) figures.get(name)?.push(await inARow(work));
	return Object.fromEntries([...figures].map(([name, values]) => [name, medianOf(values)]));
}

async function measured(bytes: Buffer, rounds: number): Promise<CaseAnswer['cpuMs']> {
	// A reader has read a dozen photos before its code is compiled to the end.
	for (let round = 0; round < IN_A_ROW * rounds; round++) await wholeReading(bytes, true);
	const own = await inTurn(Object.entries(await stepsOf(bytes)) as [StepName, () => Promise<unknown>][], rounds);
	// After ours: what they leave for the collector would be cleared up in our time.
	return { ...own, ...(await inTurn(Object.entries(peersOf(bytes)) as [StepName, () => Promise<unknown>][], rounds)) };
}

const [name, path, rounds] = process.argv.slice(2);
if (!name || !path || !rounds) throw new TypeError('expected a case, a photo and a number of rounds');
// As in the reader: one photo a thread.
sharp.concurrency(1);
sharp.cache(false);
const bytes = readFileSync(path);
if (name === 'whole') for (let round = 0; round < Number(rounds); round++) await wholeReading(bytes, true);
const cpuMs = name === 'steps' ? await measured(bytes, Number(rounds)) : {};
const answer: CaseAnswer = { cpuMs, peakMb: process.resourceUsage().maxRSS / 1024 };
console.log(JSON.stringify(answer));
