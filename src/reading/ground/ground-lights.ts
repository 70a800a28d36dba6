import { type Lab65, labFromXyz } from '../../colour/lab65.ts';
import { medianOf } from '../../colour/median.ts';
import { say } from '../../language/speak.ts';
import type { Light, LightModel } from '../../wardrobe/words/light.ts';
import { errorOfGround } from '../../wardrobe/words/light-error.ts';
import { correctedBy } from '../light/light-model.ts';
import { type AgreedGround, agreedGround, chromaOf, type GroundPhoto, ownColour } from './agreed-ground.ts';
import { rateOfFollowing } from './following.ts';
import { type GroundDegrees, modelFromGround } from './ground-model.ts';

/** From the chroma of `DULL` on a ground's chromaticity counts less, from `VIVID` on not at all, and its lightness by `OF_VIVID` (8 phone photos of a chart). */
const DULL = 15;
const VIVID = 40;
const OF_VIVID = 0.7;
/** Darker than `LIGHT` a ground's lightness counts less, at `DARK` by `OF_DARK`: there is more press than light in it. Same photos. */
const DARK = 30;
const LIGHT = 48;
const OF_DARK = 0.6;
/** The median chroma of a set's nearly grey cloth may grow by no more than this: more, and its ground leads astray. Parts of the way that are tried. */
const MAY_GROW = 0.3;
const NEARLY_GREY = 12;
const PARTS = [
	{ lightness: 1, chromaticity: 1 },
	{ lightness: 1, chromaticity: 0.75 },
	{ lightness: 1, chromaticity: 0.5 },
	{ lightness: 1, chromaticity: 0.25 },
	{ lightness: 1, chromaticity: 0 },
	{ lightness: 0.5, chromaticity: 0 },
] as const;

const clamp01 = (value: number): number => Math.min(1, Math.max(0, value));

/** The photos that the ground tells the light of, each with its model. */
type Told = readonly (readonly [GroundPhoto, LightModel])[];

function toldBy(photos: readonly GroundPhoto[], agreed: Lab65, degrees: GroundDegrees): Told {
	return photos.flatMap((photo) => {
		const seen = photo.ground.lab;
		const model = modelFromGround({ seen, own: ownColour(photo, seen), agreed }, photo.camera, degrees);
		return model ? [[photo, model] as const] : [];
	});
}

/** How much more coloured the nearly grey cloth of these photos gets, in the median; 0 without any. */
function growthOf(told: Told): number {
	const greys = told.flatMap(([photo, model]) =>
		photo.cloth
			.map((seen) => [chromaOf(ownColour(photo, seen)), chromaOf(correctedBy(model)(seen))] as const)
			.filter(([own]) => own < NEARLY_GREY),
	);
	if (greys.length === 0) return 0;
	return medianOf(greys.map(([, now]) => now)) - medianOf(greys.map(([own]) => own));
}

/** The lights of the photos, no further than leaves their nearly grey cloth grey. */
function modelsOf(
	photos: readonly GroundPhoto[],
	all: readonly GroundPhoto[],
	{ lab: agreed, measuredBy }: AgreedGround,
): Told {
	const vivid = clamp01((chromaOf(agreed) - DULL) / (VIVID - DULL));
	const dark = clamp01((LIGHT - agreed[0]) / (LIGHT - DARK));
	const lightness = Math.min(1 - (1 - OF_VIVID) * vivid, 1 - (1 - OF_DARK) * dark);
	const whole = (1 - vivid) * rateOfFollowing(all, agreed);
	let told: Told = [];
	for (const part of PARTS) {
		// A lightness that was measured is not in question.
		if (measuredBy.length > 0 && part.lightness < 1) break;
		const degrees = { lightness: part.lightness * lightness, chromaticity: part.chromaticity * whole };
		told = toldBy(photos, agreed, degrees);
		if (growthOf(told) <= MAY_GROW) break;
	}
	return told;
}

const reasonOf = ({ measuredBy }: AgreedGround, photos: number): string =>
	measuredBy.length > 0 ? say('light.groundMeasured') : say('light.groundAgreed', { count: photos - 1 });

/**
 * The light of each photo of one ground that has none of its own, by id; empty where the ground is no reference. The set has one colour of the ground, each
 * photo one light that brings its own to it, as far as cloth is seen to follow it.
 */
export function groundLights(photos: readonly GroundPhoto[]): ReadonlyMap<string, Light> {
	const agreed = agreedGround(photos);
	if (agreed.unused) return new Map();
	const error = errorOfGround(agreed.measuredError);
	const untold = photos.filter(({ id }) => !agreed.measuredBy.includes(id));
	return new Map(
		modelsOf(untold, photos, agreed).map(([{ id }, model]): [string, Light] => {
			const [X, Y, Z] = model.white;
			const reason = reasonOf(agreed, photos.length);
			const strength = agreed.measuredBy.length > 0 ? 1 : 0.5;
			return [id, { source: 'ground', cast: labFromXyz([X, Y, Z]), strength, reason, model, error }];
		}),
	);
}
