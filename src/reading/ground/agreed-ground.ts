import type { Lab65 } from '../../colour/lab65.ts';
import { medianOf } from '../../colour/median.ts';
import { type CameraKind, isToldByNeutral, type Light } from '../../wardrobe/words/light.ts';
import type { SeenGround } from '../../wardrobe/words/reading.ts';
import { correctedBy } from '../light/light-model.ts';

/** A photo of a set that shares one ground. */
export type GroundPhoto = {
	readonly id: string;
	readonly ground: SeenGround;
	readonly camera: CameraKind;
	/** What the photo says of its light by itself. */
	readonly ownLight: Light;
	/** The colours of the cloth on it, uncorrected, the largest first. */
	readonly cloth: readonly Lab65[];
};

/** Why a set's ground tells no light. */
export type NoReference = 'vivid' | 'dark' | 'few';

/** What a set of photos of one ground tells of it. */
export type AgreedGround = {
	/** Its colour, as agreed by the photos, or as measured where some have a white or grey in them. */
	readonly lab: Lab65;
	/** Photos whose own white or grey measured it. */
	readonly measuredBy: readonly string[];
	/** Error of the surest of these, CIEDE2000, or null where there is none. */
	readonly measuredError: number | null;
	/** Why it is not used, or null where it is. */
	readonly unused: NoReference | null;
};

/**
 * From this chroma on a ground's colour is no reference: what phones do to vivid colours differs from photo to photo more than their light does. A light ground
 * may be more vivid than a dark one. 8 phone photos of a chart, each patch taken as the ground: a dark red, purple or green makes things worse.
 */
const VIVID = { from: 45, atL: 60, fromOfDark: 25 };
/** Darker than this a ground tells nothing of the lights. */
const DARK = 30;
/** Fewer photos than this agree on nothing that is better than each by itself. */
const LEAST_PHOTOS = 3;
/** Rounds of finding the set's colour, and how many times the usual distance from it a photo may lie and still have a say. */
const ROUNDS = 12;
const SAY_WITHIN = 3;
const LEAST_USUAL = 2;

export const chromaOf = ([, a, b]: Lab65): number => Math.hypot(a, b);

/** The same surface under more or less of the same light, at lightness `L`: the ratios of its channels stay (CIE 15, the cube root of CIELAB). */
export function atLightness([was, a, b]: Lab65, L: number): Lab65 {
	const scale = (L + 16) / (was + 16);
	return [L, a * scale, b * scale];
}

/** A colour of the photo as it is by the photo's own light. */
export const ownColour = ({ ownLight }: GroundPhoto, lab: Lab65): Lab65 => correctedBy(ownLight.model ?? null)(lab);

const isMeasured = ({ ownLight }: GroundPhoto): boolean => isToldByNeutral(ownLight);

const distance = (one: Lab65, other: Lab65): number =>
	Math.hypot(one[0] - other[0], one[1] - other[1], one[2] - other[2]);

/** The colour that most photos agree on (Tukey's biweight, from the medians): a photo of something else, or in a deep shadow, has no say. */
function agreedColour(seen: readonly Lab65[], weights: readonly number[]): Lab65 {
	// Tints are compared at one lightness: more light makes the same surface more coloured in CIELAB.
	const usual = medianOf(seen.map(([L]) => L));
	const colours = seen.map((lab): Lab65 => [lab[0], ...(atLightness(lab, usual).slice(1) as [number, number])]);
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
	return atLightness([usual, agreed[1], agreed[2]], agreed[0]);
}

function isVivid(lab: Lab65): boolean {
	const lightness = Math.min(1, Math.max(0, (lab[0] - DARK) / (VIVID.atL - DARK)));
	return chromaOf(lab) > VIVID.fromOfDark + lightness * (VIVID.from - VIVID.fromOfDark);
}

/** What the photos of one ground know of its colour. At least one photo. */
export function agreedGround(photos: readonly GroundPhoto[]): AgreedGround {
	const measuring = photos.filter(isMeasured);
	const telling = measuring.length > 0 ? measuring : photos;
	const lab = agreedColour(
		telling.map((photo) => ownColour(photo, photo.ground.lab)),
		telling.map(({ ownLight, ground }) => ground.share / (ownLight.error ?? 10) ** 2),
	);
	const isFew = measuring.length === 0 && photos.length < LEAST_PHOTOS;
	return {
		lab,
		measuredBy: measuring.map(({ id }) => id),
		measuredError: measuring.length > 0 ? Math.min(...measuring.map(({ ownLight }) => ownLight.error ?? 10)) : null,
		unused: isVivid(lab) ? 'vivid' : lab[0] < DARK ? 'dark' : isFew ? 'few' : null,
	};
}
