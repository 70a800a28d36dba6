/**
 * Contact sheets of photos of single garments, to look at the outlines:
 *
 *     node --import tsx bench/parser/contact-sheet.ts FOLDER OUT [--count N]
 *
 * Reads FOLDER and the folders in it; writes OUT/sheet-01.jpg and so on, 25 tiles a sheet (photo, outline with the rest dimmed, swatches as
 * wide as their share, what it was taken for) and OUT/tiles.csv. --count takes so many, evenly from all.
 */
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import sharp, { type OverlayOptions } from 'sharp';
import { hexFromLab } from '../../src/colour/lab65.ts';
import { readPhoto } from '../../src/photo/read-photo.ts';
import { isClothes, type LabelMap, type Pixels } from '../../src/reading/pixels.ts';
import { outlinedPhoto } from '../outlined-photo.ts';

const USAGE = 'Usage: node --import tsx bench/parser/contact-sheet.ts FOLDER OUT [--count N]';
const COLUMNS = 5;
const PICTURE = { width: 150, height: 200 } as const;
const SWATCH_HEIGHT = 14;
const TEXT_HEIGHT = 16;
const TILE = { width: PICTURE.width * 2 + 8, height: PICTURE.height + SWATCH_HEIGHT + TEXT_HEIGHT + 8 } as const;

/** The picture with all but the clothes dimmed, and a line around them that shows on any cloth. */
function outlined({ widthPx, heightPx, rgb }: Pixels, { classes }: LabelMap): Buffer {
	const out = Buffer.alloc(rgb.length);
	const cloth = (x: number, y: number) =>
		x >= 0 && y >= 0 && x < widthPx && y < heightPx && isClothes(classes[y * widthPx + x]!);
	const line = Math.max(1, Math.round(Math.max(widthPx, heightPx) / 200));
	for (let y = 0, at = 0; y < heightPx; y++) {
		for (let x = 0; x < widthPx; x++, at += 3) {
			const inside = cloth(x, y);
			const onEdge = inside && !(cloth(x - line, y) && cloth(x + line, y) && cloth(x, y - line) && cloth(x, y + line));
			for (let channel = 0; channel < 3; channel++)
				out[at + channel] = onEdge
					? [255, 0, 220][channel]!
					: inside
						? rgb[at + channel]!
						: Math.round(rgb[at + channel]! * 0.35);
		}
	}
	return out;
}

const fitted = (data: Uint8Array, { widthPx, heightPx }: Pixels): Promise<Buffer> =>
	sharp(data, { raw: { width: widthPx, height: heightPx, channels: 3 } })
		.resize(PICTURE.width, PICTURE.height, { fit: 'contain', background: '#808080' })
		.png()
		.toBuffer();

const block = (width: number, height: number, background: string): Promise<Buffer> =>
	sharp({ create: { width: Math.max(1, width), height, channels: 3, background } })
		.png()
		.toBuffer();

const caption = (text: string): Promise<Buffer> =>
	sharp({ text: { text, width: TILE.width - 8, height: TEXT_HEIGHT - 2, rgba: true } })
		.png()
		.toBuffer();

/** One tile's pictures at (left, top), and its line of the table. */
async function tile(path: string, place: number, left: number, top: number) {
	const { analysis, outline } = await outlinedPhoto(path);
	const reading = await readPhoto(path);
	if (!reading.ok) throw new Error(`${path}: ${reading.message}`);
	const { kindGuesses, photoKind, swatches } = reading.reading;
	const guesses = kindGuesses.slice(0, 2).map(({ kind, probability }) => `${kind} ${Math.round(probability * 100)}%`);
	const overlays: OverlayOptions[] = [
		{ input: await fitted(analysis.rgb, analysis), left, top },
		{ input: await fitted(outlined(analysis, outline.labels), analysis), left: left + PICTURE.width, top },
		{
			input: await caption(`${place} ${photoKind} ${guesses.join(', ')}`),
			left,
			top: top + PICTURE.height + SWATCH_HEIGHT + 2,
		},
	];
	let from = 0;
	for (const { lab, share } of swatches) {
		const width = Math.max(1, Math.floor(share * PICTURE.width * 2));
		overlays.push({
			input: await block(Math.min(width, PICTURE.width * 2 - from), SWATCH_HEIGHT, hexFromLab(lab)),
			left: left + from,
			top: top + PICTURE.height,
		});
		from = Math.min(PICTURE.width * 2 - 1, from + width);
	}
	return { overlays, row: [place, path, photoKind, ...guesses].join(',') };
}

const { values, positionals } = parseArgs({ allowPositionals: true, options: { count: { type: 'string' } } });
const [folder, out] = positionals;
const wanted = values.count === undefined ? null : Number(values.count);
if (!folder || !out || positionals.length > 2 || (wanted !== null && !(Number.isInteger(wanted) && wanted > 0))) {
	console.error(
		`Expected a folder of photos and a folder to write to, and a whole number of tiles; received ${process.argv.slice(2).join(' ')}.\n${USAGE}`,
	);
	process.exit(2);
}

const all = readdirSync(folder, { recursive: true, encoding: 'utf8' })
	.filter((name) => /\.(jpe?g|png|webp)$/i.test(name))
	.sort();
const count = Math.min(all.length, wanted ?? all.length);
const paths = Array.from({ length: count }, (_, i) => join(folder, all[Math.floor((i * all.length) / count)]!));
mkdirSync(out, { recursive: true });
const rows: string[] = [];
const perSheet = COLUMNS * COLUMNS;
for (let start = 0; start < paths.length; start += perSheet) {
	const overlays: OverlayOptions[] = [];
	for (const [i, path] of paths.slice(start, start + perSheet).entries()) {
		const made = await tile(
			path,
			start + i + 1,
			(i % COLUMNS) * TILE.width + 4,
			Math.floor(i / COLUMNS) * TILE.height + 4,
		);
		overlays.push(...made.overlays);
		rows.push(made.row);
	}
	const name = `sheet-${String(start / perSheet + 1).padStart(2, '0')}.jpg`;
	await sharp({
		create: { width: COLUMNS * TILE.width, height: COLUMNS * TILE.height, channels: 3, background: '#d8d8d8' },
	})
		.composite(overlays)
		.jpeg({ quality: 88 })
		.toFile(join(out, name));
	console.log(join(out, name));
}
writeFileSync(join(out, 'tiles.csv'), `tile,photo,taken for,first guess,second guess\n${rows.join('\n')}\n`);
