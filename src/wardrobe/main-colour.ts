import { chroma, type Lab65 } from '../colour/lab65.ts';
import type { Appearance, Swatch } from './reading.ts';

/**
 * CIELAB chroma under which a colour counts as neutral. Measured: splitting at 12 before clustering keeps a palette's cover and makes it
 * steadier, and treating colours under 12 as exact greys takes away what two garments share only because one lamp lit both.
 */
export const NEUTRAL_CHROMA = 12;

/** Whether a colour counts as neutral. */
export const isNeutral = (lab: Lab65): boolean => chroma(lab) < NEUTRAL_CHROMA;

/** The colour with its tint taken away where it is neutral, so that a lamp's cast on greys is not taken for a likeness. */
export const withExactGrey = (lab: Lab65): Lab65 => (isNeutral(lab) ? [lab[0], 0, 0] : lab);

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
	const main = mainSwatch(appearance);
	return appearance.swatches.filter((swatch) => swatch === main || swatch.share >= SEEN_FROM_SHARE);
}
