import { adaptXyz, WHITE_D65, type Xyz } from '../colour/adaptation.ts';
import { type Lab65, labFromXyz, type Xyz65, xyzFromLab } from '../colour/lab65.ts';
import type { Correction, Light } from '../wardrobe/reading.ts';
import { patchColour } from './eyedropper.ts';
import type { Pixels } from './pixels.ts';

/** The light of a photo and the function that takes it out of a colour. */
export type LightCorrection = { readonly light: Light; readonly correct: (lab: Lab65) => Lab65 };

const luminanceOfLightness = (lightness: number): number => xyzFromLab([lightness, 0, 0])[1];

/** A white that reflects everything, as it looks in the photo: from a neutral surface of known lightness. */
function whiteFromNeutral(seen: Lab65, lightness: number): Lab65 {
	const factor = 1 / luminanceOfLightness(lightness);
	const [X, Y, Z] = xyzFromLab(seen);
	return labFromXyz([X * factor, Y * factor, Z * factor] as Xyz65);
}

/** Takes `white` (a perfect white as it looks in the photo) to D65 white: Bradford in linear light, and the exposure with it. */
export function correctionToWhite(white: Lab65, strength: number): (lab: Lab65) => Lab65 {
	const [X, Y, Z] = xyzFromLab(white);
	if (Y <= 0) return (lab) => lab;
	const source: Xyz = [X / Y, 1, Z / Y];
	const gain = Y ** -strength;
	return (lab) => {
		const [x, y, z] = adaptXyz(xyzFromLab(lab) as Xyz, source, WHITE_D65, strength);
		const [L, a, b] = labFromXyz([x * gain, y * gain, z * gain] as Xyz65);
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

const UNCORRECTED: LightCorrection = {
	light: {
		source: 'none',
		cast: null,
		strength: 0,
		reason: 'Nothing in the picture tells its lamp, so its colours are taken as they are.',
	},
	correct: (lab) => lab,
};

/** Darker or lighter neutrals than this cannot tell the lamp: noise, or clipped to white. */
const DARKEST_NEUTRAL = 15;

function measuredLight(pixels: Pixels, correction: Correction, groupCast: Lab65 | null): LightCorrection {
	if (correction.neutral) {
		const { x, y, lightness } = correction.neutral;
		const seen = patchColour(pixels, x, y);
		if (seen[0] >= DARKEST_NEUTRAL) {
			const cast = whiteFromNeutral(seen, lightness);
			const reason = 'Corrected by the neutral you pointed at.';
			return { light: { source: 'neutral-pointed', cast, strength: 1, reason }, correct: correctionToWhite(cast, 1) };
		}
	}
	if (groupCast) {
		const reason = 'Corrected by a neutral in another picture taken in the same light.';
		return {
			light: { source: 'group', cast: groupCast, strength: 1, reason },
			correct: correctionToWhite(groupCast, 1),
		};
	}
	return UNCORRECTED;
}

/**
 * The light of the photo: what the user pointed at goes before what its same-light group knows. Steps by hand come on top of either.
 * `correction.neutral` is in pixels of the analysed picture.
 */
export function lightOf(pixels: Pixels, correction: Correction, groupCast: Lab65 | null): LightCorrection {
	const measured = measuredLight(pixels, correction, groupCast);
	if (!correction.byHand) return measured;
	const shift = byHand(correction.byHand);
	const { light } = measured;
	return {
		light: {
			...light,
			source: 'by-hand',
			reason: `Set by hand. ${light.source === 'none' ? '' : light.reason}`.trim(),
		},
		correct: (lab) => shift(measured.correct(lab)),
	};
}
