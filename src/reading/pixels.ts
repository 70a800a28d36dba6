import { SLOTS, type Slot } from '../wardrobe/words/slot.ts';

/** Longest side of the picture that is analysed: a swatch needs thousands of pixels, not millions. */
export const ANALYSIS_SIDE_PX = 640;

/** A decoded picture, upright, in sRGB: rows top to bottom, three bytes a pixel. */
export type Pixels = {
	readonly widthPx: number;
	readonly heightPx: number;
	readonly rgb: Uint8Array;
	/** One byte a pixel, 0 = transparent; null where the picture has no transparency. */
	readonly alpha: Uint8Array | null;
};

/** The pixels of a picture given as red, green, blue and alpha bytes. */
export function pixelsFromRgba(rgba: Uint8Array | Uint8ClampedArray, widthPx: number, heightPx: number): Pixels {
	const rgb = new Uint8Array(widthPx * heightPx * 3);
	const alpha = new Uint8Array(widthPx * heightPx);
	let opaque = true;
	for (let i = 0; i < alpha.length; i++) {
		rgb[i * 3] = rgba[i * 4]!;
		rgb[i * 3 + 1] = rgba[i * 4 + 1]!;
		rgb[i * 3 + 2] = rgba[i * 4 + 2]!;
		alpha[i] = rgba[i * 4 + 3]!;
		opaque &&= alpha[i] === 255;
	}
	return { widthPx, heightPx, rgb, alpha: opaque ? null : alpha };
}

/** One byte a pixel: 1 = seen, 0 = transparent. The half is the usual cut (common practice, no source). */
export const visiblePixels = ({ widthPx, heightPx, alpha }: Pixels): Uint8Array =>
	alpha ? alpha.map((value) => (value >= 128 ? 1 : 0)) : new Uint8Array(widthPx * heightPx).fill(1);

/** The parser's classes by index: what each pixel shows. */
export const CLASSES = [
	'background',
	'top',
	'outer',
	'bottom',
	'full',
	'legwear',
	'shoes',
	'accessory',
	'skin',
	'hair',
] as const;

/** Index of a class. */
export const BACKGROUND = 0;
export const SKIN = 8;
export const HAIR = 9;

/** Whether a class is one of the seven slots. */
export const isClothes = (label: number): boolean => label >= 1 && label <= 7;

/** Index of a slot's class: the slots come after the background, in their own order. */
export const labelOfSlot = (slot: Slot): number => SLOTS.indexOf(slot) + 1;

/** What marks a transparent pixel, which shows nothing, and no background either: the label of no class. */
export const TRANSPARENT = 255;

/** The class of every pixel that is seen, `TRANSPARENT` elsewhere; the labels' own array where all is seen. */
export function seenClasses(pixels: Pixels, { classes }: LabelMap): Uint8Array {
	if (!pixels.alpha) return classes;
	const visible = visiblePixels(pixels);
	return classes.map((label, i) => (visible[i] === 1 ? label : TRANSPARENT));
}

/** Pixels of each mark, 0..255. */
export function areaByMark(marks: Uint8Array): Uint32Array {
	const areas = new Uint32Array(256);
	for (let i = 0; i < marks.length; i++) areas[marks[i]!]!++;
	return areas;
}

/** One class index a pixel, the size of the pixels it belongs to. */
export type LabelMap = { readonly widthPx: number; readonly heightPx: number; readonly classes: Uint8Array };
