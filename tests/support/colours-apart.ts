import { differenceCiede2000 } from 'culori';
import type { Lab65 } from '../../src/colour/lab65.ts';

const ciede2000 = differenceCiede2000();
const told = ([l, a, b]: Lab65) => ({ mode: 'lab65' as const, l, a, b });

/** CIEDE2000 by a second opinion (npm `culori`). */
export const apart = (one: Lab65, other: Lab65): number => ciede2000(told(one), told(other));

/** The colour so far from another (CIEDE2000), by its lightness alone: darker where it is light, lighter where it is dark. */
export function apartBy(lab: Lab65, away: number): Lab65 {
	const step = lab[0] > 50 ? -0.01 : 0.01;
	let lightness = lab[0];
	while (apart(lab, [lightness, lab[1], lab[2]]) < away) lightness += step;
	return [lightness, lab[1], lab[2]];
}
