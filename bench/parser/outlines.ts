/**
 * The outlines that the program draws on photos of single garments, to look through and to train on:
 *
 *     node --import tsx bench/parser/outlines.ts FOLDER OUT
 *
 * For each FOLDER/KIND/NAME.jpg writes OUT/KIND_NAME.png, as large as the photo: 255 = clothes, 0 = not.
 */
import { mkdirSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { isClothes } from '../../src/reading/pixels.ts';
import { outlinedPhoto } from '../outlined-photo.ts';

const [folder, out, ...rest] = process.argv.slice(2);
if (!folder || !out || rest.length > 0) {
	console.error(
		`Expected a folder of photos and a folder to write to; received ${process.argv.slice(2).join(' ')}.\nUsage: node --import tsx bench/parser/outlines.ts FOLDER OUT`,
	);
	process.exit(2);
}
mkdirSync(out, { recursive: true });
const names = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((name) =>
	/\.(jpe?g|png|webp)$/i.test(name),
);
for (const name of names.sort()) {
	const { outline } = await outlinedPhoto(join(folder, name));
	const { widthPx: width, heightPx: height, classes } = outline.labels;
	await sharp(
		classes.map((label) => (isClothes(label) ? 255 : 0)),
		{ raw: { width, height, channels: 1 } },
	)
		.png()
		.toFile(join(out, name.replace(/[\\/]/g, '_').replace(/\.\w+$/, '.png')));
}
