import sharp from 'sharp';
import { slotOfKind } from '../wardrobe/kind.ts';
import type { PhotoKind, Reading } from '../wardrobe/reading.ts';
import { SLOTS, type Slot } from '../wardrobe/slot.ts';
import { parseByColour } from './cloth-colours.ts';
import { kindGuesses } from './kind-guesses.ts';
import { cleanedLabels } from './label-cleaning.ts';
import type { Parse } from './parser.ts';
import { CLASSES, HAIR, isClothes, type LabelMap, type Pixels, SKIN, visiblePixels } from './pixels.ts';

/** Share of the frame under which clothes are a chance patch, not a garment. Measured on the training photos: real ones start at 3 %. */
const LEAST_CLOTHES = 0.02;
/** Share of the frame up to which a boat or a bowl may have been taken for a garment. */
const LITTLE_CLOTHES = 0.12;
/** Skin and hair over this share of the clothes' area mean that somebody wears them; a hand that holds a hanger stays below. */
const WORN_FROM = 0.1;

/** What in the photo counts as clothes, and what the photo shows. */
export type Outline = {
	readonly photoKind: PhotoKind;
	/** Class of every pixel after the user's mask, alpha and the photo's kind were heard. */
	readonly labels: LabelMap;
	readonly kindGuesses: Reading['kindGuesses'];
};

/** Pixels of each class. */
function areaByClass(classes: Uint8Array): Uint32Array {
	const areas = new Uint32Array(CLASSES.length);
	for (let i = 0; i < classes.length; i++) areas[classes[i]!]!++;
	return areas;
}

const clothesArea = (areas: Uint32Array): number =>
	areas.reduce((sum, area, label) => sum + (isClothes(label) ? area : 0), 0);

/** Area of each slot as a share of the clothing, largest first. */
function areaBySlot(classes: Uint8Array): Map<Slot, number> {
	const counted = areaByClass(classes);
	const areas = SLOTS.map((slot, index) => [slot, counted[index + 1]!] as const);
	const total = areas.reduce((sum, [, area]) => sum + area, 0);
	return new Map(
		areas
			.filter(([, area]) => area > 0)
			.sort((a, b) => b[1] - a[1])
			.map(([slot, area]) => [slot, area / total]),
	);
}

function photoKindOf(parse: Parse): PhotoKind {
	const areas = areaByClass(parse.classes);
	const clothes = clothesArea(areas);
	const person = areas[SKIN]! + areas[HAIR]!;
	if (clothes / parse.classes.length < LEAST_CLOTHES) return 'scene';
	const worn = person / clothes >= WORN_FROM;
	const [wornSure, singleSure, sceneSure] = parse.photoKind;
	// The head has the word on scenes only where it is sure, since the outline it would throw away may be right: less sure where little
	// was outlined and nobody is seen. Of 292 photos of single garments, none but one without any outline is lost by it.
	if (sceneSure > 0.8) return 'scene';
	if (sceneSure > 0.25 && !worn && clothes / parse.classes.length < LITTLE_CLOTHES) return 'scene';
	return wornSure + (worn ? 0.2 : 0) >= singleSure ? 'worn' : 'single';
}

/** The user's mask at the size of the pixels: 1 = clothes. */
async function maskAt(mask: Uint8Array, { widthPx, heightPx }: Pixels): Promise<Uint8Array> {
	const grey = await sharp(mask)
		.resize(widthPx, heightPx, { fit: 'fill', kernel: 'nearest' })
		.greyscale()
		.raw()
		.toBuffer();
	return grey.map((value) => (value >= 128 ? 1 : 0));
}

/** The label of the photo's largest slot: what pixels take that join the clothes. */
function largestLabel(classes: Uint8Array): number {
	const [largest] = areaBySlot(classes).keys();
	return SLOTS.indexOf(largest ?? 'top') + 1;
}

/** Pixels the user added take the likeliest slot around: the largest one of the photo. */
function withMask(classes: Uint8Array, mask: Uint8Array): Uint8Array {
	const filler = largestLabel(classes);
	return classes.map((label, i) =>
		mask[i] === 1 ? (isClothes(label) ? label : filler) : isClothes(label) ? 0 : label,
	);
}

/**
 * Decides what counts as clothes. The user's mask wins over everything, then a cut-out's alpha, then the parser. On a photo of one
 * garment all clothes belong to the slot of its likeliest kind.
 */
export async function outlineOf(
	pixels: Pixels,
	parse: Parse,
	options: { readonly mask?: Uint8Array },
): Promise<Outline> {
	const size = { widthPx: parse.widthPx, heightPx: parse.heightPx };
	const scene: Outline = { photoKind: 'scene', labels: { ...size, classes: parse.classes }, kindGuesses: [] };
	let photoKind = photoKindOf(parse);
	const corrected =
		photoKind === 'single' && !pixels.alpha ? parseByColour(pixels, parse, largestLabel(parse.classes)) : parse;
	let classes = photoKind === 'scene' ? parse.classes : cleanedLabels(corrected, photoKind);
	if (options.mask) {
		classes = withMask(classes, await maskAt(options.mask, pixels));
		if (photoKind === 'scene') photoKind = 'single';
	} else if (pixels.alpha && photoKind === 'single') {
		// A cut-out: whoever cut it said what the garment is.
		classes = withMask(classes, visiblePixels(pixels));
	}
	if (clothesArea(areaByClass(classes)) === 0 || photoKind === 'scene') return scene;
	if (photoKind === 'worn') return { photoKind, labels: { ...size, classes }, kindGuesses: [] };
	const guesses = kindGuesses(parse.garmentKind);
	const label = guesses[0] ? SLOTS.indexOf(slotOfKind(guesses[0].kind)) + 1 : 1;
	return {
		photoKind,
		labels: { ...size, classes: classes.map((one) => (isClothes(one) ? label : one)) },
		kindGuesses: guesses,
	};
}
