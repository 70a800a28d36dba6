import {
	type Color,
	converter,
	formatHex,
	modeLab65,
	modeLrgb,
	modeRgb,
	modeXyz65,
	parseHex,
	useMode as register,
} from 'culori/fn';

// culori's own name for this step begins with "use", which linters take for a React hook.
register(modeRgb);
register(modeLrgb);
register(modeXyz65);
register(modeLab65);

/** Keeps colour spaces apart at compile time: a plain literal fits any space, a value of one space fits no other. */
declare const space: unique symbol;

/**
 * CIELAB for the CIE 1931 2 degree observer and illuminant D65 (ISO/CIE 11664-4): `[L, a, b]`.
 * L in 0..100; a and b about -130..130. The one colour type that is stored, compared and sent.
 */
export type Lab65 = readonly [L: number, a: number, b: number] & { readonly [space]?: 'lab65' };

/** sRGB as in a picture file (IEC 61966-2-1, gamma-encoded): `[r, g, b]`, each 0..1; outside it where out of gamut. */
export type SrgbEncoded = readonly [r: number, g: number, b: number] & { readonly [space]?: 'srgb' };

/** sRGB primaries in linear light: `[r, g, b]`, each 0..1. */
export type SrgbLinear = readonly [r: number, g: number, b: number] & { readonly [space]?: 'srgb-linear' };

/** CIE XYZ relative to D65, Y of white = 1. */
export type Xyz65 = readonly [X: number, Y: number, Z: number] & { readonly [space]?: 'xyz65' };

const toLab65 = converter('lab65');
const toRgb = converter('rgb');
const toLrgb = converter('lrgb');
const toXyz65 = converter('xyz65');

const labOf = (colour: Color): Lab65 => {
	const { l, a, b } = toLab65(colour);
	return [l, a, b];
};
const culoriLab = ([l, a, b]: Lab65): Color => ({ mode: 'lab65', l, a, b });

/** CIELAB of gamma-encoded sRGB, each channel 0..1. Equal channels give exactly a = b = 0. */
export const labFromSrgb = ([r, g, b]: SrgbEncoded): Lab65 => labOf({ mode: 'rgb', r, g, b });

/** CIELAB of an 8-bit sRGB pixel, each channel 0..255. For whole pictures use `labFromPixels`. */
export const labFromSrgb8 = (r: number, g: number, b: number): Lab65 => labFromSrgb([r / 255, g / 255, b / 255]);

/** Gamma-encoded sRGB of a CIELAB colour; channels lie outside 0..1 where the colour is out of gamut. */
export function srgbFromLab(lab: Lab65): SrgbEncoded {
	const { r, g, b } = toRgb(culoriLab(lab));
	return [r, g, b];
}

/** Linear-light sRGB of gamma-encoded sRGB (IEC 61966-2-1), mirrored about 0 for negative channels. */
export function linearFromSrgb([r, g, b]: SrgbEncoded): SrgbLinear {
	const linear = toLrgb({ mode: 'rgb', r, g, b });
	return [linear.r, linear.g, linear.b];
}

/** CIELAB of linear-light sRGB. */
export const labFromLinear = ([r, g, b]: SrgbLinear): Lab65 => labOf({ mode: 'lrgb', r, g, b });

/** Linear-light sRGB of a CIELAB colour; outside 0..1 where out of gamut. */
export function linearFromLab(lab: Lab65): SrgbLinear {
	const { r, g, b } = toLrgb(culoriLab(lab));
	return [r, g, b];
}

/** CIELAB of XYZ relative to D65 (white = 0.95046, 1, 1.08906). Other whites: adapt them first, see `adaptation.ts`. */
export const labFromXyz = ([x, y, z]: Xyz65): Lab65 => labOf({ mode: 'xyz65', x, y, z });

/** XYZ relative to D65, Y of white = 1, of a CIELAB colour. */
export function xyzFromLab(lab: Lab65): Xyz65 {
	const { x, y, z } = toXyz65(culoriLab(lab));
	return [x, y, z];
}

/** `#rrggbb` in sRGB; channels out of gamut are cut to 0..255 each. */
export const hexFromLab = (lab: Lab65): string => formatHex(culoriLab(lab));

/** CIELAB of `#rgb` or `#rrggbb` (the `#` may be missing), or `null` where the text is not such a colour. */
export function labFromHex(text: string): Lab65 | null {
	const digits = text.trim().replace(/^#/, '');
	if (!/^(?:[\da-f]{3}|[\da-f]{6})$/i.test(digits)) return null;
	const rgb = parseHex(`#${digits}`);
	return rgb ? labOf(rgb) : null;
}

/** CIELAB chroma C*ab: distance from the grey axis, 0 or more. */
export const chroma = ([, a, b]: Lab65): number => Math.sqrt(a * a + b * b);

/** CIELAB hue angle h_ab in degrees, 0..<360; 0 for exact greys. */
export function hueDegrees([, a, b]: Lab65): number {
	const degrees = (Math.atan2(b, a) * 180) / Math.PI;
	return degrees < 0 ? degrees + 360 : degrees;
}

/** Angle between two hues in degrees, 0..180. */
export function hueGapDegrees(one: Lab65, other: Lab65): number {
	const gap = Math.abs(hueDegrees(one) - hueDegrees(other));
	return gap > 180 ? 360 - gap : gap;
}
