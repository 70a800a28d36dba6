import type { Lab65 } from '../../colour/lab65.ts';

/** Shadow scales all of a cloth's light: L* + 16, a* and b* shrink together (CIELAB's cube root of a product). */
const shade = (lab: Lab65, ratio: number): Lab65 => [(lab[0] + 16) * ratio - 16, lab[1] * ratio, lab[2] * ratio];

/** Darkest shadow (as a ratio of L* + 16) that still counts as a fold: in linear light the cube, about a sixth. */
const DEEPEST_FOLD = 0.55;
/** How far, in a* and b*, a shaded colour may lie from where pure shading would put it: floor, and share of the chroma, since sheen bleaches. */
const SHADING_RESIDUAL = 7;
const SHADING_RESIDUAL_OF_CHROMA = 0.2;
/** Differences in L* up to which two colours are one cloth even where nothing lies between them: less than a print needs to be seen. */
const ALWAYS_ONE_L = 8;

/** Whether the darker colour can be the lighter one in a fold. */
export const canBeShade = (one: Lab65, other: Lab65): boolean => isOneHueInShade(one, other, DEEPEST_FOLD);

/** Whether the darker colour is the lighter one in less light, no darker than `deepest` (a ratio of L* + 16). */
export function isOneHueInShade(one: Lab65, other: Lab65, deepest: number): boolean {
	const [light, dark] = one[0] >= other[0] ? [one, other] : [other, one];
	const ratio = (dark[0] + 16) / (light[0] + 16);
	const expected = shade(light, ratio);
	const residual = Math.hypot(expected[1] - dark[1], expected[2] - dark[2]);
	const most = Math.max(SHADING_RESIDUAL, SHADING_RESIDUAL_OF_CHROMA * Math.hypot(light[1], light[2]));
	return ratio >= deepest && residual <= most;
}

/** Steps in which the way from one colour to the other is counted; a sixth of them lies beyond each end. */
const STEPS = 12;
const BEYOND = 1 / 6;
/** Pixels at the thinnest step between, as a share of the lesser end, from which the way counts as unbroken. */
const LEAST_BRIDGE = 0.35;

/**
 * Whether the cloth goes from one colour to the other without a gap. A fold passes through every shade on its way; a print jumps, and between
 * its two colours lie only the few pixels on their border. `labs` are L, a, b triples of the whole cloth.
 */
function isBridged(labs: Float32Array, one: Lab65, other: Lab65): boolean {
	const wayL = other[0] - one[0];
	const wayA = other[1] - one[1];
	const wayB = other[2] - one[2];
	const length = wayL ** 2 + wayA ** 2 + wayB ** 2;
	const counts = new Float64Array(STEPS);
	for (let i = 0; i < labs.length; i += 3) {
		const L = labs[i]! - one[0];
		const a = labs[i + 1]! - one[1];
		const b = labs[i + 2]! - one[2];
		const along = (L * wayL + a * wayA + b * wayB) / length;
		const step = Math.floor((along * (1 - 2 * BEYOND) + BEYOND) * STEPS);
		if (step < 0 || step >= STEPS) continue;
		const aside = (L - along * wayL) ** 2 + (a - along * wayA) ** 2 + (b - along * wayB) ** 2;
		if (aside <= SHADING_RESIDUAL ** 2) counts[step]!++;
	}
	const smooth = counts.map((n, step) => (counts[step - 1] ?? n) / 4 + n / 2 + (counts[step + 1] ?? n) / 4);
	const third = STEPS / 3;
	const ends = Math.min(Math.max(...smooth.subarray(0, third)), Math.max(...smooth.subarray(-third)));
	return Math.min(...smooth.subarray(third, -third)) >= ends * LEAST_BRIDGE;
}

/**
 * Whether two colours of a cloth are one in light and shadow: one can be the other's shade, and they lie close or the cloth shows the shades
 * between them. Constants measured on the demo's rendered garments (known colours) and on street photos: 28 of 37 garments come out with
 * exactly their number of colours, where a limit on lightness alone gave 22.
 */
export const isOneCloth = (labs: Float32Array, one: Lab65, other: Lab65): boolean =>
	canBeShade(one, other) && (Math.abs(one[0] - other[0]) <= ALWAYS_ONE_L || isBridged(labs, one, other));
