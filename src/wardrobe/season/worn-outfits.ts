import { say } from '../../language/speak.ts';
import type { Loner } from '../pairs/loner.ts';
import type { PairTable } from '../pairs/pair-table.ts';
import type { Garment } from '../words/garment.ts';
import { garmentWears, WORN_OFTEN } from '../words/garment-wears.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';
import { SLOTS } from '../words/slot.ts';
import { type NeverWorn, neverWorn } from './never-worn.ts';

/** What the wears say beyond single garments. */
export type WornOutfits = {
	/** Sets worn on two days or more, the most worn first. */
	readonly wornAgain: readonly {
		readonly garmentIds: readonly string[];
		readonly days: number;
		readonly sentence: string;
	}[];
	/** Favourites, loved dearly or worn often, that go together and were never worn on one day; each of them once. */
	readonly neverCombined: readonly { readonly garmentIds: readonly [string, string]; readonly sentence: string }[];
	/** What was never worn in twelve months, and why that may be; what has one reason and one advice together. */
	readonly neverWorn: readonly NeverWorn[];
};

/** Most of each kind that are told. */
const TOLD_AT_MOST = 5;

/** Places in which the parts of an outfit are told: body first, shoes last. */
const placeOf = ({ kind }: Garment): number => SLOTS.indexOf(slotOfKind(kind));

/** Accessories, tights and socks make no outfit by themselves. */
const isBeside = ({ kind }: Garment): boolean => ['accessory', 'legwear'].includes(slotOfKind(kind));

/** Sets of clothes (accessories and legwear apart) by the days on which exactly they were worn. */
function wornAgain(garments: readonly Garment[], { wears, today }: SeasonInput): WornOutfits['wornAgain'] {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	const onDay = new Map<string, Set<string>>();
	for (const { garmentId, on } of wears) {
		const garment = byId.get(garmentId);
		if (!garment || on > today || isBeside(garment)) continue;
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
			const worn = key.split('\n').map((id) => byId.get(id)!);
			worn.sort((a, b) => placeOf(a) - placeOf(b) || (a.id < b.id ? -1 : 1));
			const garmentIds = worn.map(({ id }) => id);
			const names = worn.map(({ name }) => name).join(say('lookBack.with'));
			return {
				garmentIds,
				days: count,
				sentence: say('lookBack.wornAgain', { names, count }),
			};
		});
}

function neverCombined(table: PairTable, { wears, today }: SeasonInput): WornOutfits['neverCombined'] {
	const worn = garmentWears(table.garments, wears, today);
	// By name before the id, which a home draws by chance.
	const textOf = (index: number) => `${table.garments[index]!.name} ${table.garments[index]!.id}`;
	const favourites = table.garments
		.flatMap((garment, index) => {
			const isFavourite = garment.loved === 3 || worn[index]!.wearsThisYear >= WORN_OFTEN;
			return garment.place === 'rail' && isFavourite && !isBeside(garment) ? [index] : [];
		})
		.sort((a, b) => worn[b]!.wearsThisYear - worn[a]!.wearsThisYear || (textOf(a) < textOf(b) ? -1 : 1));
	const told = new Set<number>();
	/** One pair a favourite, so that one jumper does not fill the list. */
	const isNew = ([one, other]: readonly [number, number]) => {
		if (told.has(one) || told.has(other)) return false;
		told.add(one).add(other);
		return true;
	};
	return favourites
		.flatMap((one, at) => favourites.slice(at + 1).map((other) => [one, other] as const))
		.filter(([one, other]) => table.together(one, other) && table.supported(one, other))
		.filter(([one, other]) => table.kind(one, other) !== 'worn' && !wornOnOneDay(table, one, other, wears))
		.filter(isNew)
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

/** Outfits worn again and again, favourites never combined, and what was never worn. Empty where no wears are noted. */
export function wornOutfits(
	input: SeasonInput,
	table: PairTable,
	loners: readonly Loner[],
	neverWornIds: readonly string[],
): WornOutfits {
	if (input.wears.length === 0) return { wornAgain: [], neverCombined: [], neverWorn: [] };
	return {
		wornAgain: wornAgain(table.garments, input),
		neverCombined: neverCombined(table, input),
		neverWorn: neverWorn(input, table, loners, neverWornIds),
	};
}
