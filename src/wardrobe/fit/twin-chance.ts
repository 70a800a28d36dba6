import { deltaE2000Of, liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import type { Trust } from '../words/reading.ts';
import { deviationOf } from './photo-deviation.ts';

/** A colour as a photo gives it, with how far the photo is believed. */
export type SeenColour = { readonly lab: Lab65; readonly trust: Pick<Trust, 'error' | 'untold'> };

/** Variances of a difference along lightness, and along each of the two directions of tint; CIEDE2000 units squared. */
type Variances = { readonly lightness: number; readonly tint: number };

/** Where nothing tells the light, lightness errs so many times as much as either direction of tint: bench/NOTES.md, Colours of two photos. */
const UNTOLD_LIGHTNESS = 1.5;

function variancesOf({ error, untold = false }: SeenColour['trust']): Variances {
	const inAll = 3 * deviationOf(error) ** 2;
	const ratio = untold ? UNTOLD_LIGHTNESS ** 2 : 1;
	return { lightness: (inAll * ratio) / (ratio + 2), tint: inAll / (ratio + 2) };
}

/** Two colours that are told apart by no more than how they happened to be seen. */
const NEVER_SURE: Variances = { lightness: 0.25, tint: 0.25 };

const together = (...all: readonly Variances[]): Variances => ({
	lightness: all.reduce((sum, { lightness }) => sum + lightness, 0),
	tint: all.reduce((sum, { tint }) => sum + tint, 0),
});

/** How far two colours lie apart, squared, in lightness and in tint: the parts of CIEDE2000. */
function apart([L, a, b]: Lab65, [L2, a2, b2]: Lab65): { readonly lightness: number; readonly tint: number } {
	const tint = deltaE2000Of(L, a, b, L2, a2, b2, Number.POSITIVE_INFINITY) ** 2;
	return { lightness: Math.max(0, deltaE2000Of(L, a, b, L2, a2, b2) ** 2 - tint), tint };
}

/** Squared distance in standard deviations. */
const inDeviations = (difference: ReturnType<typeof apart>, { lightness, tint }: Variances): number =>
	difference.lightness / lightness + difference.tint / tint;

/** CIEDE2000 beyond which a difference surely lies farther out than so many squared deviations. */
const radiusOf = ({ lightness, tint }: Variances, squared: number): number =>
	Math.sqrt(squared * Math.max(lightness, tint));

/** Density of a normal difference, but for a factor that all share. */
const normal = (difference: ReturnType<typeof apart>, variances: Variances): number =>
	Math.exp(-inDeviations(difference, variances) / 2) / (Math.sqrt(variances.lightness) * variances.tint);

const differenceVariances = (one: SeenColour, other: SeenColour): Variances =>
	together(variancesOf(one.trust), variancesOf(other.trust), NEVER_SURE);

/** Squared deviations from which on a density is nothing. */
const TOO_FAR = 20;

/** As often as not two photos of one home were taken in one light; then they differ by so much of what photos taken anywhere do. Our choice. */
const SHARE_LIGHT = 0.5;
const IN_ONE_LIGHT = 0.25;

/** How likely two photos show colours that lie so far apart, where the cloth itself differs by `cloth`. */
function density(one: SeenColour, other: SeenColour, cloth: Variances): number {
	const { lightness, tint } = differenceVariances(one, other);
	if (!liesWithin(one.lab, other.lab, radiusOf(together({ lightness, tint }, cloth), TOO_FAR))) return 0;
	const difference = apart(one.lab, other.lab);
	const inOneLight = { lightness: IN_ONE_LIGHT * lightness, tint: IN_ONE_LIGHT * tint };
	return (
		(1 - SHARE_LIGHT) * normal(difference, together({ lightness, tint }, cloth)) +
		SHARE_LIGHT * normal(difference, together(inOneLight, cloth))
	);
}

/** Four in five differences of one colour seen twice stay within this (chi-square with 3 degrees of freedom). */
const ONE_COLOUR_WITHIN = 4.64;

/** Whether two photos leave it open that the colours are one. */
export function mayBeOneColour(one: SeenColour, other: SeenColour): boolean {
	const variances = differenceVariances(one, other);
	if (!liesWithin(one.lab, other.lab, radiusOf(variances, ONE_COLOUR_WITHIN))) return false;
	return inDeviations(apart(one.lab, other.lab), variances) <= ONE_COLOUR_WITHIN;
}

/** How often a garment was bought twice in one colour: one in seven has its twin. Our choice. */
const OWNED_TWICE = 0.15;
/** Colours of clothes at large, of which a wardrobe of few garments tells nothing: spread of lightness and of tints, CIEDE2000. Our choice. */
const AT_LARGE: Variances = { lightness: 18 ** 2, tint: 10 ** 2 };
const LIKE_ANY_CLOTHES = 1 / (Math.sqrt(AT_LARGE.lightness) * AT_LARGE.tint);
const NO_DIFFERENCE: Variances = { lightness: 0, tint: 0 };
/** A further garment of a colour that is owned lies about so far from it: the width of one colour word. */
const OF_ONE_FAMILY: Variances = { lightness: 4 ** 2, tint: 4 ** 2 };
/** So many garments tell which colours a wardrobe holds. */
const ASKED_AT_MOST = 100;

type Seen = SeenColour & { readonly id: string };

/** How likely a garment of the wardrobe would be seen in a colour: what each of those asked says for its being another one of its family, and all of them. */
function familiesIn(wardrobe: readonly Seen[]): (seen: Seen) => (butNot: Seen) => number {
	const step = Math.max(1, Math.ceil(wardrobe.length / ASKED_AT_MOST));
	const asked = wardrobe.filter((_, index) => index % step === 0);
	const asEach = new Map<string, { readonly sum: number; readonly of: ReadonlyMap<string, number> }>();
	return (seen) => {
		const says = (one: Seen) => step * density(one, seen, OF_ONE_FAMILY);
		let found = asEach.get(seen.id);
		if (!found) {
			const of = new Map(asked.map((one) => [one.id, says(one)]));
			found = { sum: [...of.values()].reduce((total, one) => total + one, 0), of };
			asEach.set(seen.id, found);
		}
		const { sum, of } = found;
		return (butNot) => Math.max(0, sum - (of.get(seen.id) ?? 0) - (of.get(butNot.id) ?? 0));
	};
}

/**
 * Tells how likely two pieces of one kind are one colour, 0..1, by both photos' errors and by how many garments of about that colour there are: two rust shirts are likely twins where little else
 * is rust, two of ten grey ones that no photo tells apart are not. `ofKind`: pieces of that kind in the wardrobe.
 */
export function twinChances(wardrobe: readonly Seen[]): (one: Seen, other: Seen, ofKind: number) => number {
	const familyOf = familiesIn(wardrobe);
	return (one, other, ofKind) => {
		const same = density(one, other, NO_DIFFERENCE);
		const family = (familyOf(one)(other) + familyOf(other)(one)) / 2;
		const another = (family + LIKE_ANY_CLOTHES) / (wardrobe.length + 1);
		const prior = OWNED_TWICE / Math.max(1, ofKind - 1);
		return (prior * same) / (prior * same + (1 - prior) * another);
	};
}
