import { liesWithin } from '../../colour/delta-e-many.ts';
import type { Lab65 } from '../../colour/lab65.ts';
import { isNeutral } from '../../colour/neutrality.ts';
import { reachOf } from '../palette/palette-reach.ts';
import type { Palette } from '../words/palette-colour.ts';
import type { Appearance } from '../words/reading.ts';

/** A piece is a base neutral when this share of it lies near the palette's base colours. Common practice, no source. */
const BASE_SHARE = 0.7;

/** Whether a piece carries the set: most of it within reach of the palette's base colours, or neutral where the palette has none. */
export function isBaseNeutral({ swatches }: Pick<Appearance, 'swatches'>, palette: Palette): boolean {
	const base = palette.colours.filter(({ role }) => role === 'base');
	const nearBase = (lab: Lab65) =>
		base.length === 0 ? isNeutral(lab) : base.some((colour) => liesWithin(colour.lab, lab, reachOf(colour)));
	const area = swatches.reduce((sum, { share }) => sum + share, 0);
	const near = swatches.reduce((sum, { lab, share }) => sum + (nearBase(lab) ? share : 0), 0);
	return area > 0 && near >= BASE_SHARE * area;
}
