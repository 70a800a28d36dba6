import { fitOf } from '../fit/fit.ts';
import type { Fit } from '../fit/fit-result.ts';
import type { StyleProfile } from '../fit/style.ts';
import { type AxisFit, styleFit } from '../fit/style-fit.ts';
import type { Twin } from '../fit/twins.ts';
import type { Loner } from '../pairs/loner.ts';
import type { PairTable } from '../pairs/pair-table.ts';
import { type Partner, partnersIn } from '../pairs/partners.ts';
import { daysBetween } from '../words/days-between.ts';
import type { Garment, Place } from '../words/garment.ts';
import { type GarmentWear, wearsTell } from '../words/garment-wears.ts';
import { slotOfKind } from '../words/kind.ts';
import type { SeasonInput } from '../words/season-input.ts';
import type { Slot } from '../words/slot.ts';
import type { LookBack } from './look-back.ts';
import { type SortingSuggestion, sortingOf } from './sorting.ts';

/** Everything said of one garment. */
export type GarmentReport = {
	readonly garmentId: string;
	readonly name: string;
	readonly slot: Slot;
	readonly place: Place;
	readonly fit: Fit;
	readonly style: readonly AxisFit[];
	readonly partnerCount: number;
	/** The best few. */
	readonly partners: readonly Partner[];
	readonly loner: Loner | null;
	readonly twins: readonly Twin[];
	readonly wear: GarmentWear;
	readonly sorting: SortingSuggestion;
};

const SHOWN_PARTNERS = 5;

/** What is known of all garments together; `table` holds them in their order. */
type Judged = {
	readonly profile: StyleProfile;
	readonly table: PairTable;
	readonly loners: readonly Loner[];
	readonly twins: readonly Twin[];
	readonly back: LookBack;
};

/** The day on which a garment came: bought, where that was told, else when it was added. */
const cameOn = ({ boughtOn, addedAt }: Garment): string => boughtOn ?? addedAt.slice(0, 10);

/** The day since which there are two of them. */
const bothSince = (one: Garment, other: Garment): string => [cameOn(one), cameOn(other)].sort()[1]!;

function twinsByGarment(twins: readonly Twin[]): ReadonlyMap<string, readonly Twin[]> {
	const own = new Map<string, Twin[]>();
	for (const twin of twins)
		for (const id of [twin.garmentA, twin.garmentB]) own.set(id, [...(own.get(id) ?? []), twin]);
	return own;
}

/** Everything said of each of the garments, best fit first. */
export function garmentReports(
	garments: readonly Garment[],
	{ palette, season, today, wears }: SeasonInput,
	{ profile, table, loners, twins, back }: Judged,
): GarmentReport[] {
	const wearOf = new Map(back.garments.map((one) => [one.garmentId, one]));
	const lonerOf = new Map(loners.map((one) => [one.garmentId, one]));
	const twinsOf = twinsByGarment(twins);
	const garmentOf = new Map(garments.map((garment) => [garment.id, garment]));
	const tells = wearsTell(garments, wears);
	// Not worn means nothing before the first day on which any wear was noted.
	const notedSince = wears.map(({ on }) => on).sort()[0] ?? today;
	const reportOf = (garment: Garment, index: number): GarmentReport => {
		const own = twinsOf.get(garment.id) ?? [];
		const wear = wearOf.get(garment.id)!;
		const fit = fitOf(garment, palette);
		const loner = lonerOf.get(garment.id) ?? null;
		const [twin = null] = own;
		const other = twin && wearOf.get(twin.garmentA === garment.id ? twin.garmentB : twin.garmentA);
		const [knownSince] = [garment.addedAt.slice(0, 10), garment.boughtOn ?? '', notedSince].sort().reverse();
		const knownDays = Math.max(0, daysBetween(knownSince!, today));
		const wornMore =
			twin?.sureness === 'alike' && other && other.wears > wear.wears
				? {
						name: garmentOf.get(other.garmentId)!.name,
						wears: other.wears,
						since: bothSince(garment, garmentOf.get(other.garmentId)!),
					}
				: null;
		const facts = { fit, wear, knownSince: knownSince!, knownDays, loner, wornMore };
		return {
			garmentId: garment.id,
			name: garment.name,
			slot: slotOfKind(garment.kind),
			place: garment.place,
			fit,
			style: styleFit(garment, profile),
			partnerCount: table.partnerCount(index),
			partners: partnersIn(table, index, { limit: SHOWN_PARTNERS }),
			loner,
			twins: own,
			wear,
			sorting: sortingOf(garment, facts, season, back.wearsThisYear > 0 && tells(garment)),
		};
	};
	return garments.map(reportOf).sort((a, b) => b.fit.percent - a.fit.percent || (a.garmentId < b.garmentId ? -1 : 1));
}
