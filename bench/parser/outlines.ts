/**
 * The outlines that the program draws on photos of single garments, to look through and to train on:
 *
 *     node --import tsx bench/parser/outlines.ts FOLDER OUT
 *
 * For each FOLDER/KIND/NAME.jpg writes OUT/KIND_NAME.png, as large as the photo: 255 = clothes, 0 = not.
 */
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { decodePhoto } from '../../src/photo/decode.ts';
import { outlineOf } from '../../src/photo/outline.ts';
import { parsePhoto } from '../../src/photo/parser.ts';
import { isClothes } from '../../src/photo/pixels.ts';

const [folder, out, ...rest] = process.argv.slice(2);
if (!folder || !out || rest.length > 0) {
	console.error(
		`Expected a folder of photos and a folder to write to; received ${process.argv.slice(2).join(' ')}.\nUsage: node --import tsx bench/parser/outlines.ts FOLDER OUT`,
	);
	process.exit(2);
}
mkdirSync(out, { recursive: true });
const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) => /\.(jpe?g|png)$/i.test(name));
for (const name of names.sort()) {
	const photo = await decodePhoto(readFileSync(join(folder, name)));
	if (!photo.ok) throw new Error(`${photo.message} (${name})`);
	const { labels } = await outlineOf(photo.analysis, await parsePhoto(photo.analysis), {});
	const { widthPx: width, heightPx: height, classes } = labels;
	await sharp(
		classes.map((label) => (isClothes(label) ? 255 : 0)),
		{ raw: { width, height, channels: 1 } },
	)
		.png()
		.toFile(join(out, name.replace(/[\\/]/g, '_').replace(/\.\w+$/, '.png')));
}
