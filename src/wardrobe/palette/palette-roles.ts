import { chroma, type Lab65 } from '../../colour/lab65.ts';
import type { PaletteColour, PaletteRole } from '../words/palette-colour.ts';

/** An accent weighs less than this part of the mean of the coloured ones, and is more vivid than their mean. Common practice, no source. */
const ACCENT_UP_TO_MEAN = 0.75;

/** Roles of coloured clusters: the light-weight vivid ones are accents, the rest main; the heaviest is always main. */
export function rolesOfColoured(
	clusters: readonly { readonly lab: Lab65; readonly weight: number }[],
): ('main' | 'accent')[] {
	const count = Math.max(1, clusters.length);
	const meanWeight = clusters.reduce((sum, { weight }) => sum + weight, 0) / count;
	const meanChroma = clusters.reduce((sum, { lab }) => sum + chroma(lab), 0) / count;
	return clusters.map(({ lab, weight }) =>
		weight < ACCENT_UP_TO_MEAN * meanWeight && chroma(lab) > meanChroma ? 'accent' : 'main',
	);
}

const ROLE_ORDER: Readonly<Record<PaletteRole, number>> = { base: 0, main: 1, accent: 2 };

/** The palette's order: base, main, accent; heaviest first within a role; then by id. Weights are scaled to sum to 1. */
export function inPaletteOrder(colours: readonly PaletteColour[]): PaletteColour[] {
	const total = colours.reduce((sum, { weight }) => sum + weight, 0);
	return colours
		.map((colour) => ({ ...colour, weight: total > 0 ? colour.weight / total : 1 / colours.length }))
		.sort(
			(one, other) =>
				ROLE_ORDER[one.role] - ROLE_ORDER[other.role] ||
				other.weight - one.weight ||
				(one.id < other.id ? -1 : one.id > other.id ? 1 : 0),
		);
}
