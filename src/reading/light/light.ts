import { adaptXyz, WHITE_D65, type Xyz } from '../../colour/adaptation.ts';
import { type Lab65, labFromLinear, labFromXyz, linearFromLab, type Xyz65, xyzFromLab } from '../../colour/lab65.ts';
import type { Correction, Light } from '../../wardrobe/words/reading.ts';
import type { LabelMap, Pixels } from '../pixels.ts';
import { withoutCameraContrast, withoutCameraSaturation } from './camera-tone.ts';
import { patchColour } from './eyedropper.ts';
import { alongOf, type CastStops, stopsOf } from './lamp-casts.ts';
import { type LampEstimate, lampEstimate } from './lamp-estimate.ts';
import { lightFallStops } from './light-fall.ts';
import { foundNeutral } from './neutral.ts';

/** The light of a photo and the function that takes it out of a colour. */
export type LightCorrection = { readonly light: Light; readonly correct: (lab: Lab65) => Lab65 };

/** CIELAB lightness of white office paper, as assumed of a sheet that was found (common practice, no source). */
export const PAPER_LIGHTNESS = 95;

/** A white that reflects everything, without the camera's contrast, lying where the clothes lie: from a neutral of known lightness that gets `fallStops` less light than they. */
function whiteFromNeutral(seen: Lab65, lightness: number, fallStops: number): Lab65 {
	const factor = 2 ** fallStops / xyzFromLab([lightness, 0, 0])[1];
	const [X, Y, Z] = xyzFromLab(withoutCameraContrast(seen));
	return labFromXyz([X * factor, Y * factor, Z * factor] as Xyz65);
}

/** A white of the given cast and luminance (0..1), as it looks in the photo. */
function whiteOfCast({ red, blue }: CastStops, luminance: number): Lab65 {
	const [r, g, b] = [2 ** red, 1, 2 ** blue];
	const factor = luminance / (0.2126 * r + 0.7152 * g + 0.0722 * b);
	return labFromLinear([r * factor, g * factor, b * factor]);
}

/** Takes `white` (a perfect white as it looks in the photo) to D65 white: Bradford in linear light, and the exposure with it. */
export function correctionToWhite(white: Lab65): (lab: Lab65) => Lab65 {
	const [X, Y, Z] = xyzFromLab(white);
	if (Y <= 0) return (lab) => lab;
	const source: Xyz = [X / Y, 1, Z / Y];
	return (lab) => {
		const [x, y, z] = adaptXyz(xyzFromLab(lab) as Xyz, source, WHITE_D65);
		const [L, a, b] = labFromXyz([x / Y, y / Y, z / Y] as Xyz65);
		return [Math.min(100, L), a, b];
	};
}

/** One step by hand: two units of b* (with the a* that lamps bring along) or of L*. */
const WARMER_STEP: readonly [number, number] = [0.6, 2];
const LIGHTER_STEP = 2;

const byHand =
	({ warmer, lighter }: NonNullable<Correction['byHand']>) =>
	(lab: Lab65): Lab65 => [
		Math.min(100, Math.max(0, lab[0] + lighter * LIGHTER_STEP)),
		lab[1] + warmer * WARMER_STEP[0],
		lab[2] + warmer * WARMER_STEP[1],
	];

/** Darker neutrals than this drown in noise and cannot tell the lamp. */
const DARKEST_NEUTRAL = 15;

/** A correction by a neutral that was seen. `cast` is the white it stands for, without the camera's contrast. */
function measured(source: Light['source'], cast: Lab65, reason: string): LightCorrection {
	const toWhite = correctionToWhite(cast);
	return {
		light: { source, cast, strength: 1, reason },
		correct: (lab) => withoutCameraSaturation(toWhite(withoutCameraContrast(lab))),
	};
}

/** Stops of warmth from which a lamp is called by name. */
const NOTABLE_WARMTH = 0.3;
const lampWords = (cast: CastStops): string =>
	alongOf(cast) > NOTABLE_WARMTH ? 'warm' : alongOf(cast) < -NOTABLE_WARMTH ? 'cold' : 'near daylight';

function estimated({ seen, likely, strength, white }: LampEstimate): LightCorrection {
	const taken = `${Math.round(strength * 100)} % of the tint seen there was taken out, since a coloured floor would look the same`;
	const reason =
		strength === 0
			? 'Clothes fill the picture, so nothing tells its lamp; only its exposure was estimated.'
			: `Lamp estimated from what lies around the clothes (${lampWords(likely)}); ${taken}.`;
	const light = { source: 'estimate', cast: whiteOfCast(seen, white), strength, reason } as const;
	return { light, correct: correctionToWhite(whiteOfCast(likely, white)) };
}

const UNCORRECTED: LightCorrection = {
	light: {
		source: 'none',
		cast: null,
		strength: 0,
		reason: 'Nothing in the picture tells its lamp, so its colours are taken as they are.',
	},
	correct: (lab) => lab,
};

function fromBackground(pixels: Pixels, labels: LabelMap, groupCast: Lab65 | null): LightCorrection {
	const estimate = lampEstimate(pixels, labels);
	const found = foundNeutral(pixels, labels, estimate);
	if (found?.kind === 'white-sheet') {
		const cast = whiteFromNeutral(found.seen, PAPER_LIGHTNESS, lightFallStops(pixels, labels, found.x, found.y));
		return measured('neutral-found', cast, 'Corrected by a white sheet found in the picture.');
	}
	if (groupCast) {
		return measured('group', groupCast, 'Corrected by a neutral in another picture taken in the same light.');
	}
	if (found && estimate) {
		// Cards come in several greys: it tells the lamp for certain, but not how bright it was.
		const [r, g, b] = linearFromLab(withoutCameraContrast(found.seen));
		const cast = whiteOfCast(stopsOf(r, g, b), estimate.white);
		return measured('neutral-found', cast, 'Corrected by a grey card found in the picture; its exposure is estimated.');
	}
	return estimate ? estimated(estimate) : UNCORRECTED;
}

function lightWithoutHand(
	pixels: Pixels,
	labels: LabelMap | null,
	{ neutral }: Correction,
	groupCast: Lab65 | null,
): LightCorrection {
	if (neutral) {
		const seen = patchColour(pixels, neutral.x, neutral.y);
		if (seen[0] >= DARKEST_NEUTRAL) {
			const cast = whiteFromNeutral(
				seen,
				neutral.lightness,
				labels ? lightFallStops(pixels, labels, neutral.x, neutral.y) : 0,
			);
			return measured('neutral-pointed', cast, 'Corrected by the neutral you pointed at.');
		}
	}
	if (labels) return fromBackground(pixels, labels, groupCast);
	if (!groupCast) return UNCORRECTED;
	return measured('group', groupCast, 'Corrected by a neutral in another picture taken in the same light.');
}

/**
 * The light of the photo, by the surest that there is: a neutral the user pointed at; a white sheet found in the background; what its
 * same-light group knows; a grey card found; an estimate from the background. Steps by hand come on top of any. `correction.neutral` is in
 * pixels of the analysed picture. `labels` is null for a scene: there nothing is background, and a sunset is meant to be red.
 */
export function lightOf(
	pixels: Pixels,
	labels: LabelMap | null,
	correction: Correction,
	groupCast: Lab65 | null,
): LightCorrection {
	const before = lightWithoutHand(pixels, labels, correction, groupCast);
	if (!correction.byHand) return before;
	const shift = byHand(correction.byHand);
	const reason = before.light.source === 'none' ? 'Set by hand.' : `Set by hand. ${before.light.reason}`;
	return { light: { ...before.light, source: 'by-hand', reason }, correct: (lab) => shift(before.correct(lab)) };
}
