import { type Lab65, labFromXyz } from '../../colour/lab65.ts';
import { say } from '../../language/speak.ts';
import type { Light } from '../../wardrobe/words/light.ts';
import { errorOfGround } from '../../wardrobe/words/light-error.ts';
import { type AgreedGround, agreedGround, chromaOf, type GroundPhoto, ownColour } from './agreed-ground.ts';
import { modelFromGround } from './ground-model.ts';

/**
 * How far the chromaticity of cloth follows that of its ground, before a set's own garments are looked at, and how many squared units of CIELAB of evidence that
 * guess is worth (a garment's own tint strays by 4, the rate from set to set by 0.42). In 40 sets of real phone photos cloth that is nearly grey follows
 * its ground in a third of the sets (0.5 to 1) and not at all in the others: there cameras keep greys grey and only make wood more or less yellow.
 */
const USUAL_RATE = 0.25;
const WORTH = 90;
/** Cloth below this chroma counts as nearly grey; what strays further than this from the rule is coloured cloth. */
const NEARLY_GREY = 12;
const STRAYS = 12;
const RATES = Array.from({ length: 21 }, (_, at) => at / 20);
/** From the chroma of `DULL` on a ground's chromaticity counts less, from `VIVID` on not at all, and its lightness by `OF_VIVID` (8 phone photos of a chart). */
const DULL = 15;
const VIVID = 40;
const OF_VIVID = 0.7;
/** Darker than `LIGHT` a ground's lightness counts less, at `DARK` by `OF_DARK`: there is more press than light in it. Same photos. */
const DARK = 30;
const LIGHT = 48;
const OF_DARK = 0.6;

const clamp01 = (value: number): number => Math.min(1, Math.max(0, value));

/** A ground's step away from the set's colour, as it moves this cloth, and the cloth's own a* or b*. */
type Step = { readonly ofGround: number; readonly ofCloth: number };

/** The steps of cloth that is nearly grey, as it is or once the whole step of its ground is taken off it. A cast moves dark cloth by less, as CIELAB has it. */
function stepsOf(photos: readonly GroundPhoto[], agreed: Lab65): Step[] {
	return photos.flatMap((photo) => {
		const ground = ownColour(photo, photo.ground.lab);
		return photo.cloth.flatMap((seen) => {
			const cloth = ownColour(photo, seen);
			const scale = (cloth[0] + 16) / (ground[0] + 16);
			const steps = ([1, 2] as const).map((axis) => ({
				ofGround: scale * (ground[axis] - agreed[axis]),
				ofCloth: cloth[axis],
			}));
			const without = Math.hypot(...steps.map(({ ofGround, ofCloth }) => ofCloth - ofGround));
			return Math.min(chromaOf(cloth), without) < NEARLY_GREY ? steps : [];
		});
	});
}

/** What a residual costs: as its square while small, no more than `STRAYS` does beyond (Tukey's biweight). */
const costOf = (residual: number): number => (STRAYS ** 2 / 6) * (1 - Math.max(0, 1 - (residual / STRAYS) ** 2) ** 3);

/** How far a set's nearly grey cloth follows its ground, 0..1: the rate that leaves it greyest, with a guess that counts where there is little to go by. */
function rateOfFollowing(photos: readonly GroundPhoto[], agreed: Lab65): number {
	const steps = stepsOf(photos, agreed);
	const cost = (rate: number) =>
		(WORTH / 2) * (rate - USUAL_RATE) ** 2 +
		steps.reduce((sum, { ofGround, ofCloth }) => sum + costOf(ofCloth - rate * ofGround), 0);
	return RATES.reduce((best, rate) => (cost(rate) < cost(best) ? rate : best), USUAL_RATE);
}

/** How far a photo is brought to the set's colour, 0..1, in lightness and in chromaticity. */
function degrees(
	photos: readonly GroundPhoto[],
	agreed: Lab65,
): { readonly lightness: number; readonly chromaticity: number } {
	const vivid = clamp01((chromaOf(agreed) - DULL) / (VIVID - DULL));
	const dark = clamp01((LIGHT - agreed[0]) / (LIGHT - DARK));
	return {
		lightness: Math.min(1 - (1 - OF_VIVID) * vivid, 1 - (1 - OF_DARK) * dark),
		chromaticity: (1 - vivid) * rateOfFollowing(photos, agreed),
	};
}

const reasonOf = ({ measuredBy }: AgreedGround, photos: number): string =>
	measuredBy.length > 0 ? say('light.groundMeasured') : say('light.groundAgreed', { count: photos - 1 });

/**
 * The light of each photo of one ground that has none of its own, by id; empty where the ground is no reference. The set has one colour of the ground, each
 * photo one light that brings its own to it, as far as cloth is seen to follow it.
 */
export function groundLights(photos: readonly GroundPhoto[]): ReadonlyMap<string, Light> {
	const agreed = agreedGround(photos);
	const lights = new Map<string, Light>();
	if (agreed.unused) return lights;
	const { lightness, chromaticity } = degrees(photos, agreed.lab);
	const error = errorOfGround(agreed.measuredError);
	for (const photo of photos.filter(({ id }) => !agreed.measuredBy.includes(id))) {
		const own = ownColour(photo, photo.ground.lab);
		const toward = (axis: 0 | 1 | 2, degree: number) => own[axis] + degree * (agreed.lab[axis] - own[axis]);
		const wanted: Lab65 = [toward(0, lightness), toward(1, chromaticity), toward(2, chromaticity)];
		const model = modelFromGround(photo.ground.lab, wanted, photo.camera);
		if (!model) continue;
		const [X, Y, Z] = model.white;
		lights.set(photo.id, {
			source: 'ground',
			cast: labFromXyz([X, Y, Z]),
			strength: agreed.measuredBy.length > 0 ? 1 : 0.5,
			reason: reasonOf(agreed, photos.length),
			model,
			error,
		});
	}
	return lights;
}
