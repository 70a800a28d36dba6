import { say } from '../../language/speak.ts';
import { nearestColour } from '../fit/fit.ts';
import type { Garment } from '../words/garment.ts';
import { type GarmentWear, garmentWears, wearsTell } from '../words/garment-wears.ts';
import { slotOfKind } from '../words/kind.ts';
import { type Palette, vouchingColours } from '../words/palette-colour.ts';
import { SLOTS, type Slot } from '../words/slot.ts';
import { slotSize } from '../words/slot-size.ts';
import type { Wear } from '../words/wear.ts';

/** Owned against worn, each as a share of the whole, 0..1. */
type ShareCompared = { readonly owned: number; readonly worn: number };

export type LookBack = {
	readonly garments: readonly GarmentWear[];
	/** By palette colour: area of cloth owned and worn; `null` = near none of them. */
	readonly byColour: readonly (ShareCompared & { readonly paletteColourId: string | null })[];
	/** By slot: pieces owned and wears. */
	readonly bySlot: readonly (ShareCompared & { readonly slot: Slot })[];
	readonly neverWorn: readonly string[];
	/** Wears in the twelve months up to today. */
	readonly wearsThisYear: number;
	readonly sentence: string;
};

function colourShares(
	garments: readonly Garment[],
	wearsOf: (id: string) => number,
	palette: Palette,
): LookBack['byColour'] {
	const owned = new Map<string | null, number>();
	const worn = new Map<string | null, number>();
	for (const garment of garments) {
		for (const { lab, share } of garment.swatches) {
			const nearest = nearestColour(lab, palette, garment.trust);
			const id = nearest?.within ? nearest.colour.id : null;
			const area = share * slotSize(slotOfKind(garment.kind));
			owned.set(id, (owned.get(id) ?? 0) + area);
			worn.set(id, (worn.get(id) ?? 0) + area * wearsOf(garment.id));
		}
	}
	const total = (sums: Map<string | null, number>) => [...sums.values()].reduce((sum, one) => sum + one, 0) || 1;
	return [...vouchingColours(palette).map(({ id }) => id), null]
		.filter((id) => owned.has(id))
		.map((id) => ({ paletteColourId: id, owned: owned.get(id)! / total(owned), worn: worn.get(id)! / total(worn) }));
}

function slotShares(garments: readonly Garment[], wearsOf: (id: string) => number): LookBack['bySlot'] {
	const allWears = garments.reduce((sum, { id }) => sum + wearsOf(id), 0) || 1;
	return SLOTS.map((slot) => ({ slot, own: garments.filter(({ kind }) => slotOfKind(kind) === slot) }))
		.filter(({ own }) => own.length > 0)
		.map(({ slot, own }) => ({
			slot,
			owned: own.length / garments.length,
			worn: own.reduce((sum, { id }) => sum + wearsOf(id), 0) / allWears,
		}));
}

/** The review of what was worn, over garments that are still here, by id; wears on days after `today` are left out. */
export function lookBack(
	garments: readonly Garment[],
	wears: readonly Wear[],
	palette: Palette,
	today: string,
): LookBack {
	const here = garments.filter(({ place }) => place !== 'gone').sort((a, b) => (a.id < b.id ? -1 : 1));
	const told = garmentWears(here, wears, today);
	const thisYear = new Map(told.map(({ garmentId, wearsThisYear }) => [garmentId, wearsThisYear]));
	const wearsOf = (id: string) => thisYear.get(id) ?? 0;
	const wearsThisYear = told.reduce((sum, one) => sum + one.wearsThisYear, 0);
	const tells = wearsTell(here, wears);
	const neverWorn = here.filter((garment) => tells(garment) && wearsOf(garment.id) === 0).map(({ id }) => id);
	const numbers = {
		wears: say('counts.wears', { count: wearsThisYear }),
		garments: say('counts.garments', { count: here.filter(tells).length }),
	};
	const sentence =
		wearsThisYear === 0
			? say('lookBack.none')
			: neverWorn.length === 0
				? say('lookBack.all', numbers)
				: say('lookBack.some', { ...numbers, count: neverWorn.length });
	return {
		garments: told,
		byColour: colourShares(here, wearsOf, palette),
		bySlot: slotShares(here, wearsOf),
		neverWorn,
		wearsThisYear,
		sentence,
	};
}
