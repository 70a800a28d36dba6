/**
 * Cuts the cloth out of photos, as the pattern network will see it, to train the network on:
 *
 *     node --import tsx bench/pattern/cut-out.ts LABELS.csv FOLDER OUT
 *     node --import tsx bench/pattern/cut-out.ts --renders FOLDER OUT
 *
 * LABELS.csv names photos in FOLDER in its first column (fixtures/garment-patterns). Writes OUT/<name>.png, its alpha 255 where there is cloth.
 * --renders: rendered cloths instead, NAME.jpg in FOLDER with NAME.mask.png (fixtures/renders, or those of rendered_cloth.py).
 */
import { mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { parseArgs } from 'node:util';
import sharp from 'sharp';
import { CLOTH_SIDE } from '../../src/photo/networks/pattern/pattern.ts';
import { visiblePixels } from '../../src/reading/pixels.ts';
import { type ClothPicture, clothPicture } from '../../src/reading/swatches/cloth-picture.ts';
import { clothPixels, insideClothes } from '../../src/reading/swatches/cloth-pixels.ts';
import { SLOTS } from '../../src/wardrobe/words/slot.ts';
import { outlinedPhoto } from '../outlined-photo.ts';

const USAGE = 'Usage: node --import tsx bench/pattern/cut-out.ts LABELS.csv FOLDER OUT | --renders FOLDER OUT';

async function write(path: string, cloth: ClothPicture | null): Promise<void> {
	if (!cloth) throw new Error(`Expected cloth in the photo for ${path}; found none.`);
	const { widthPx, heightPx, rgb, inside } = cloth;
	const bytes = Buffer.alloc(inside.length * 4);
	for (let at = 0; at < inside.length; at++) {
		for (let k = 0; k < 3; k++) bytes[at * 4 + k] = rgb[at * 3 + k]!;
		bytes[at * 4 + 3] = inside[at] ? 255 : 0;
	}
	mkdirSync(dirname(path), { recursive: true });
	await sharp(bytes, { raw: { width: widthPx, height: heightPx, channels: 4 } })
		.png()
		.toFile(path);
}

/** The largest piece of clothing of a photo; all of the photo where no clothes are seen. */
async function largestCloth(path: string): Promise<ClothPicture | null> {
	const { analysis, outline } = await outlinedPhoto(path);
	if (outline.photoKind === 'scene') return clothPicture(analysis, visiblePixels(analysis), 1, CLOTH_SIDE);
	const inside = insideClothes(outline.labels);
	const [largest] = clothPixels(analysis, inside).sort((a, b) => b.area - a.area);
	return clothPicture(analysis, inside.marks, SLOTS.indexOf(largest!.slot!) + 1, CLOTH_SIDE);
}

/** A rendered cloth, a little inside its mask's edge. */
async function renderedCloth(path: string): Promise<ClothPicture | null> {
	const { data, info } = await sharp(path).removeAlpha().raw().toBuffer({ resolveWithObject: true });
	const mask = await sharp(path.replace(/\.jpg$/, '.mask.png'))
		.toColourspace('b-w')
		.raw()
		.toBuffer();
	const size = { widthPx: info.width, heightPx: info.height };
	const { marks } = insideClothes({ ...size, classes: Uint8Array.from(mask, (value) => (value >= 128 ? 1 : 0)) });
	return clothPicture({ ...size, rgb: new Uint8Array(data), alpha: null }, marks, 1, CLOTH_SIDE);
}

const pngOf = (file: string) => file.replace(/\.(jpe?g|webp)$/, '.png');

const { positionals, values } = parseArgs({ allowPositionals: true, options: { renders: { type: 'boolean' } } });
if (positionals.length !== (values.renders ? 2 : 3)) throw new Error(USAGE);
const [folder, out] = positionals.slice(-2) as [string, string];
if (values.renders) {
	for (const file of readdirSync(folder).filter((name) => name.endsWith('.jpg')))
		await write(join(out, pngOf(file)), await renderedCloth(join(folder, file)));
} else {
	const rows = readFileSync(positionals[0]!, 'utf8').trim().split('\n').slice(2);
	for (const file of rows.map((row) => row.split(',')[0]!))
		await write(join(out, pngOf(file)), await largestCloth(join(folder, file)));
}
