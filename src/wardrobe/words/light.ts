import type { Lab65 } from '../../colour/lab65.ts';

/**
 * Where the light correction came from, surest first. `estimate` is kept for readings made before estimates were given up: on real phone
 * photos they made hue and chroma worse.
 */
export const LIGHT_SOURCES = [
	'by-hand',
	'neutral-pointed',
	'neutral-found',
	'ground',
	'group',
	'estimate',
	'none',
] as const;
export type LightSource = (typeof LIGHT_SOURCES)[number];

/** What makes the picture: a phone's processing presses the lights together and adds saturation, a camera's hardly does. */
export const CAMERA_KINDS = ['phone', 'camera'] as const;
export type CameraKind = (typeof CAMERA_KINDS)[number];

/** How a photo's colours are brought back to daylight; a plain record, so that it can be stored and applied to stored colours. */
export type LightModel = {
	/** What a neutral surface looks like in the photo: CIE XYZ with Y = 1. Bradford takes it to D65. */
	readonly white: readonly [X: number, Y: number, Z: number];
	/** Luminance in the photo, 0..1, at which the curve stands at 1. */
	readonly full: number;
	/** Steepness of the curve, 1 = none. */
	readonly steepness: number;
	/** How much the lights were pressed together, 0 = not at all. */
	readonly press: number;
	/** True luminance of a surface that stands at `full`. */
	readonly gain: number;
	/** What a* and b* are multiplied with in the end: under 1 takes out the saturation that phones add. */
	readonly chroma: number;
	/** Plain gain of light that moves a* and b*, where the curve moves lightness alone; absent where they go along with it, the ratios of the channels kept. */
	readonly tintGain?: number;
};

/** The light the photo was taken in, and what was done about it. */
export type Light = {
	readonly source: LightSource;
	/** Colour that a neutral surface has in the uncorrected photo, or null if unknown. */
	readonly cast: Lab65 | null;
	/** 1 where the light is known and taken out, 0 where it is not. */
	readonly strength: number;
	/** One sentence in plain words. */
	readonly reason: string;
	/** What the colours went through; null for as they are. Absent in readings made before it was kept. */
	readonly model?: LightModel | null;
	/** Error of a good photo whose light is known this way, CIEDE2000, that four photos in five stay below; absent as above. */
	readonly error?: number;
};

/** Whether a neutral in the photo itself tells its light, without a doubt: then other photos may follow it. */
export const isToldByNeutral = ({ source, strength }: Light): boolean =>
	(source === 'neutral-pointed' || source === 'neutral-found') && strength === 1;

/** Something neutral in the photo, pointed at or found. */
export type SeenNeutral = {
	/** White paper, or a grey card: each has its own formula. */
	readonly kind: 'white' | 'grey';
	/** Its colour in the photo, uncorrected. */
	readonly seen: Lab65;
	/** CIELAB lightness that it has in truth. */
	readonly lightness: number;
};
