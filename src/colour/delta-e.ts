import { differenceCiede2000 } from 'culori/fn';
import type { Lab65 } from './lab65.ts';

const difference = differenceCiede2000(1, 1, 1);

/**
 * CIEDE2000 colour difference with kL = kC = kH = 1: 0 for equal colours, about 1 just noticeable, over 100 black to white.
 * Sharma, Wu, Dalal (2005), Color Res. Appl. 30(1), 21-30. For many pairs use `deltaE2000Matrix`, which equals it within 1e-9.
 */
export const deltaE2000 = (one: Lab65, other: Lab65): number =>
	difference(
		{ mode: 'lab65', l: one[0], a: one[1], b: one[2] },
		{ mode: 'lab65', l: other[0], a: other[1], b: other[2] },
	);

/**
 * CIEDE2000 with the parametric factors kL, kC and kH of the formula: a factor of 2 makes a difference of that sort count half. 1 each is
 * {@link deltaE2000}.
 */
export function deltaE2000Weighted(kL: number, kC: number, kH: number): (one: Lab65, other: Lab65) => number {
	const weighted = differenceCiede2000(kL, kC, kH);
	return (one, other) =>
		weighted(
			{ mode: 'lab65', l: one[0], a: one[1], b: one[2] },
			{ mode: 'lab65', l: other[0], a: other[1], b: other[2] },
		);
}
