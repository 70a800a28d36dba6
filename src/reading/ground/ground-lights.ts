import { type Lab65, labFromXyz } from '../../colour/lab65.ts';
import { medianOf } from '../../colour/median.ts';
import type { CameraKind, Light } from '../../wardrobe/words/light.ts';
import { errorOfGround } from '../../wardrobe/words/light-error.ts';
import type { SeenGround } from '../../wardrobe/words/reading.ts';
import { correctedBy } from '../light/light-model.ts';
import { modelFromGround } from './ground-model.ts';

/** A photo of a set that shares one ground. */
export type GroundPhoto = {
	readonly id: string;
	readonly ground: SeenGround;
	readonly camera: CameraKind;
	/** What the photo says of its light by itself. */
	readonly ownLight: Light;
};

/** Why a set's ground tells no light. */
export type NoReference = 'vivid' | 'dark' | 'few';

/** What a set of photos of one ground tells of it. */
export type AgreedGround = {
	/** Its colour, as agreed by the photos, or as measured where some have a white or grey in them. */
	readonly lab: Lab65;
	/** Photos whose own white or grey measured it. */
	readonly measuredBy: readonly string[];
	/** Why it is not used, or null where it is. */
	readonly unused: NoReference | null;
};

/**
 * From this chroma on a ground's colour is no reference: what phones do to vivid colours differs from photo to photo more than their light does. Up to
 * `DULL` it counts in full, between the two the less the more vivid. 8 phone photos of a chart, each patch taken as the ground.
 */
const VIVID = 45;
const DULL = 15;
/** Darker than `DARK` a ground tells nothing of the lights; from `LIGHT` on its lightness counts in full, at `DARK` by `OF_DARK`. Same photos. */
const DARK = 30;
const LIGHT = 48;
const OF_DARK = 0.6;
/** Fewer photos than this agree on nothing that is better than each by itself. */
const LEAST_PHOTOS = 3;
/** Rounds of finding the set's colour, and how many times the usual distance from it a photo may lie and still have a say. */
const ROUNDS = 12;
const SAY_WITHIN = 3;
const LEAST_USUAL = 2;

const chromaOf = ([, a, b]: Lab65): number => Math.hypot(a, b);
const clamp01 = (value: number): number => Math.min(1, Math.max(0, value));

const isMeasured = ({ ownLight }: GroundPhoto): boolean =>
	ownLight.source === 'neutral-pointed' || ownLight.source === 'neutral-found';

const ownColour = ({ ground, ownLight }: GroundPhoto): Lab65 => correctedBy(ownLight.model ?? null)(ground.lab);

const distance = (one: Lab65, other: Lab65): number =>
	Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);

/** The colour that most photos agree on (Tukey's biweight, from the medians): a photo of something else, or in a deep shadow, has no say. */
function agreedColour(colours: readonly Lab65[], weights: readonly number[]): Lab65 {
	let agreed = [0, 1, 2].map((axis) => medianOf(colours.map((lab) => lab[axis]!))) as unknown as Lab65;
	for (let round = 0; round < ROUNDS; round++) {
		const off = colours.map((lab) => distance(lab, agreed));
		const reach = SAY_WITHIN * Math.max(LEAST_USUAL, medianOf(off));
		const says = off.map((apart, at) => weights[at]! * Math.max(0, 1 - (apart / reach) ** 2) ** 2);
		const all = says.reduce((sum, say) => sum + say, 0);
		agreed = [0, 1, 2].map(
			(axis) => colours.reduce((sum, lab, at) => sum + says[at]! * lab[axis]!, 0) / all,
		) as unknown as Lab65;
	}
	return agreed;
}

/** What the photos of one ground know of its colour. At least one photo. */
export function agreedGround(photos: readonly GroundPhoto[]): AgreedGround {
	const measuring = photos.filter(isMeasured);
	const telling = measuring.length > 0 ? measuring : photos;
	const weights = telling.map(({ ownLight, ground }) => ground.share / (ownLight.error ?? 10) ** 2);
	const lab = agreedColour(telling.map(ownColour), weights);
	const unused =
		chromaOf(lab) > VIVID
			? 'vivid'
			: lab[0] < DARK
				? 'dark'
				: measuring.length === 0 && photos.length < LEAST_PHOTOS
					? 'few'
					: null;
	return { lab, measuredBy: measuring.map(({ id }) => id), unused };
}

/** How far a photo is brought to the set's colour, 0..1, in lightness and in chromaticity. */
function trustIn([L, a, b]: Lab65): { readonly lightness: number; readonly chromaticity: number } {
	return {
		lightness: OF_DARK + (1 - OF_DARK) * clamp01((L - DARK) / (LIGHT - DARK)),
		chromaticity: clamp01((VIVID - Math.hypot(a, b)) / (VIVID - DULL)),
	};
}

function reasonOf({ measuredBy }: AgreedGround, photos: number): string {
	return measuredBy.length > 0
		? 'Corrected by its ground, whose colour another picture with a white or grey in it tells.'
		: `Corrected by its ground, so that it agrees with the ${photos - 1} other pictures of the same ground.`;
}

/**
 * The light of each photo of one ground that has none of its own, by id; empty where the ground is no reference. The set has one colour of the ground, each
 * photo one light that brings its own to it.
 */
export function groundLights(photos: readonly GroundPhoto[]): ReadonlyMap<string, Light> {
	const agreed = agreedGround(photos);
	if (agreed.unused) return new Map();
	const { lightness, chromaticity } = trustIn(agreed.lab);
	const error = errorOfGround(agreed.measuredBy.length === 0 ? null : leastError(photos));
	return new Map(
		photos
			.filter((photo) => !isMeasured(photo))
			.map((photo): [string, Light] => {
				const own = ownColour(photo);
				const toward = (axis: 0 | 1 | 2, degree: number) => own[axis] + degree * (agreed.lab[axis] - own[axis]);
				const wanted: Lab65 = [toward(0, lightness), toward(1, chromaticity), toward(2, chromaticity)];
				const model = modelFromGround(photo.ground.lab, wanted, photo.camera);
				const [X, Y, Z] = model.white;
				const light: Light = {
					source: 'ground',
					cast: labFromXyz([X, Y, Z]),
					strength: agreed.measuredBy.length > 0 ? 1 : 0.5,
					reason: reasonOf(agreed, photos.length),
					model,
					error,
				};
				return [photo.id, light];
			}),
	);
}

const leastError = (photos: readonly GroundPhoto[]): number =>
	Math.min(...photos.filter(isMeasured).map(({ ownLight }) => ownLight.error ?? 10));
