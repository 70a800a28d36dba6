import type { Swatch } from './reading.ts';

/** A piece as far as its colours are concerned. */
type Coloured<One> = { readonly swatches: readonly One[] };

/** Swatches with at least this share of a piece are seen as one of its colours; under it they are trim. Common practice, no source. */
const SEEN_FROM_SHARE = 0.1;

/** The heaviest swatch (the earlier on ties), or `null` for a piece without colours. */
export function mainSwatch<One extends Pick<Swatch, 'share'>>({ swatches }: Coloured<One>): One | null {
	let main: One | null = null;
	for (const swatch of swatches) if (main === null || swatch.share > main.share) main = swatch;
	return main;
}

/** The swatches seen as the piece's colours: the main one, and all from {@link SEEN_FROM_SHARE} on. */
export function seenSwatches<One extends Pick<Swatch, 'share'>>({ swatches }: Coloured<One>): readonly One[] {
	if (swatches.every(({ share }) => share >= SEEN_FROM_SHARE)) return swatches;
	const main = mainSwatch({ swatches });
	return swatches.filter((swatch) => swatch === main || swatch.share >= SEEN_FROM_SHARE);
}
