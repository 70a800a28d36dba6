import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { decodePhoto } from '../../src/photo/file/decode.ts';
import type { LabelMap, Pixels } from '../../src/reading/pixels.ts';
import { SLOTS, type Slot } from '../../src/wardrobe/words/slot.ts';

type Index = {
	readonly kinds: readonly (readonly [kind: string, slot: string])[];
	readonly val: readonly string[];
	readonly tags: Readonly<Record<string, readonly string[]>>;
	readonly tag_val: readonly string[];
};

/** The archive's words where ours differ. */
const OURS: Readonly<Record<string, string>> = { sweater: 'jumper', vest: 'waistcoat', sneakers: 'trainers' };
const ourWord = (word: string): string => OURS[word] ?? word;
/** A shoe of which nobody said more. */
export const ANY_SHOE = 'shoes-any';

/** A photo whose pixels' kinds somebody has marked. */
export type LabelledOutfit = {
	readonly name: string;
	readonly pixels: Pixels;
	/** Slot and kind of each label, by its index. */
	readonly kinds: readonly (readonly [kind: string, slot: string])[];
	/** Label of each pixel. */
	readonly marked: Uint8Array;
	/** The same as classes of the outline. */
	readonly labels: LabelMap;
};

const indexOf = (folder: string): Index => {
	const { kinds, ...rest } = JSON.parse(readFileSync(join(folder, 'index.json'), 'utf8')) as Index;
	return { ...rest, kinds: kinds.map(([kind, slot]) => [ourWord(kind), slot]) };
};

async function pixelsOf(path: string): Promise<Pixels> {
	const photo = await decodePhoto(readFileSync(path));
	if (!photo.ok) throw new Error(`${path}: ${photo.message}`);
	return photo.analysis;
}

const classOf = (slot: string): number => (slot === 'skin' ? 8 : slot === 'hair' ? 9 : SLOTS.indexOf(slot as Slot) + 1);

/** The validation outfits of a folder (photo/NAME.webp, label/NAME.png, index.json), one after the other. */
export async function* labelledOutfits(folder: string): AsyncGenerator<LabelledOutfit> {
	const { kinds, val } = indexOf(folder);
	const classes = kinds.map(([, slot]) => classOf(slot));
	for (const name of val) {
		const pixels = await pixelsOf(join(folder, 'photo', `${name}.webp`));
		const marked = new Uint8Array(
			await sharp(join(folder, 'label', `${name}.png`))
				.extractChannel(0)
				.raw()
				.toBuffer(),
		);
		const { widthPx, heightPx } = pixels;
		if (marked.length !== widthPx * heightPx)
			throw new Error(
				`Expected a label map of ${widthPx} x ${heightPx} pixels for ${name}; received ${marked.length} pixels.`,
			);
		const labels = { widthPx, heightPx, classes: marked.map((label) => classes[label]!) };
		yield { name, pixels, kinds, marked, labels };
	}
}

/** Validation photos that carry only tags, with the kinds that are tagged. */
export async function* taggedOutfits(folder: string): AsyncGenerator<{ pixels: Pixels; tags: readonly string[] }> {
	const { tags, tag_val } = indexOf(folder);
	for (const name of tag_val)
		yield { pixels: await pixelsOf(join(folder, 'tagged', `${name}.webp`)), tags: tags[name]!.map(ourWord) };
}
