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
