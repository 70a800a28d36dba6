import { say } from '../../language/speak.ts';
import { outOfSeason } from '../days/in-season.ts';
import type { Loner } from '../pairs/loner.ts';
import type { PairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { garmentWears, WORN_OFTEN } from '../words/garment-wears.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** What the wears say beyond single garments. */
export type WornOutfits = {
	/** Sets worn on two days or more, the most worn first. */
	readonly wornAgain: readonly {
		readonly garmentIds: readonly string[];
		readonly days: number;
		readonly sentence: string;
	}[];
	/** Favourites that go together and were never worn on one day. */
	readonly neverCombined: readonly { readonly garmentIds: readonly [string, string]; readonly sentence: string }[];
	/** What was never worn in twelve months, and why that may be; null where nothing speaks for a reason. */
	readonly neverWorn: readonly {
		readonly garmentId: string;
		readonly why: 'season' | 'loner' | 'no-partner' | null;
		readonly sentence: string;
	}[];
};

/** Most of each kind that are told. */
const TOLD_AT_MOST = 5;

/** Sets of clothes (accessories and legwear apart) by the days on which exactly they were worn. */
function wornAgain(garments: readonly Garment[], { wears, today }: SeasonInput): WornOutfits['wornAgain'] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	const onDay = new Map<string, Set<string>>();
	for (const { garmentId, on } of wears) {
		const garment = byId.get(garmentId);
		if (!garment || on > today || ['accessory', 'legwear'].includes(slotOfKind(garment.kind))) continue;
		onDay.set(on, (onDay.get(on) ?? new Set()).add(garmentId));
	}
	const days = new Map<string, number>();
	for (const worn of onDay.values()) {
		if (worn.size < 2) continue;
		const key = [...worn].sort().join('\n');
		days.set(key, (days.get(key) ?? 0) + 1);
	}
	return [...days]
		.filter(([, count]) => count >= 2)
		.sort((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1))
		.slice(0, TOLD_AT_MOST)
		.map(([key, count]) => {
			const garmentIds = key.split('\n');
			const names = garmentIds.map((id) => byId.get(id)!.name).join(say('lookBack.with'));
			return {
				garmentIds,
				days: count,
				sentence: say('lookBack.wornAgain', { names, days: say('counts.days', { count }) }),
			};
		});
}

function neverCombined(table: PairTable, { wears, today }: SeasonInput): WornOutfits['neverCombined'] {
	const worn = garmentWears(table.garments, wears, today);
	const favourites = table.garments
		.flatMap(({ loved, place }, index) =>
			place === 'rail' && (loved === 3 || worn[index]!.wearsThisYear >= WORN_OFTEN) ? [index] : [],
		)
		.sort((a, b) => (table.garments[a]!.id < table.garments[b]!.id ? -1 : 1));
	return favourites
		.flatMap((one, at) => favourites.slice(at + 1).map((other) => [one, other] as const))
		.filter(([one, other]) => table.together(one, other) && table.supported(one, other))
		.filter(([one, other]) => table.kind(one, other) !== 'worn' && !wornOnOneDay(table, one, other, wears))
		.slice(0, TOLD_AT_MOST)
		.map(([one, other]) => {
			const [a, b] = [table.garments[one]!, table.garments[other]!];
			return {
				garmentIds: [a.id, b.id] as const,
				sentence: say('lookBack.neverCombined', { one: a.name, other: b.name }),
			};
		});
}

function wornOnOneDay(table: PairTable, one: number, other: number, wears: SeasonInput['wears']): boolean {
	const daysOf = (index: number) =>
		new Set(wears.filter(({ garmentId }) => garmentId === table.garments[index]!.id).map(({ on }) => on));
	const days = daysOf(one);
	return [...daysOf(other)].some((day) => days.has(day));
}

/** Why a garment may not have been worn: of another part of the year, going with nothing, or with nothing on the rail. */
function whyUnworn(
	table: PairTable,
	index: number,
	loner: Loner | undefined,
	{ season }: SeasonInput,
): Omit<WornOutfits['neverWorn'][number], 'garmentId'> {
	const garment = table.garments[index]!;
	const { name } = garment;
	const out = outOfSeason(garment, season);
	if (out !== null) return { why: 'season', sentence: say('lookBack.unwornSeason', { name, out }) };
	if (loner?.flagged) return { why: 'loner', sentence: say('lookBack.unwornLoner', { name }) };
	const hasPartner = table.garments.some(
		({ place }, other) =>
			other !== index && place === 'rail' && table.together(index, other) && table.supported(index, other),
	);
	if (!hasPartner) return { why: 'no-partner', sentence: say('lookBack.unwornNoPartner', { name }) };
	return { why: null, sentence: say('lookBack.unwornNoReason', { name }) };
}

/** Outfits worn again and again, favourites never combined, and what was never worn. Empty where no wears are noted. */
export function wornOutfits(
	input: SeasonInput,
	table: PairTable,
	loners: readonly Loner[],
	neverWornIds: readonly string[],
): WornOutfits {
	if (input.wears.length === 0) return { wornAgain: [], neverCombined: [], neverWorn: [] };
	const indexOf = new Map(table.garments.map(({ id }, index) => [id, index]));
	return {
		wornAgain: wornAgain(table.garments, input),
		neverCombined: neverCombined(table, input),
		neverWorn: neverWornIds.flatMap((garmentId) => {
			const index = indexOf.get(garmentId);
			if (index === undefined || table.garments[index]!.place === 'leaving') return [];
			const loner = loners.find((one) => one.garmentId === garmentId);
			return [{ garmentId, ...whyUnworn(table, index, loner, input) }];
		}),
	};
}
