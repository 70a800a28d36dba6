import { counted } from './counted.ts';
import { nearestColour } from './fit.ts';
import type { Garment } from './garment.ts';
import { slotOfKind } from './kind.ts';
import type { Palette } from './palette-colour.ts';
import { reachOf } from './palette-reach.ts';
import { SLOTS, type Slot } from './slot.ts';
import { slotSize } from './slot-size.ts';
import type { Wear } from './wear.ts';

/** What the wears say of one garment, over the whole time noted. */
export type GarmentWear = {
	readonly garmentId: string;
	readonly wears: number;
	/** Wears in the twelve months up to today. */
	readonly wearsThisYear: number;
	/** ISO date; null = never noted. */
	readonly lastWorn: string | null;
	/** Days since; null = never noted. */
	readonly unwornDays: number | null;
	/** Price by wears; null where either is not known. */
	readonly costPerWear: number | null;
	readonly sentence: string;
};

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

const DAY_MS = 24 * 3600 * 1000;
const YEAR_DAYS = 365;

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number =>
	Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);

function wearSentence(
	{ name, price }: Garment,
	wears: number,
	unwornDays: number | null,
	costPerWear: number | null,
): string {
	if (wears === 0) return `No wear of ${name} is noted.`;
	const last = unwornDays === 0 ? 'last today' : `last ${counted(unwornDays ?? 0, 'day')} ago`;
	const cost =
		price === 0
			? 'it cost nothing'
			: costPerWear === null
				? 'its price is not told'
				: `${costPerWear.toFixed(2)} a wear`;
	return `Worn ${wears === 1 ? 'once' : `${wears} times`}, ${last}; ${cost}.`;
}

function garmentWear(garment: Garment, dates: readonly string[], today: string): GarmentWear {
	const lastWorn = [...dates].sort().at(-1) ?? null;
	const unwornDays = lastWorn === null ? null : Math.max(0, daysBetween(lastWorn, today));
	const costPerWear = garment.price !== null && dates.length > 0 ? garment.price / dates.length : null;
	return {
		garmentId: garment.id,
		wears: dates.length,
		wearsThisYear: dates.filter((on) => daysBetween(on, today) < YEAR_DAYS).length,
		lastWorn,
		unwornDays,
		costPerWear,
		sentence: wearSentence(garment, dates.length, unwornDays, costPerWear),
	};
}

function colourShares(
	garments: readonly Garment[],
	wearsOf: (id: string) => number,
	palette: Palette,
): LookBack['byColour'] {
	const owned = new Map<string | null, number>();
	const worn = new Map<string | null, number>();
	for (const garment of garments) {
		for (const { lab, share } of garment.swatches) {
			const nearest = nearestColour(lab, palette);
			const id = nearest && nearest.distance <= reachOf(nearest.colour) ? nearest.colour.id : null;
			const area = share * slotSize(slotOfKind(garment.kind));
			owned.set(id, (owned.get(id) ?? 0) + area);
			worn.set(id, (worn.get(id) ?? 0) + area * wearsOf(garment.id));
		}
	}
	const total = (sums: Map<string | null, number>) => [...sums.values()].reduce((sum, one) => sum + one, 0) || 1;
	return [...palette.colours.map(({ id }) => id), null]
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

/** What the wears say of each garment, in their order; wears on days after `today` are left out. */
export function garmentWears(garments: readonly Garment[], wears: readonly Wear[], today: string): GarmentWear[] {
	const dates = new Map<string, string[]>();
	for (const { garmentId, on } of wears) {
		if (on > today) continue;
		const known = dates.get(garmentId);
		if (known) known.push(on);
		else dates.set(garmentId, [on]);
	}
	return garments.map((garment) => garmentWear(garment, dates.get(garment.id) ?? [], today));
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
	const neverWorn = told.filter(({ wearsThisYear }) => wearsThisYear === 0).map(({ garmentId }) => garmentId);
	const sentence =
		wearsThisYear === 0
			? 'No wear has been noted in the last twelve months, so nothing can be said of what is worn. Tap "worn today" on what you wear.'
			: `${counted(wearsThisYear, 'wear')} in the last twelve months; ${neverWorn.length} of ${counted(here.length, 'garment')} not worn once.`;
	return {
		garments: told,
		byColour: colourShares(here, wearsOf, palette),
		bySlot: slotShares(here, wearsOf),
		neverWorn,
		wearsThisYear,
		sentence,
	};
}
