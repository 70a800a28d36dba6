import type { Lab65 } from '../../../../src/colour/lab65.ts';

/** Three CIELAB numbers typed with spaces, commas or semicolons between them; null for anything else or L outside 0..100. */
export function labFromText(text: string): Lab65 | null {
	const parts = text.trim().split(/[\s,;]+/);
	if (parts.length !== 3 || parts.some((part) => !/^-?\d+(\.\d+)?$/.test(part))) return null;
	const [L, a, b] = parts.map(Number) as [number, number, number];
	return L >= 0 && L <= 100 && Math.abs(a) <= 150 && Math.abs(b) <= 150 ? [L, a, b] : null;
}
