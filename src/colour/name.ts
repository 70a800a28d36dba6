import { deltaE2000Of, MOST_LIGHTNESS_DIVISOR } from './delta-e-many.ts';
import { ISCC_NBS } from './iscc-nbs.ts';
import { chroma, type Lab65, labFromHex } from './lab65.ts';

/**
 * Numbers of the names whose sRGB centroid lies outside the name's own Munsell block, mostly because the true one is too vivid for
 * sRGB (checked against the published blocks, see fixtures/reference/README.md).
 */
export const UNRELIABLE_CENTROIDS: ReadonlySet<number> = new Set([
	1, 25, 28, 29, 64, 66, 123, 124, 133, 139, 142, 158, 160, 161, 167, 169, 170, 176, 179, 246,
]);

/**
 * What an unreliable centroid's distance is raised by: half the median distance of a centroid to its nearest neighbour (5.5 over the
 * 267, CIEDE2000). So such a name is given only where it is clearly the nearest, and a reliable neighbour wins otherwise.
 */
const UNRELIABLE_HANDICAP = 2.75;

const CENTROIDS = ISCC_NBS.map(([name, hex], index) => ({
	name,
	lab: labFromHex(hex)!,
	handicap: UNRELIABLE_CENTROIDS.has(index + 1) ? UNRELIABLE_HANDICAP : 0,
}));

/**
 * Under this CIELAB chroma only the five neutral names compete: their own centroids lie between 0 and 1.7, those of the tinted greys, whites and
 * blacks from 2.0 up, and an exact grey must not be called bluish because a bluish centroid happens to have its lightness.
 */
const NEUTRAL_NAMES_UNDER = 1.5;
const NEUTRAL_NAMES = new Set(['white', 'light gray', 'medium gray', 'dark gray', 'black']);
const NEUTRALS = CENTROIDS.filter(({ name }) => NEUTRAL_NAMES.has(name));

/** Names by the colour as it stands in memory, which never changes: the same few are told of many garments. */
const NAMED = new WeakMap<Lab65, string>();

/**
 * The systematic ISCC-NBS name of a colour, such as "light grayish olive", spelt as the standard spells it: the name whose centroid is
 * nearest by CIEDE2000. The standard defines blocks in Munsell space; the nearest centroid is the usual approximation of them,
 * so near a border the neighbour's name would be as right.
 */
export function colourName(colour: Lab65): string {
	const named = NAMED.get(colour);
	if (named !== undefined) return named;
	const name = nearestName(colour);
	NAMED.set(colour, name);
	return name;
}

function nearestName(colour: Lab65): string {
	const [L, a, b] = colour;
	let best = '';
	let nearest = Number.POSITIVE_INFINITY;
	for (const { name, lab, handicap } of chroma(colour) < NEUTRAL_NAMES_UNDER ? NEUTRALS : CENTROIDS) {
		if (Math.abs(L - lab[0]) / MOST_LIGHTNESS_DIVISOR + handicap >= nearest) continue;
		const distance = deltaE2000Of(L, a, b, lab[0], lab[1], lab[2]) + handicap;
		if (distance < nearest) {
			nearest = distance;
			best = name;
		}
	}
	return best;
}
