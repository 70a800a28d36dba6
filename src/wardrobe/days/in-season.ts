import { say } from '../../language/speak.ts';
import type { Garment } from '../words/garment.ts';
import { factsOfKind } from '../words/kind.ts';
import type { Season } from '../words/season.ts';
import { daysOfSeason } from './usual-days.ts';

/** A garment that the user calls winter-warm, or that has no warmth, is not for a season warmer, or colder, than this. Common practice, no source. */
const WINTER_WARM_UP_TO = 11;
const NO_WARMTH_FROM = 17;

type Judged = Pick<Garment, 'kind' | 'warmth' | 'yearParts' | 'basic'>;

/** The limits in which a garment is worn: by the user's word on its warmth, else by its kind. */
function limitsOf({ kind, warmth }: Judged): { readonly fromWarm?: number; readonly upToCold?: number } {
	const facts = factsOfKind(kind);
	if (warmth === null || warmth === facts.warmth) return facts;
	if (warmth === 3) return { upToCold: WINTER_WARM_UP_TO };
	// Something thin is worn under something warm, unless it is what shows legs and feet.
	const isLayered = facts.slot === 'top' || facts.slot === 'accessory';
	return warmth === 0 && !isLayered ? { fromWarm: NO_WARMTH_FROM } : {};
}

/**
 * Why a garment is for another part of the year than the season, in a half sentence; `null` where it is in season. The user's own word comes first: parts of
 * the year told, year-round basic; then what its kind and warmth usually ask of the weather.
 */
export function outOfSeason(
	garment: Judged,
	season: Pick<Season, 'yearPart' | 'startsOn' | 'endsOn' | 'days'>,
): string | null {
	if (garment.yearParts.length > 0)
		return garment.yearParts.includes(season.yearPart)
			? null
			: say('inSeason.otherPart', {
					parts: garment.yearParts.map((part) => say(`yearParts.${part}`)).join(say('inSeason.and')),
					season: say(`yearParts.${season.yearPart}`),
				});
	if (garment.basic) return null;
	const { coldDay, warmDay } = daysOfSeason(season);
	const { fromWarm, upToCold } = limitsOf(garment);
	if (fromWarm !== undefined && warmDay < fromWarm) return say('inSeason.tooLight', { limit: fromWarm, day: warmDay });
	if (upToCold !== undefined && coldDay > upToCold) return say('inSeason.tooWarm', { limit: upToCold, day: coldDay });
	return null;
}

/** The months of each part of the year as a season, of any year. */
const PARTS = (
	[
		['spring', '2026-03-01', '2026-05-31'],
		['summer', '2026-06-01', '2026-08-31'],
		['autumn', '2026-09-01', '2026-11-30'],
		['winter', '2026-12-01', '2027-02-28'],
	] as const
).map(([yearPart, startsOn, endsOn]) => ({ yearPart, startsOn, endsOn }));

/** By the garment as it stands in memory, which never changes: each loud piece asks about the same partners. */
const PARTS_WORN_IN = new WeakMap<Judged, number>();

/** The parts of the year in which a garment is worn, as their days usually are, a bit each. */
export function partsWornIn(garment: Judged): number {
	const before = PARTS_WORN_IN.get(garment);
	if (before !== undefined) return before;
	const parts = PARTS.reduce((sum, part, at) => (isInSeason(garment, part) ? sum | (1 << at) : sum), 0);
	PARTS_WORN_IN.set(garment, parts);
	return parts;
}

/** Whether a garment is for this part of the year. */
export const isInSeason = (garment: Judged, season: Parameters<typeof outOfSeason>[1]): boolean =>
	outOfSeason(garment, season) === null;
