import type { Appearance, Swatch } from './reading.ts';

/** Swatches with at least this share of a piece are seen as one of its colours; under it they are trim. Common practice, no source. */
const SEEN_FROM_SHARE = 0.1;

/** The heaviest swatch (the earlier on ties), or `null` for a piece without colours. */
export function mainSwatch(appearance: Pick<Appearance, 'swatches'>): Swatch | null {
	let main: Swatch | null = null;
	for (const swatch of appearance.swatches) if (main === null || swatch.share > main.share) main = swatch;
	return main;
}

/** The swatches seen as the piece's colours: the main one, and all from {@link SEEN_FROM_SHARE} on. */
export function seenSwatches(appearance: Pick<Appearance, 'swatches'>): readonly Swatch[] {
	const { swatches } = appearance;
	if (swatches.every(({ share }) => share >= SEEN_FROM_SHARE)) return swatches;
	const main = mainSwatch(appearance);
	return swatches.filter((swatch) => swatch === main || swatch.share >= SEEN_FROM_SHARE);
}
