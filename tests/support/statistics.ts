/** Arithmetic mean; NaN for none. */
export const mean = (values: readonly number[]): number =>
	values.reduce((sum, value) => sum + value, 0) / values.length;

/** The value that a share `part` (0..1) of the values does not exceed; NaN for none. */
export function quantile(values: readonly number[], part: number): number {
	const sorted = [...values].sort((a, b) => a - b);
	return sorted[Math.min(sorted.length - 1, Math.floor(part * sorted.length))] ?? Number.NaN;
}

export const median = (values: readonly number[]): number => quantile(values, 0.5);

/** Spearman's rank correlation (1904): Pearson's of the ranks, ties sharing their mean rank. */
export function rankCorrelation(one: readonly number[], other: readonly number[]): number {
	const ranks = (values: readonly number[]) =>
		values.map((value) => values.filter((v) => v < value).length + (values.filter((v) => v === value).length - 1) / 2);
	const [a, b] = [ranks(one), ranks(other)];
	const [ma, mb] = [mean(a), mean(b)];
	const product = a.reduce((sum, value, i) => sum + (value - ma) * (b[i]! - mb), 0);
	return product / Math.sqrt(a.reduce((s, v) => s + (v - ma) ** 2, 0) * b.reduce((s, v) => s + (v - mb) ** 2, 0));
}
