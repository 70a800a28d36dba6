import { applyMatrix, bradfordMatrix, WHITE_D65, whiteOfSurface, type Xyz } from '../../colour/adaptation.ts';
import { type Lab65, xyzFromLab } from '../../colour/lab65.ts';
import type { CameraKind, LightModel } from '../../wardrobe/words/light.ts';
import { unpressed } from '../light/light-model.ts';
import { curveAround } from '../light/neutral-model.ts';

/**
 * The light of a photo whose ground is seen as `seen` and is `agreed` in truth, or by agreement of the photos that share it: the ground itself comes
 * out as agreed, the rest by the curve of what took the picture. Null where one of the two is so dark or so vivid that a cone sees nothing of it. Null where one of the two is so dark or so vivid that a cone sees nothing of it.
 */
export function modelFromGround(seen: Lab65, agreed: Lab65, camera: CameraKind): LightModel | null {
	const curve = curveAround(agreed[0], camera);
	const [L, a, b] = agreed;
	const wanted = xyzFromLab([L, a / curve.chroma, b / curve.chroma]) as Xyz;
	const from = xyzFromLab(seen) as Xyz;
	const white = whiteOfSurface(from, wanted, WHITE_D65);
	if (!white) return null;
	const Y = applyMatrix(bradfordMatrix(white, WHITE_D65), from)[1];
	return { ...curve, white, full: 1, gain: wanted[1] / unpressed(Y, curve.steepness, curve.press) };
}
