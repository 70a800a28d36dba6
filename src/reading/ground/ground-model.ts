import { applyMatrix, bradfordMatrix, WHITE_D65, whiteOfSurface, type Xyz } from '../../colour/adaptation.ts';
import { type Lab65, xyzFromLab } from '../../colour/lab65.ts';
import type { CameraKind, LightModel } from '../../wardrobe/words/light.ts';
import { unpressed } from '../light/light-model.ts';
import { curveAround } from '../light/neutral-model.ts';

/** How far a photo's ground is brought to the colour of its set, 0..1: 0 leaves it as the photo has it. */
export type GroundDegrees = { readonly lightness: number; readonly chromaticity: number };

/**
 * The light of a photo whose ground is seen as `seen`, is `own` by the photo's own light, and is `agreed` in truth, or by agreement of the photos that share
 * it. In full the ground comes out as agreed; by degrees its lightness and its chromaticity stay behind, each on its own. The rest of the photo follows the
 * curve of what took it. Null where one of the colours is so dark or so vivid that a cone sees nothing of it.
 */
export function modelFromGround(
	{ seen, own, agreed }: { readonly seen: Lab65; readonly own: Lab65; readonly agreed: Lab65 },
	camera: CameraKind,
	{ lightness, chromaticity }: GroundDegrees,
): LightModel | null {
	const curve = curveAround(agreed[0], camera);
	const [L, a, b] = agreed;
	const wanted = xyzFromLab([L, a / curve.chroma, b / curve.chroma]) as Xyz;
	const from = xyzFromLab(seen) as Xyz;
	const white = whiteOfSurface(from, wanted, WHITE_D65, chromaticity);
	if (!white) return null;
	const Y = applyMatrix(bradfordMatrix(white, WHITE_D65), from)[1];
	const wantedY = xyzFromLab([own[0] + lightness * (L - own[0]), 0, 0])[1];
	const gain = wantedY / unpressed(Y, curve.steepness, curve.press);
	return { ...curve, white, full: 1, gain, tintGain: wantedY / Y };
}
