import { chroma, hueDegrees, type Lab65 } from '../../colour/lab65.ts';
import { isNeutral } from '../../colour/neutrality.ts';
import { looksPlain } from '../words/plain-looking.ts';
import type { Appearance, Pattern } from '../words/reading.ts';

/** The axes on which a garment is compared with the inspirations. */
export const STYLE_AXES = ['lightness', 'vividness', 'warmth', 'pattern'] as const;
export type StyleAxis = (typeof STYLE_AXES)[number];

/**
 * The hue taken as the warmest, degrees in CIELAB: between red (about 40) and yellow (about 100); the coolest lies opposite. Common
 * practice of painters, no source; the axis is a description, not a rule.
 */
const WARMEST_HUE_DEGREES = 60;

/** How patterned, 0 (plain) .. 1, as sure as the pattern is. */
export const patternedness = (pattern: Pattern): number =>
	looksPlain(pattern) ? 1 - Math.max(pattern.sure, 0.5) : pattern.sure;

const warmthOf = (lab: Lab65): number => Math.cos(((hueDegrees(lab) - WARMEST_HUE_DEGREES) * Math.PI) / 180);

function meanOf(parts: readonly { readonly value: number; readonly weight: number }[]): number | null {
	const total = parts.reduce((sum, { weight }) => sum + weight, 0);
	return total > 0 ? parts.reduce((sum, { value, weight }) => sum + value * weight, 0) / total : null;
}

/**
 * Where a photo or garment lies on each axis: mean L* 0..100, mean C* 0 or more, warmth -1 (cool) .. 1 (warm) of its coloured part, patternedness
 * 0..1. `null` where it does not tell: no colours, or no coloured part for warmth.
 */
export function valuesOf({
	swatches,
	pattern,
}: Pick<Appearance, 'swatches' | 'pattern'>): Readonly<Record<StyleAxis, number | null>> {
	const coloured = swatches.filter(({ lab }) => !isNeutral(lab));
	return {
		lightness: meanOf(swatches.map(({ lab, share }) => ({ value: lab[0], weight: share }))),
		vividness: meanOf(swatches.map(({ lab, share }) => ({ value: chroma(lab), weight: share }))),
		warmth: meanOf(coloured.map(({ lab, share }) => ({ value: warmthOf(lab), weight: share * chroma(lab) }))),
		pattern: swatches.length > 0 ? patternedness(pattern) : null,
	};
}
