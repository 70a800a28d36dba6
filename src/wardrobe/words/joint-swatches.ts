import type { Lab65 } from '../../colour/lab65.ts';
import { SAME_WORN } from '../../colour/same-colour.ts';
import { type Joinable, weightsOf } from './joint-trust.ts';
import { distanceAcrossPhotos } from './photo-distance.ts';
import type { Swatch, Trust } from './reading.ts';

/** One photo's colours of the piece, their shares summing to 1. */
export type PhotoColours = Joinable & { readonly swatches: readonly Pick<Swatch, 'lab' | 'share'>[] };

/** However bad two photos are, colours further apart than this are two (CIEDE2000; just under what no judgement calls near). */
const SAME_AT_MOST = 14;
/** The colour that most of the piece has in both photos is the same cloth, most likely: it may be this much further apart (the stated error is passed by one photo in five). */
const MAIN = { share: 0.6, factor: 1.5, atMost: 20 };

type Joint = {
	readonly lab: Lab65;
	readonly weight: number;
	readonly share: number;
	/** Trust of, and share in, the photo that it was first seen in. */
	readonly trust: Trust;
	readonly firstShare: number;
};

/** Up to here two photos' colours can be one, by both photos' errors. */
function reachOf(joint: Joint, trust: Trust, share: number): number {
	const errors = Math.hypot(joint.trust.error, trust.error);
	if (Math.min(joint.firstShare, share) >= MAIN.share)
		return Math.min(MAIN.atMost, Math.max(SAME_WORN, MAIN.factor * errors));
	return Math.min(SAME_AT_MOST, Math.max(SAME_WORN, errors));
}

/** The pairs of joint colours and one photo's that can be one colour, nearest first. */
function pairsOf(joints: readonly Joint[], { swatches, trust }: PhotoColours) {
	return joints
		.flatMap((joint, of) =>
			swatches.map(({ lab, share }, with_) => ({
				of,
				with: with_,
				beyond: distanceAcrossPhotos(joint.lab, lab, [joint.trust, trust]) - reachOf(joint, trust, share),
			})),
		)
		.filter(({ beyond }) => beyond <= 0)
		.sort((one, other) => one.beyond - other.beyond || one.of - other.of || one.with - other.with);
}

function joined(
	joint: Joint,
	{ lab, share }: Pick<Swatch, 'lab' | 'share'>,
	weight: number,
	photoShare: number,
): Joint {
	const whole = joint.weight + weight;
	const mean = joint.lab.map((value, axis) => (value * joint.weight + lab[axis]! * weight) / whole);
	return { ...joint, lab: mean as unknown as Lab65, weight: whole, share: joint.share + share * photoShare };
}

/**
 * The colours of several photos of one piece as one list: each photo counts alike for how much of the piece a colour is, and by its trust for
 * what the colour is. A colour of one photo joins at most one of another. Order: as the photos come.
 */
export function jointSwatches(photos: readonly PhotoColours[]): { readonly lab: Lab65; readonly share: number }[] {
	const weights = weightsOf(photos);
	let joints: Joint[] = [];
	for (const [index, photo] of photos.entries()) {
		const weight = weights[index]!;
		const photoShare = 1 / photos.length;
		const partnerOf = new Map<number, number>();
		const taken = new Set<number>();
		for (const pair of pairsOf(joints, photo)) {
			if (partnerOf.has(pair.of) || taken.has(pair.with)) continue;
			partnerOf.set(pair.of, pair.with);
			taken.add(pair.with);
		}
		joints = [
			...joints.map((joint, of) => {
				const partner = partnerOf.get(of);
				return partner === undefined ? joint : joined(joint, photo.swatches[partner]!, weight, photoShare);
			}),
			...photo.swatches
				.filter((_, at) => !taken.has(at))
				.map(({ lab, share }) => ({ lab, weight, share: share * photoShare, trust: photo.trust, firstShare: share })),
		];
	}
	return joints.map(({ lab, share }) => ({ lab, share }));
}
