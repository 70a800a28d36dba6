import type { PhotoRecord } from '../store/store.ts';
import { movedPieceKinds } from '../wardrobe/words/moved-piece-kinds.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { Inspiration } from '../wardrobe/words/season.ts';
import { type Deciders, tellChanged } from './decide.ts';

/** Carries what was told of the pieces of a photo over from the reading that it had to its new one, in all pictures that show it. */
export async function keepToldPieces(
	{ store, events }: Deciders,
	{ id, reading }: Pick<PhotoRecord, 'id' | 'reading'>,
	{ pieces: after = [] }: Pick<Reading, 'pieces'>,
): Promise<void> {
	const before = reading?.pieces ?? [];
	const ids = before.length > 0 ? await store.showing('inspiration', id) : [];
	if (ids.length === 0) return;
	const changes = await store.note(async (home) => {
		const put: Inspiration[] = [];
		for (const one of ids) {
			const inspiration = await home.inspirations.get(one);
			if (!inspiration?.pieceKinds?.length) continue;
			const pieceKinds = movedPieceKinds(inspiration.pieceKinds, before, after);
			if (JSON.stringify(pieceKinds) !== JSON.stringify(inspiration.pieceKinds))
				put.push({ ...inspiration, pieceKinds });
		}
		return { inspirations: { put } };
	});
	tellChanged(events, changes);
}
