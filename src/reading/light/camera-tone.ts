import { type Lab65, labFromSrgb, srgbFromLab } from '../../colour/lab65.ts';

/**
 * How much contrast phones add (share of a smoothstep mixed into each encoded channel), and by how much they enlarge chroma. Cautious on purpose:
 * a photo that nothing was added to gets worse by about 0.5 (mean CIEDE2000 of the 24 patches, synthesised charts), the rest gain.
 */
const CONTRAST = 0.1;
const CHROMA_GAIN = 1 / 0.97;
/** The curve's own precision is far below a visible step after so many halvings. */
const HALVINGS = 24;

const withContrast = (value: number): number => value + CONTRAST * (value * value * (3 - 2 * value) - value);

/** The value 0..1 that `withContrast` makes into `wanted`; the curve rises throughout, so halving finds it. Outside 0..1 nothing changes. */
function withoutContrast(wanted: number): number {
	if (wanted <= 0 || wanted >= 1) return wanted;
	let [low, high] = [0, 1];
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (low + high) / 2;
		if (withContrast(middle) < wanted) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/** A colour as the photo would hold it without the contrast that phones add: to be taken out before the light is, since it was put in after. */
export function withoutCameraContrast(lab: Lab65): Lab65 {
	const [r, g, b] = srgbFromLab(lab);
	return labFromSrgb([withoutContrast(r), withoutContrast(g), withoutContrast(b)]);
}

/** A colour without the saturation that phones add; `lab` has had its light taken out. */
export const withoutCameraSaturation = ([L, a, b]: Lab65): Lab65 => [L, a / CHROMA_GAIN, b / CHROMA_GAIN];
