import { say } from '../../../src/language/speak.ts';
import { STATIONS } from '../../../src/wardrobe/season/stations.ts';

/** A page within a season: one of the six stations, the garments, the season's own settings, or its sheet for paper. */
export const PLACES_IN_SEASON = [...STATIONS, 'garments', 'season', 'sheet'] as const;
export type PlaceInSeason = (typeof PLACES_IN_SEASON)[number];

/** Address of a page within a season. */
export const addressOf = (seasonId: string, place: PlaceInSeason): string => `/season/${seasonId}/${place}`;

/** The name of a page as it is shown. */
export const placeName = (place: PlaceInSeason): string => say(`places.${place}`);

/** The season and page that an address names, or null where it is none of a season's. */
export function placeAt(path: string): { readonly seasonId: string; readonly place: PlaceInSeason } | null {
	const [, season, seasonId, name, ...rest] = path.split('/');
	const place = PLACES_IN_SEASON.find((one) => one === name);
	return season === 'season' && seasonId && place && rest.length === 0 ? { seasonId, place } : null;
}
