import { applyMatrix, bradfordMatrix, WHITE_D65, type Xyz } from '../../colour/adaptation.ts';
import { type Lab65, labFromXyz, type Xyz65, xyzFromLab } from '../../colour/lab65.ts';
import type { LightModel } from '../../wardrobe/words/light.ts';

/** The curve's denominator never falls under this: beyond `full` a pressed curve would run away. */
const LEAST_DENOMINATOR = 0.05;
/** Luminance under which a colour is as good as black, and has no ratio of channels to keep. */
const BLACK = 1e-6;

/** A photo's luminance (`y` = 1 at the curve's full point) as the scene had it: the phone's own curve undone, up to a gain. */
export const unpressed = (y: number, steepness: number, press: number): number =>
	(Math.max(0, y) / Math.max(LEAST_DENOMINATOR, press + 1 - press * y)) ** (1 / steepness);

/** True luminance of something of luminance `Y` in the photo, 0 up; over 1 where it would be lighter than a perfect white. */
export const trueLuminance = ({ full, steepness, press, gain }: LightModel, Y: number): number =>
	gain * unpressed(Y / full, steepness, press);

const scaledLab = (xyz: Xyz, gain: number): Lab65 => labFromXyz(xyz.map((value) => value * gain) as unknown as Xyz65);

/**
 * The function that takes a photo's light out of its colours: Bradford by the neutral's chromaticity, then exposure and tone on luminance
 * with the ratios of the channels kept or by a plain gain, then the saturation that phones add. `null` changes nothing. Lightness is cut at 100.
 */
export function correctedBy(model: LightModel | null): (lab: Lab65) => Lab65 {
	if (!model) return (lab) => lab;
	const toDaylight = bradfordMatrix(model.white, WHITE_D65);
	return (lab) => {
		const adapted = applyMatrix(toDaylight, xyzFromLab(lab) as Xyz);
		const Y = adapted[1];
		if (Y <= BLACK) return [0, 0, 0];
		const moved = scaledLab(adapted, trueLuminance(model, Y) / Y);
		const L = moved[0];
		const [, a, b] = model.tintGain ? scaledLab(adapted, model.tintGain) : moved;
		return [Math.min(100, Math.max(0, L)), a * model.chroma, b * model.chroma];
	};
}

/**
 * What phones do to most photos, for one whose light nothing tells: they press the darks down, lift what is light, and add saturation. White and a middle
 * lightness (L* 55) stay where they are. Lightness alone moves: with the ratios of the channels kept, blacks come out more coloured than they are.
 * Measured: tests/standards/real-charts.test.ts, figures in bench/NOTES.md, Neutrals.
 */
export const UNTOLD_PHONE: LightModel = {
	white: [...WHITE_D65],
	full: 1,
	steepness: 1.4,
	press: 1.04,
	gain: 1,
	chroma: 0.83,
	tintGain: 1,
};
