import { chroma, hueDegrees, type Lab65 } from '../../colour/lab65.ts';
import type { PaletteColour, PaletteRole } from '../words/palette-colour.ts';
import { weightOf } from './palette-centre.ts';
import type { PaletteCluster } from './palette-clusters.ts';

/** An accent weighs less than this part of the mean of the coloured ones, and is more vivid than their mean. Common practice, no source. */
const ACCENT_UP_TO_MEAN = 0.75;

/** Under this share of the board's cloth a colour is a hint, however many pictures show it: two percent, about a belt in each picture. */
const HINT_UNDER_SHARE = 0.02;

/** A board of fewer pictures cannot ask that two of them agree. Common practice, no source. */
const LEAST_PHOTOS_TO_AGREE = 6;

/** A colour carries a set, as a neutral does, from this share of the cloth on. Common practice, no source. */
const CARRIES_FROM_SHARE = 0.06;

/** CIELAB chroma and hue within which a colour is worn like a neutral: navy and denim; camel, tan, beige, brown. Common practice, no source. */
const WORN_LIKE_NEUTRALS = [
	{ hueFrom: 245, hueTo: 305, lightestL: 62, mostChroma: 32 },
	{ hueFrom: 45, hueTo: 100, lightestL: 100, mostChroma: 30 },
] as const;

/** Whether a coloured cloth is one that people wear as they wear black, grey and white. */
export function isWornLikeNeutral(lab: Lab65): boolean {
	const hue = hueDegrees(lab);
	return WORN_LIKE_NEUTRALS.some(
		({ hueFrom, hueTo, lightestL, mostChroma }) =>
			hue >= hueFrom && hue <= hueTo && lab[0] <= lightestL && chroma(lab) <= mostChroma,
	);
}

/** What a role is judged by: the colour, its share of the board's cloth, 0..1, and the pictures that wear it. */
type Told = Pick<PaletteCluster, 'lab' | 'neutral'> & { readonly share: number; readonly photos: number };

/**
 * Roles of a board's colours. Base: neutrals, and colours worn like neutrals where they carry the set. Of the others the light-weight vivid ones are
 * accents, the rest main; the heaviest is always main. What is under 2 % of the cloth, or in one picture only, is a hint and vouches for nothing.
 */
export function rolesOf(told: readonly Told[], boardPhotos: number): PaletteRole[] {
	const isHint = ({ share, photos }: Told) =>
		share < HINT_UNDER_SHARE || (photos < 2 && boardPhotos >= LEAST_PHOTOS_TO_AGREE);
	const isBase = ({ lab, neutral, share }: Told) => neutral || (isWornLikeNeutral(lab) && share >= CARRIES_FROM_SHARE);
	const coloured = told.filter((one) => !isHint(one) && !isBase(one));
	const count = Math.max(1, coloured.length);
	const meanShare = coloured.reduce((sum, { share }) => sum + share, 0) / count;
	const meanChroma = coloured.reduce((sum, { lab }) => sum + chroma(lab), 0) / count;
	return told.map((one) => {
		if (isHint(one)) return 'hint';
		if (isBase(one)) return 'base';
		return one.share < ACCENT_UP_TO_MEAN * meanShare && chroma(one.lab) > meanChroma ? 'accent' : 'main';
	});
}

const ROLE_ORDER: Readonly<Record<PaletteRole, number>> = { base: 0, main: 1, accent: 2, hint: 3 };

/** The palette's order: base, main, accent, hints; heaviest first within a role; then by id. Weights are scaled to sum to 1. */
export function inPaletteOrder(colours: readonly PaletteColour[]): PaletteColour[] {
	const total = weightOf(colours);
	return colours
		.map((colour) => ({ ...colour, weight: total > 0 ? colour.weight / total : 1 / colours.length }))
		.sort(
			(one, other) =>
				ROLE_ORDER[one.role] - ROLE_ORDER[other.role] ||
				other.weight - one.weight ||
				(one.id < other.id ? -1 : one.id > other.id ? 1 : 0),
		);
}
