import type { Lab65 } from '../colour/lab65.ts';

/** How much contrast phones add (share of a smoothstep mixed into L*), and by how much they enlarge chroma. */
const CONTRAST = 0.1;
const CHROMA_GAIN = 1 / 0.94;
/** The curve's own precision is far below a visible step after so many halvings. */
const HALVINGS = 24;

const withContrast = (value: number): number => value + CONTRAST * (value * value * (3 - 2 * value) - value);

/** The value 0..1 that `withContrast` makes into `wanted`; the curve rises throughout, so halving finds it. */
function withoutContrast(wanted: number): number {
	let [low, high] = [0, 1];
	for (let i = 0; i < HALVINGS; i++) {
		const middle = (low + high) / 2;
		if (withContrast(middle) < wanted) low = middle;
		else high = middle;
	}
	return (low + high) / 2;
}

/**
 * Takes a little of the contrast and saturation out that phones put in. `lab` is a colour whose white has been put right already: the curve
 * hangs on white and black. Cautious on purpose: a photo that nothing was added to gets worse by less than 0.5 (mean CIEDE2000 of the 24
 * patches of the synthesised charts; the rest gain, see the chart tests).
 */
export function withoutCameraTone([L, a, b]: Lab65): Lab65 {
	const lightness = L <= 0 || L >= 100 ? L : 100 * withoutContrast(L / 100);
	return [lightness, a / CHROMA_GAIN, b / CHROMA_GAIN];
}
