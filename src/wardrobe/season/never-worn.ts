import { say } from '../../language/speak.ts';
import { outOfSeason } from '../days/in-season.ts';
import type { Loner } from '../pairs/loner.ts';
import type { PairTable } from '../pairs/pair-table.ts';
import { daysBetween } from '../words/days-between.ts';
import type { Garment } from '../words/garment.ts';
import type { SeasonInput } from '../words/season-input.ts';

/** What was not worn in twelve months, for one reason; null where nothing speaks for one. */
export type NeverWorn = {
	readonly garmentIds: readonly string[];
	readonly why: 'season' | 'season-passed' | 'loner' | 'no-partner' | null;
	readonly sentence: string;
};

/** In so many days every part of the year has come. */
const WHOLE_YEAR_DAYS = 365;

/** Wears noted for a shorter time than a season say nothing against a piece. */
const ONE_SEASON_DAYS = 90;

/** Days in which wears of the garment could be noted: since it was owned and known, and any wear was noted at all. */
function notedDays({ addedAt, boughtOn }: Garment, { wears, today }: SeasonInput): number {
	// biome-ignore lint/complexity/useMathMinMax: days are texts, not numbers
	const first = wears.reduce((earliest, { on }) => (on < earliest ? on : earliest), today);
	const [since] = [addedAt.slice(0, 10), boughtOn ?? '', first].sort().reverse();
	return daysBetween(since!, today);
}

/** The sentence for several garments of one reason; where the advice names another garment, each has its own. */
const TOGETHER = {
	season: 'lookBack.unwornTogetherSeason',
	'season-passed': 'lookBack.unwornTogetherSeasonPassed',
	'no-partner': 'lookBack.unwornTogetherNoPartner',
	early: 'lookBack.unwornTogetherEarly',
	'no-reason': 'lookBack.unwornTogetherNoReason',
	'stored-partner': null,
	loner: null,
} as const;

type Told = {
	readonly garment: Garment;
	readonly told: keyof typeof TOGETHER;
	readonly why: NeverWorn['why'];
	readonly sentence: string;
};

/** Why a garment may not have been worn: its part of the year has not come yet, or came and went; it goes with nothing, or with nothing on the rail. */
function whyUnworn(table: PairTable, index: number, loner: Loner | undefined, input: SeasonInput): Told {
	const garment = table.garments[index]!;
	const { name } = garment;
	const out = outOfSeason(garment, input.season);
	if (out !== null) {
		return notedDays(garment, input) < WHOLE_YEAR_DAYS
			? { garment, told: 'season', why: 'season', sentence: say('lookBack.unwornSeason', { name, out }) }
			: {
					garment,
					told: 'season-passed',
					why: 'season-passed',
					sentence: say('lookBack.unwornSeasonPassed', { name, out }),
				};
	}
	if (loner?.flagged) {
		const carrier = table.garments.find(({ id }) => id === loner.carrierId)?.name ?? '';
		return { garment, told: 'loner', why: 'loner', sentence: say('lookBack.unwornLoner', { name, carrier }) };
	}
	const partners = table.garments.filter(
		(_, other) => other !== index && table.together(index, other) && table.supported(index, other),
	);
	if (!partners.some(({ place }) => place === 'rail')) {
		const partner = partners.find(({ place }) => place === 'stored')?.name;
		return partner === undefined
			? { garment, told: 'no-partner', why: 'no-partner', sentence: say('lookBack.unwornNoPartner', { name }) }
			: {
					garment,
					told: 'stored-partner',
					why: 'no-partner',
					sentence: say('lookBack.unwornStoredPartner', { name, partner }),
				};
	}
	return notedDays(garment, input) < ONE_SEASON_DAYS
		? { garment, told: 'early', why: null, sentence: say('lookBack.unwornEarly', { name }) }
		: { garment, told: 'no-reason', why: null, sentence: say('lookBack.unwornNoReason', { name }) };
}

/** What was never worn, by reason in the order of the ids; a reason that several share is said once for all of them. */
export function neverWorn(
	input: SeasonInput,
	table: PairTable,
	loners: readonly Loner[],
	ids: readonly string[],
): NeverWorn[] {
	const indexOf = new Map(table.garments.map(({ id }, index) => [id, index]));
	const each = ids.flatMap((garmentId) => {
		const index = indexOf.get(garmentId);
		if (index === undefined || table.garments[index]!.place === 'leaving') return [];
		const loner = loners.find((one) => one.garmentId === garmentId);
		return [whyUnworn(table, index, loner, input)];
	});
	return [...new Set(each.map(({ told }) => told))].flatMap((told): NeverWorn[] => {
		const alike = each.filter((one) => one.told === told);
		const together = TOGETHER[told];
		if (together === null || alike.length === 1)
			return alike.map(({ garment, why, sentence }) => ({ garmentIds: [garment.id], why, sentence }));
		const names = alike.map(({ garment }) => garment.name).join('; ');
		return [
			{ garmentIds: alike.map(({ garment }) => garment.id), why: alike[0]!.why, sentence: say(together, { names }) },
		];
	});
}
