import type { Verdict } from '../../../../src/wardrobe/fit/fit-result.ts';
import type { GarmentReport } from '../../../../src/wardrobe/season/garment-report.ts';
import type { Garment, Place } from '../../../../src/wardrobe/words/garment.ts';
import { isFoundBy, searchWordsOf } from '../../../../src/wardrobe/words/garment-search.ts';
import { slotOfKind } from '../../../../src/wardrobe/words/kind.ts';
import type { Slot } from '../../../../src/wardrobe/words/slot.ts';

/** What the list of garments is narrowed to; 'any' leaves a thing open. */
export type GarmentFilter = {
	readonly text: string;
	readonly slot: Slot | 'any';
	/** `here` = everything but gone. */
	readonly place: Place | 'here';
	readonly verdict: Verdict | 'any';
	/** `kind` = nobody has confirmed the kind, `loner`, `twin`, `basic`. */
	readonly flag: 'any' | 'kind' | 'loner' | 'twin' | 'basic';
	readonly order: 'fit' | 'name' | 'added' | 'partners';
};

/** Newest first: what was just photographed stands on top, and nothing moves when the season's judgement arrives. */
export const NO_FILTER: GarmentFilter = {
	text: '',
	slot: 'any',
	place: 'here',
	verdict: 'any',
	flag: 'any',
	order: 'added',
};

/** A garment with what the season says of it; null while the report does not know it yet. */
export type GarmentRow = { readonly garment: Garment; readonly said: GarmentReport | null };

/** The user's own names of the palette colours that a garment's good part lies with. */
const paletteNamesOf = ({ said }: GarmentRow, labels: ReadonlyMap<string, string>): string[] =>
	(said?.fit.swatches ?? [])
		.filter(({ score, swatch }) => score > 0.5 && swatch.share >= 0.1)
		.flatMap(({ paletteColourId }) => labels.get(paletteColourId ?? '') ?? []);

const hasFlag = ({ garment, said }: GarmentRow, flag: GarmentFilter['flag']): boolean => {
	if (flag === 'kind') return garment.kindFrom !== 'user';
	if (flag === 'basic') return garment.basic;
	if (flag === 'loner') return said?.loner?.flagged ?? false;
	if (flag === 'twin') return (said?.twins.length ?? 0) > 0;
	return true;
};

const compare: Readonly<Record<GarmentFilter['order'], (a: GarmentRow, b: GarmentRow) => number>> = {
	fit: (a, b) => (b.said?.fit.percent ?? -1) - (a.said?.fit.percent ?? -1),
	partners: (a, b) => (b.said?.partnerCount ?? -1) - (a.said?.partnerCount ?? -1),
	name: (a, b) => a.garment.name.localeCompare(b.garment.name),
	added: (a, b) => (a.garment.addedAt < b.garment.addedAt ? 1 : a.garment.addedAt > b.garment.addedAt ? -1 : 0),
};

/** The rows that pass, in the order asked for; equal ones by id, so that the list never jumps. Every word typed must be found; `paletteLabels`: the user's own
 * names of palette colours by id. */
export function filteredGarments(
	rows: readonly GarmentRow[],
	filter: GarmentFilter,
	paletteLabels: ReadonlyMap<string, string> = new Map(),
): GarmentRow[] {
	return rows
		.filter((row) => {
			const { garment, said } = row;
			if (filter.place === 'here' ? garment.place === 'gone' : garment.place !== filter.place) return false;
			if (filter.slot !== 'any' && slotOfKind(garment.kind) !== filter.slot) return false;
			if (filter.verdict !== 'any' && said?.fit.verdict !== filter.verdict) return false;
			if (!hasFlag(row, filter.flag)) return false;
			if (filter.text.trim() === '') return true;
			return isFoundBy(filter.text, searchWordsOf(garment, paletteNamesOf(row, paletteLabels)));
		})
		.sort((a, b) => compare[filter.order](a, b) || (a.garment.id < b.garment.id ? -1 : 1));
}
