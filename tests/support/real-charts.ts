import type { Lab65 } from '../../src/colour/lab65.ts';
import { labFromLinear } from '../../src/colour/lab65.ts';
import type { CameraKind, SeenNeutral } from '../../src/wardrobe/words/light.ts';
import { numbersOf, referenceRows } from './reference.ts';

/** Patches of one real photo of the 24-patch chart, measured; fixtures/reference/real-charts.csv. */
export type RealChart = {
	readonly id: string;
	readonly camera: CameraKind;
	readonly seen: readonly Lab65[];
	readonly truth: readonly Lab65[];
	/** Luminance that a quarter of what lies around the chart stays below. */
	readonly surround: number;
};

/** The patches that are white and grey, with the lightness each has in truth: 19, 21 and 22 of the chart. */
export const WHITE_PATCH = 18;
export const LIGHT_GREY_PATCH = 20;
export const MIDDLE_GREY_PATCH = 21;

export function realCharts(): RealChart[] {
	const references = referenceRows('colorchecker24-derived.csv');
	const byId = new Map<string, Record<string, string>[]>();
	for (const row of referenceRows('real-charts.csv')) byId.set(row.id!, [...(byId.get(row.id!) ?? []), row]);
	return [...byId].map(([id, rows]) => ({
		id,
		camera: rows[0]!.group === 'phone' ? 'phone' : 'camera',
		seen: rows.map((row) => labFromLinear(numbersOf(row, 'R', 'G', 'B') as [number, number, number])),
		truth: references.map(
			(row) => ['L', 'a', 'b'].map((axis) => Number(row[`${axis}65_${rows[0]!.edition}`])) as unknown as Lab65,
		),
		surround: Number(rows[0]!.bgY25),
	}));
}

/** A patch as the neutral it is. */
export const neutralOf = ({ seen, truth }: RealChart, patch: number): SeenNeutral => ({
	kind: patch === WHITE_PATCH ? 'white' : 'grey',
	seen: seen[patch]!,
	lightness: truth[patch]![0],
});
