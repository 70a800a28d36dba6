import { xyzFromLab } from '../../colour/lab65.ts';
import type { CameraKind, LightModel, SeenNeutral } from '../../wardrobe/words/light.ts';
import { unpressed } from './light-model.ts';

/**
 * What phones do to a photo, told from a neutral in it: steepness and press of the curve, and the chroma that is right. Fitted on the 8 phone
 * photos of fixtures/reference/real-charts.csv, judged on 9 phone photos of other scenes that were kept apart (tests/standards/real-charts.test.ts).
 * A grey card's figures lie on a line between its two measured lightnesses, and stay at the ends beyond them.
 */
const WHITE_ALONE = { steepness: 1.64, press: 2.97, chroma: 0.815 };
/** The same where the surround is known: phones lift the shadows more where the white stands out more from what lies around. */
const WHITE_SEEN_AROUND = { steepness: 1.6, press: 2.5, chroma: 0.818, pressPerStop: 0.345, usualStops: 2.7, range: 2 };
const GREY = {
	lightness: [51, 67],
	steepness: [1.5, 1.42],
	press: [2.44, 2.85],
	chroma: [0.812, 0.827],
	bothSteepness: [1.57, 1.46],
} as const;
/** A camera's curve is nearly that of the standard; with two neutrals a little is left to undo (three cameras and an embedded one, same photos). */
const CAMERA = { chroma: 0.95, bothSteepness: 1.15 };
/** Where two neutrals tell the press: what a phone can have done, and what is noise. */
const PRESS_RANGE = [-0.8, 12] as const;
/** A grey this near the white in luminance tells no curve. */
const NEAREST_TO_WHITE = 0.98;
/** Keeps the contrast finite where all around is black. */
const LEAST_SURROUND = 0.01;
const LEAST_LUMINANCE = 1e-4;

const clamp = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));

/** The figure for a grey of this lightness. */
function between(lightness: number, [dark, light]: readonly [number, number]): number {
	const [from, to] = GREY.lightness;
	return dark + clamp((lightness - from) / (to - from), 0, 1) * (light - dark);
}

const luminanceOf = (lightness: number): number => xyzFromLab([lightness, 0, 0])[1];
const seenLuminance = ({ seen }: SeenNeutral): number => Math.max(LEAST_LUMINANCE, xyzFromLab(seen)[1]);

/** Chromaticity of a neutral; what is black has none, and counts as grey. */
function whiteOf({ seen }: SeenNeutral): LightModel['white'] {
	const [X, Y, Z] = xyzFromLab(seen[0] > 1 ? seen : [100, 0, 0]);
	return [X / Y, 1, Z / Y];
}

/** Stops by which the white stands out from what lies around. */
export const contrastStops = (white: SeenNeutral, surround: number): number =>
	Math.log2(seenLuminance(white) / (surround + LEAST_SURROUND));

function fromWhite(white: SeenNeutral, camera: CameraKind, surround: number | null): LightModel {
	const ends = { white: whiteOf(white), full: seenLuminance(white), gain: luminanceOf(white.lightness) };
	if (camera === 'camera') return { ...ends, steepness: 1, press: 0, chroma: CAMERA.chroma };
	if (surround === null) return { ...ends, ...WHITE_ALONE };
	const { steepness, press, chroma, pressPerStop, usualStops, range } = WHITE_SEEN_AROUND;
	const beyond = clamp(contrastStops(white, surround) - usualStops, -range, range);
	return { ...ends, steepness, press: press * Math.exp(pressPerStop * beyond), chroma };
}

/** What is undone in a photo that a surface of this lightness, neither white nor black, tells. */
export const curveAround = (
	lightness: number,
	camera: CameraKind,
): Pick<LightModel, 'steepness' | 'press' | 'chroma'> =>
	camera === 'camera'
		? { steepness: 1, press: 0, chroma: CAMERA.chroma }
		: {
				steepness: between(lightness, GREY.steepness),
				press: between(lightness, GREY.press),
				chroma: between(lightness, GREY.chroma),
			};

function fromGrey(grey: SeenNeutral, camera: CameraKind): LightModel {
	const curve = curveAround(grey.lightness, camera);
	const gain = luminanceOf(grey.lightness) / unpressed(seenLuminance(grey), curve.steepness, curve.press);
	return { ...curve, white: whiteOf(grey), full: 1, gain };
}

const bothSteepness = (grey: SeenNeutral, camera: CameraKind): number =>
	camera === 'camera' ? CAMERA.bothSteepness : between(grey.lightness, GREY.bothSteepness);

/** The press of the curve that brings the grey to its place below the white, whatever it comes to. */
function pressOf(white: SeenNeutral, grey: SeenNeutral, camera: CameraKind): number {
	const y = Math.min(NEAREST_TO_WHITE, seenLuminance(grey) / seenLuminance(white));
	const target = (luminanceOf(grey.lightness) / luminanceOf(white.lightness)) ** bothSteepness(grey, camera);
	return (y - target) / (target * (1 - y));
}

/** Whether a white and a grey stand to each other as a phone or camera can show them in one light. */
export function standTogether(white: SeenNeutral, grey: SeenNeutral, camera: CameraKind): boolean {
	const press = pressOf(white, grey, camera);
	return press >= PRESS_RANGE[0] && press <= PRESS_RANGE[1];
}

/** Two neutrals of known lightness tell this photo's own curve. */
function fromBoth(white: SeenNeutral, grey: SeenNeutral, camera: CameraKind): LightModel {
	const chroma = camera === 'camera' ? CAMERA.chroma : between(grey.lightness, GREY.chroma);
	return {
		// The grey's chromaticity is surer: a white may be clipped in one channel.
		white: whiteOf(grey),
		full: seenLuminance(white),
		steepness: bothSteepness(grey, camera),
		press: clamp(pressOf(white, grey, camera), ...PRESS_RANGE),
		gain: luminanceOf(white.lightness),
		chroma,
	};
}

/**
 * The light of a photo in which a white, a grey, or one of each was seen; at least one is given. `surround` is the luminance 0..1 that a quarter
 * of what lies around stays below, null where unknown.
 */
export function modelFromNeutrals(
	{ white, grey }: { readonly white: SeenNeutral | null; readonly grey: SeenNeutral | null },
	camera: CameraKind,
	surround: number | null,
): LightModel {
	if (white && grey) return fromBoth(white, grey, camera);
	if (white) return fromWhite(white, camera, surround);
	if (grey) return fromGrey(grey, camera);
	throw new TypeError('Expected a white or a grey to tell the light from; received neither.');
}
