import { slotOfKind } from '../../wardrobe/words/kind.ts';
import type { PhotoKind, Reading } from '../../wardrobe/words/reading.ts';
import {
	areaByMark,
	BACKGROUND,
	HAIR,
	isClothes,
	type LabelMap,
	labelOfSlot,
	type Pixels,
	SKIN,
	visiblePixels,
} from '../pixels.ts';
import { withoutBoldGround } from './bold-ground.ts';
import { labelsByColour } from './cloth-colours.ts';
import { kindGuesses } from './kind-guesses.ts';
import { cleanedLabels } from './label-cleaning.ts';
import type { Parse } from './parse.ts';

/** Share of the frame under which clothes are a chance patch, not a garment. Measured on the training photos: real ones start at 3 %. */
const LEAST_CLOTHES = 0.02;
/** Share of the frame up to which a boat or a bowl may have been taken for a garment. */
const LITTLE_CLOTHES = 0.12;
/** Skin and hair over this share of the clothes' area mean that somebody wears them; a hand that holds a hanger stays below. */
const WORN_FROM = 0.1;

/** From this probability on nothing is told piece by piece; what that loses and keeps: the outline network's training report. */
const NO_PIECES_FROM = 0.7;
/** The same where the garment's kind is as sure as this: few faces, sofas and drawings look that much like one garment. */
const NO_PIECES_SURELY_FROM = 0.9;
const SURE_OF_GARMENT = 0.8;

/** What in the photo counts as clothes, and what the photo shows. */
export type Outline = {
	readonly photoKind: PhotoKind;
	/** Class of every pixel after the user's mask, alpha and the photo's kind were heard. */
	readonly labels: LabelMap;
	readonly kindGuesses: Reading['kindGuesses'];
};

function clothesArea(areas: Uint32Array): number {
	let sum = 0;
	for (let label = 0; label < areas.length; label++) if (isClothes(label)) sum += areas[label]!;
	return sum;
}

function photoKindOf(parse: Parse, areas: Uint32Array, isCutOut: boolean): PhotoKind {
	const clothes = clothesArea(areas);
	const person = areas[SKIN]! + areas[HAIR]!;
	if (clothes / parse.classes.length < LEAST_CLOTHES) return 'scene';
	const noPiecesFrom = Math.max(...parse.garmentKind) >= SURE_OF_GARMENT ? NO_PIECES_SURELY_FROM : NO_PIECES_FROM;
	// Whoever cut a picture out said that a garment is in it.
	if (!isCutOut && parse.noPieces > noPiecesFrom) return 'scene';
	const worn = person / clothes >= WORN_FROM;
	const [wornSure, singleSure, sceneSure] = parse.photoKind;
	// The head has the word on scenes only where it is sure, since the outline it would throw away may be right: less sure where little
	// was outlined and nobody is seen. Of 292 photos of single garments, none but one without any outline is lost by it.
	if (sceneSure > 0.8) return 'scene';
	if (sceneSure > 0.25 && !worn && clothes / parse.classes.length < LITTLE_CLOTHES) return 'scene';
	return wornSure + (worn ? 0.2 : 0) >= singleSure ? 'worn' : 'single';
}

/** The label of the photo's largest slot: what pixels take that join the clothes. */
function largestLabel(areas: Uint32Array): number {
	let largest = labelOfSlot('top');
	for (let label = 1; label < areas.length; label++)
		if (isClothes(label) && areas[label]! > areas[largest]!) largest = label;
	return largest;
}

/** Pixels that the mask adds take the label `filler`. */
function withMask(classes: Uint8Array, mask: Uint8Array, filler: number): Uint8Array {
	const masked = classes.slice();
	for (let i = 0; i < masked.length; i++) {
		if ((mask[i] === 1) !== isClothes(masked[i]!)) masked[i] = mask[i] === 1 ? filler : BACKGROUND;
	}
	return masked;
}

/** The labels with one and the same label on all clothes. */
function withOneSlot(classes: Uint8Array, label: number): Uint8Array {
	const same = classes.slice();
	for (let i = 0; i < same.length; i++) if (isClothes(same[i]!)) same[i] = label;
	return same;
}

/** The labels before any mask is heard; `label` is for a single garment. */
function parsedClasses(pixels: Pixels, parse: Parse, photoKind: 'worn' | 'single', label: number): Uint8Array {
	if (photoKind === 'worn') return cleanedLabels(parse, photoKind);
	if (!pixels.alpha) return cleanedLabels(withoutBoldGround(pixels, labelsByColour(pixels, parse, label)), photoKind);
	// A cut-out: whoever cut it said what the garment is.
	return withMask(withOneSlot(parse.classes, label), visiblePixels(pixels), label);
}

/**
 * Decides what counts as clothes. The user's mask (a byte a pixel, 1 = clothes; null where there is none) wins over everything, then a
 * cut-out's alpha, then the parser. On a photo of one garment all clothes belong to the slot of its likeliest kind.
 */
export function outlineOf(pixels: Pixels, parse: Parse, mask: Uint8Array | null): Outline {
	const size = { widthPx: parse.widthPx, heightPx: parse.heightPx };
	const scene: Outline = { photoKind: 'scene', labels: { ...size, classes: parse.classes }, kindGuesses: [] };
	const ofParse = photoKindOf(parse, areaByMark(parse.classes), pixels.alpha !== null);
	if (ofParse === 'scene' && !mask) return scene;
	// What is masked on a scene is a garment that the parser missed.
	const photoKind = ofParse === 'worn' ? 'worn' : 'single';
	const guesses = kindGuesses(parse.garmentKind);
	const label = labelOfSlot(guesses[0] ? slotOfKind(guesses[0].kind) : 'top');
	let classes = parsedClasses(pixels, parse, photoKind, label);
	if (mask) {
		const filler = photoKind === 'worn' ? largestLabel(areaByMark(classes)) : label;
		classes = withMask(classes, mask, filler);
	}
	if (!classes.some(isClothes)) return scene;
	return { photoKind, labels: { ...size, classes }, kindGuesses: photoKind === 'worn' ? [] : guesses };
}
