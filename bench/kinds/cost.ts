/**
 * Processor time of telling kinds beside that of the outline:
 *
 *     node --import tsx bench/kinds/cost.ts PHOTO
 *
 * PHOTO shows somebody who wears several things. Medians of twenty.
 */
import { readFileSync } from 'node:fs';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import { kindsOfPieces } from '../../src/photo/networks/kinds/kinds.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { markedPieces } from '../../src/reading/kinds/marked-pieces.ts';
import { outlineOf } from '../../src/reading/outline/outline.ts';

const TIMES = 20;

/** Median processor time in milliseconds. */
async function cost(work: () => Promise<unknown>): Promise<number> {
	await work();
	const times: number[] = [];
	for (let i = 0; i < TIMES; i++) {
		const before = process.cpuUsage();
		await work();
		const { user, system } = process.cpuUsage(before);
		times.push((user + system) / 1000);
	}
	return times.sort((a, b) => a - b)[TIMES / 2]!;
}

const path = process.argv[2];
if (!path) {
	console.error('Expected a photo. Usage: node --import tsx bench/kinds/cost.ts PHOTO');
	process.exit(2);
}
const photo = await decodePhoto(readFileSync(path));
if (!photo.ok) throw new Error(photo.message);
const { analysis } = photo;
const parse = await parsePhoto(analysis);
const { labels } = outlineOf(analysis, parse, null);
const pieces = markedPieces(labels);
const outline = await cost(() => parsePhoto(analysis));
const kinds = await cost(() => kindsOfPieces(analysis, labels, pieces, parse.picture));
console.log(
	`outline ${outline.toFixed(0)} ms; kinds of ${pieces.length} pieces ${kinds.toFixed(0)} ms, ${(kinds / outline).toFixed(2)} times that`,
);
