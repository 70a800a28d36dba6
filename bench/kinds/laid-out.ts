/**
 * Measures how well garments that lie side by side, or touch and cover each other, are told apart, on composites of cut-outs on the grounds of other photos:
 *
 *     node --import tsx bench/kinds/laid-out.ts PHOTOS OUTLINES LIST [COUNT]
 *
 * PHOTOS/KIND/NAME.jpg are photos of single garments, OUTLINES/KIND_NAME.png what bench/parser/outlines.ts wrote of them, LIST names KIND_NAME, one a
 * line, of those to use (that no network learnt from). Seeds are fixed. Also says how many of the photos themselves are taken for several garments.
 */
import { readFileSync } from 'node:fs';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import { garmentsApart, type SeenGarment } from '../../src/photo/laid-out-pieces.ts';
import { parsePhoto } from '../../src/photo/networks/outline/parser.ts';
import { outlineOf } from '../../src/reading/outline/outline.ts';
import type { Pixels } from '../../src/reading/pixels.ts';
import { composite, type LaidHow, sourcesOf } from './composites.ts';

const [photos, outlines, list, count = '100'] = process.argv.slice(2);
if (!photos || !outlines || !list) {
	console.error('Expected three paths. Usage: node --import tsx bench/kinds/laid-out.ts PHOTOS OUTLINES LIST [COUNT]');
	process.exit(2);
}
/** The archive's words where ours differ. */
const OURS: Readonly<Record<string, string>> = { longsleeve: 'long-sleeve', outwear: 'jacket', pants: 'trousers' };
const FOUND_FROM = 0.7;

async function apartIn(pixels: Pixels): Promise<SeenGarment[]> {
	const parse = await parsePhoto(pixels);
	const { photoKind, labels } = outlineOf(pixels, parse, null);
	return photoKind === 'single' ? garmentsApart(pixels, labels, parse) : [];
}

function overlap(one: Uint8Array, other: Uint8Array): number {
	let both = 0;
	let either = 0;
	for (let i = 0; i < one.length; i++) {
		both += one[i]! & other[i]!;
		either += one[i]! | other[i]!;
	}
	return both / either;
}

const percent = (part: number, of: number) => `${((100 * part) / of).toFixed(1)} %`;

/** What is found and told of composites whose garments lie so. */
async function measure(sources: ReturnType<typeof sourcesOf>, how: LaidHow): Promise<void> {
	const sums = { garments: 0, found: 0, right: 0, two: 0, told: 0, sure: 0, sureRight: 0, asked: 0 };
	for (let seed = 0; seed < Number(count); seed++) {
		const { pixels, garments } = await composite(sources, seed, how);
		const seen = await apartIn(pixels);
		sums.told += seen.length;
		if (seen.length > 1) sums.asked++;
		for (const { kind, marks } of garments) {
			sums.garments++;
			const mine = seen.find((one) => overlap(one.marks, marks) >= FOUND_FROM);
			if (!mine) continue;
			const truth = OURS[kind] ?? kind;
			sums.found++;
			if (mine.kinds[0]?.kind === truth) sums.right++;
			if (mine.kinds.slice(0, 2).some((one) => one.kind === truth)) sums.two++;
			if ((mine.kinds[0]?.probability ?? 0) < 0.8) continue;
			sums.sure++;
			if (mine.kinds[0]?.kind === truth) sums.sureRight++;
		}
	}
	console.log(
		`${how}: ${count} composites, ${sums.garments} garments: found (IoU ${FOUND_FROM}) ${percent(sums.found, sums.garments)}, told ${sums.told}; two or more seen in ${sums.asked}`,
	);
	console.log(
		`kinds of those found: first ${percent(sums.right, sums.found)}, within two ${percent(sums.two, sums.found)}; from 0.8 on ${percent(sums.sure, sums.found)}, right ${percent(sums.sureRight, sums.sure)}`,
	);
}

const sources = sourcesOf(photos, outlines, list);
for (const how of ['apart', 'touching'] as const) await measure(sources, how);
const several: string[] = [];
for (const { photo } of sources) {
	const decoded = await decodePhoto(readFileSync(photo));
	if (decoded.ok && (await apartIn(decoded.analysis)).length > 1) several.push(photo);
}
console.log(`of ${sources.length} photos of one garment ${several.length} are taken for several`, several);
