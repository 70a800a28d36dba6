import type { HomeReads } from '../store/store.ts';
import type { Report } from '../wardrobe/season/report.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import { EMPTY_PALETTE, type Palette } from '../wardrobe/words/palette-colour.ts';
import { withWordsApart } from '../wardrobe/words/palette-words.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { Season } from '../wardrobe/words/season.ts';
import type { SeasonInput } from '../wardrobe/words/season-input.ts';
import { boardOf } from './board.ts';
import { foundIn } from './found-in.ts';
import { loadGarments } from './load-garments.ts';
import { type Services, todayOf } from './services.ts';
import { wishesOf } from './wish-list.ts';

/** The season before this one with the same part of the year, and its palette; null where there is none. */
export async function lastYearOf(
	home: HomeReads,
	season: Season,
): Promise<{ season: Season; palette: Palette } | null> {
	const earlier = (await home.seasons.list())
		.filter((one) => one.id !== season.id && one.yearPart === season.yearPart && one.startsOn < season.startsOn)
		.sort((a, b) => b.startsOn.localeCompare(a.startsOn))[0];
	return earlier ? { season: earlier, palette: (await home.palette(earlier.id)) ?? EMPTY_PALETTE } : null;
}

const loadInspirations = async (home: HomeReads, seasonId: string): Promise<SeasonInput['inspirations']> =>
	(await boardOf(home, seasonId)).flatMap(({ inspiration, reading }) => (reading ? [{ inspiration, reading }] : []));

/** The readings that a palette is derived from: the season's board, or the garments on the rail. */
export async function loadPaletteReadings(
	home: HomeReads,
	season: Season,
	from: 'inspirations' | 'garments',
): Promise<Reading[]> {
	if (from === 'inspirations') return (await loadInspirations(home, season.id)).map(({ reading }) => reading);
	const onRail = (await home.garments.list()).filter((garment) => garment.place === 'rail');
	const photos = await home.photos.list(onRail.flatMap((garment) => garment.photoIds.slice(0, 1)));
	return photos.flatMap((photo) => photo.reading ?? []);
}

/** Candidates of a season with the colours that their photos give. */
async function loadCandidates(home: HomeReads, seasonId: string): Promise<SeasonInput['candidates']> {
	const candidates = (await home.candidates.list()).filter((one) => one.seasonId === seasonId);
	const photos = new Map(
		(await home.photos.list(candidates.map((one) => one.photoId))).map((photo) => [photo.id, photo]),
	);
	return candidates.map((one) => {
		const reading = photos.get(one.photoId)?.reading;
		return { ...one, ...appearanceOf(one.kind, reading ? [reading] : []) };
	});
}

/** Everything the judgements of a season take, loaded once. */
export async function loadSeasonInput(
	services: Pick<Services, 'now'> & { readonly store: HomeReads },
	season: Season,
): Promise<SeasonInput> {
	const { store } = services;
	const [palette, inspirations, garments, wishes, candidates, makers, wears, pairWords, lineUp, lastYear] =
		await Promise.all([
			store.palette(season.id),
			loadInspirations(store, season.id),
			loadGarments(store),
			wishesOf(store, season.id),
			loadCandidates(store, season.id),
			store.makers.list(),
			store.wears(),
			store.pairWords(),
			store.lineUp(season.id),
			lastYearOf(store, season),
		]);
	return {
		season,
		palette: withWordsApart(palette ?? EMPTY_PALETTE),
		inspirations,
		garments,
		wishes,
		candidates,
		makers,
		wears,
		pairWords,
		lineUp,
		today: todayOf(services),
		lastYear,
	};
}

/** The season's whole report. */
export async function reportOf(services: Pick<Services, 'now' | 'store' | 'judge'>, seasonId: string): Promise<Report> {
	const season = await foundIn(services.store.seasons, 'season')(seasonId);
	return services.judge('report', await loadSeasonInput(services, season), null);
}
