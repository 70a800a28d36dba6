/** Luminance 0..1 of linear sRGB, each channel 0..1 (IEC 61966-2-1, the matrix's second row to four digits). */
export const luminanceOfLinear = (r: number, g: number, b: number): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;
