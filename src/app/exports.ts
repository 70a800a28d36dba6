import { garmentsCsv } from '../store/export/garments-csv.ts';
import { recordsCsv } from '../store/export/records-csv.ts';
import type { HomeReads, PhotoRecord } from '../store/store.ts';
import type { Garment } from '../wardrobe/words/garment.ts';
import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { Inspiration, LineUpChoice, Season } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import type { CandidateDetails, Maker, Wish } from '../wardrobe/words/wish.ts';
import { loadGarments } from './load-garments.ts';
import { wearsCsv } from './tables/wears-from-table.ts';

const LISTS = {
	seasons: (home) => home.seasons.list(),
	inspirations: (home) => home.inspirations.list(),
	wishes: (home) => home.wishes.list(),
	candidates: (home) => home.candidates.list(),
	makers: (home) => home.makers.list(),
	photos: (home) => home.photos.list(),
	'pair-words': (home) => home.pairWords(),
} satisfies Record<string, (home: HomeReads) => Promise<readonly object[]>>;

/** Tables that can be taken along. */
export const TABLES = ['garments', 'wears', ...(Object.keys(LISTS) as (keyof typeof LISTS)[])] as const;

/** One table as CSV. */
export async function tableCsv(home: HomeReads, table: (typeof TABLES)[number]): Promise<string> {
	if (table === 'garments') return garmentsCsv(await loadGarments(home));
	if (table === 'wears') return wearsCsv(await home.wears(), await home.garments.list());
	return recordsCsv(await LISTS[table](home));
}

/** What {@link everything} holds. */
export type Everything = {
	readonly seasons: readonly Season[];
	/** By season; null where it has none. */
	readonly palettes: Readonly<Record<string, Palette | null>>;
	readonly lineUps: Readonly<Record<string, LineUpChoice | null>>;
	readonly garments: readonly Garment[];
	readonly inspirations: readonly Inspiration[];
	readonly wishes: readonly Wish[];
	readonly candidates: readonly CandidateDetails[];
	readonly makers: readonly Maker[];
	readonly wears: readonly Wear[];
	readonly pairWords: readonly PairWord[];
	readonly photos: readonly PhotoRecord[];
};

/** Everything that is kept, but for the pictures, as one object. */
export async function everything(home: HomeReads): Promise<Everything> {
	const seasons = await home.seasons.list();
	const bySeason = async <T>(load: (id: string) => Promise<T>) =>
		Object.fromEntries(await Promise.all(seasons.map(async ({ id }) => [id, await load(id)] as const)));
	const [garments, inspirations, wishes, candidates, makers, photos, wears, pairWords, palettes, lineUps] =
		await Promise.all([
			loadGarments(home),
			home.inspirations.list(),
			home.wishes.list(),
			home.candidates.list(),
			home.makers.list(),
			home.photos.list(),
			home.wears(),
			home.pairWords(),
			bySeason((id) => home.palette(id)),
			bySeason((id) => home.lineUp(id)),
		]);
	return { seasons, palettes, lineUps, garments, inspirations, wishes, candidates, makers, wears, pairWords, photos };
}
