import type { Lab65 } from '../../colour/lab65.ts';
import { atLightness, type GroundPhoto, ownColour } from './agreed-ground.ts';

/** A colour's a* and b*. */
type Tint = readonly [a: number, b: number];

/** A cloth's own tint, and how far its ground's step away from the set's colour would move it. */
type Step = { readonly cloth: Tint; readonly ground: Tint };

/**
 * How far the chromaticity of cloth follows that of its ground before a set's own garments are looked at, and how much that differs from set to set. In 40
 * sets of real phone photos cloth follows its ground in a third (0.5 to 1) and not at all in the others: there cameras keep greys grey and only make
 * wood more or less yellow.
 */
const USUAL = { rate: 0.25, spread: 0.42 };
/** Of cloth about half is nearly grey, and strays by so much from the set's usual grey; the rest is of any colour. Usual greys stray from neutral. */
const GREY = { share: 0.5, spread: 4, usual: 3 };
const COLOURED_SPREAD = 22;
const RATES = Array.from({ length: 21 }, (_, at) => at / 20);
const ROUNDS = 4;

function stepsOf(photos: readonly GroundPhoto[], agreed: Lab65): Step[] {
	return photos.flatMap((photo) =>
		photo.cloth.map((seen): Step => {
			const cloth = ownColour(photo, seen);
			// A cast moves dark cloth by less, as CIELAB has it.
			const ground = atLightness(ownColour(photo, photo.ground.lab), cloth[0]);
			const same = atLightness(agreed, cloth[0]);
			return { cloth: [cloth[1], cloth[2]], ground: [ground[1] - same[1], ground[2] - same[2]] };
		}),
	);
}

const density = ([a, b]: Tint, around: Tint, spread: number): number =>
	Math.exp(-((a - around[0]) ** 2 + (b - around[1]) ** 2) / (2 * spread ** 2)) / spread ** 2;

/** Logarithm of how likely these tints are: nearly grey around one usual grey, found here, or of any colour. */
function likelihoodOf(tints: readonly Tint[]): number {
	let usual: Tint = [0, 0];
	let likelihood = 0;
	for (let round = 0; round < ROUNDS; round++) {
		likelihood = -(usual[0] ** 2 + usual[1] ** 2) / (2 * GREY.usual ** 2);
		let [a, b, weight] = [0, 0, (GREY.spread / GREY.usual) ** 2];
		for (const tint of tints) {
			const grey = GREY.share * density(tint, usual, GREY.spread);
			const any = grey + (1 - GREY.share) * density(tint, [0, 0], COLOURED_SPREAD);
			likelihood += Math.log(any);
			a += (grey / any) * tint[0];
			b += (grey / any) * tint[1];
			weight += grey / any;
		}
		usual = [a / weight, b / weight];
	}
	return likelihood;
}

/**
 * How far a set's cloth follows its ground in chromaticity, 0..1: the mean of all rates, each as likely as its greys come out alike by it, with a guess that
 * counts where there is little to go by.
 */
export function rateOfFollowing(photos: readonly GroundPhoto[], agreed: Lab65): number {
	const steps = stepsOf(photos, agreed);
	const logs = RATES.map((rate) => {
		const tints = steps.map(({ cloth, ground }): Tint => [cloth[0] - rate * ground[0], cloth[1] - rate * ground[1]]);
		return likelihoodOf(tints) - (rate - USUAL.rate) ** 2 / (2 * USUAL.spread ** 2);
	});
	const most = Math.max(...logs);
	const weights = logs.map((log) => Math.exp(log - most));
	const all = weights.reduce((sum, weight) => sum + weight, 0);
	return RATES.reduce((sum, rate, at) => sum + rate * (weights[at]! / all), 0);
}
