import type { Kysely, Transaction } from 'kysely';
import type { Palette } from '../wardrobe/words/palette-colour.ts';
import type { LineUpChoice } from '../wardrobe/words/season.ts';
import type { PairWord, Wear } from '../wardrobe/words/wear.ts';
import { pairingRecords } from './pairing-records.ts';
import type { PhotoFiles } from './photo-files.ts';
import { photoRecords } from './photo-records.ts';
import type { Tables } from './schema.ts';
import type { Changes, Collection, Store } from './store.ts';
import { type ThingEdit, type Things, thingsIn } from './things.ts';

const editsOf = <T extends { readonly id: string }>(
	kind: string,
	{ put = [], remove = [] }: Changes<T> = {},
): ThingEdit[] => [
	...put.map((item) => ({ kind, id: item.id, body: item })),
	...remove.map((id) => ({ kind, id, body: null })),
];

function collection<T extends { readonly id: string }>(things: Things, kind: string): Collection<T> {
	return {
		list: () => things.list<T>(kind),
		count: () => things.count(kind),
		get: (id) => things.get<T>(kind, id),
		put: async (item, sentence) => {
			await things.decide([{ kind, id: item.id, body: item }], sentence);
		},
		remove: async (id, sentence) =>
			(await things.get(kind, id)) !== null && (await things.decide([{ kind, id, body: null }], sentence)) > 0,
		change: async (what, sentence) => {
			await things.decide(editsOf(kind, what), sentence);
		},
		note: (item) => things.note(kind, item.id, item),
	};
}

const wearId = ({ garmentId, on }: Wear) => `${on} ${garmentId}`;
const wearEdit = (wear: Wear): ThingEdit => ({ kind: 'wear', id: wearId(wear), body: wear });
const paletteEdit = ({ seasonId, palette }: { seasonId: string; palette: Palette }): ThingEdit => ({
	kind: 'palette',
	id: seasonId,
	body: palette,
});
/** The same pair whichever way round it is named. */
const pairId = (a: string, b: string) => [a, b].sort().join(' ');

/** The store over any SQL database that the query builder speaks to. */
export function sqlStore(
	db: Kysely<Tables>,
	files: PhotoFiles,
	now: () => Date,
	takeTurn?: (trx: Transaction<Tables>) => Promise<void>,
): Store {
	const things = thingsIn(db, now, takeTurn);
	return {
		seasons: collection(things, 'season'),
		garments: collection(things, 'garment'),
		inspirations: collection(things, 'inspiration'),
		wishes: collection(things, 'wish'),
		candidates: collection(things, 'candidate'),
		makers: collection(things, 'maker'),
		pairings: pairingRecords(db),
		photos: photoRecords(db, files),
		async decide({ seasons, garments, inspirations, wears = [], palettes = [] }, sentence) {
			const edits = [
				...editsOf('season', seasons),
				...editsOf('garment', garments),
				...editsOf('inspiration', inspirations),
				...wears.map(wearEdit),
				...palettes.map(paletteEdit),
			];
			await things.decide(edits, sentence);
		},
		palette: (seasonId) => things.get<Palette>('palette', seasonId),
		async savePalette(seasonId, palette, sentence) {
			await things.decide([paletteEdit({ seasonId, palette })], sentence);
		},
		lineUp: (seasonId) => things.get<LineUpChoice>('line-up', seasonId),
		async saveLineUp(choice, sentence) {
			await things.decide([{ kind: 'line-up', id: choice.seasonId, body: choice }], sentence);
		},
		// Ids begin with the day; `!` is the character after the blank that ends it.
		wears: ({ from, to } = {}) =>
			things.list<Wear>('wear', { ...(from ? { from } : {}), ...(to ? { before: `${to}!` } : {}) }),
		async addWears(wears, sentence) {
			await things.decide(wears.map(wearEdit), sentence);
		},
		async removeWear(wear, sentence) {
			await things.decide([{ kind: 'wear', id: wearId(wear), body: null }], sentence);
		},
		pairWords: () => things.list<PairWord>('pair-word'),
		async savePairWord(a, b, word, sentence) {
			const body = word === null ? null : { garmentA: a, garmentB: b, word };
			await things.decide([{ kind: 'pair-word', id: pairId(a, b), body }], sentence);
		},
		decisions: (limit) => things.decisions(limit),
		undo: () => things.undo(),
		redo: () => things.redo(),
		bin: () => things.bin(),
		restoreFromBin: (id) => things.restoreFromBin(id),
		close: () => db.destroy(),
	};
}
