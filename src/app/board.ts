import type { HomeReads, Kept, PhotoRecord } from '../store/store.ts';
import { withTitles } from '../wardrobe/pictures/picture-title.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { Inspiration } from '../wardrobe/words/season.ts';
import { foundIn } from './found-in.ts';
import { wasNamedByProgram } from './named-by-program.ts';

/** A picture of a board with what was read of it; null while it is not read. */
type OnBoard = { readonly inspiration: Kept<Inspiration>; readonly reading: Reading | null };

/** In an older home a picture that is called by its file was named by nobody. */
function withTitleFrom(inspiration: Kept<Inspiration>, photo: PhotoRecord | undefined): Kept<Inspiration> {
	if (inspiration.titleFrom) return inspiration;
	const isOurs = inspiration.title === '' || wasNamedByProgram(inspiration.title, photo?.originalName);
	return { ...inspiration, titleFrom: isOurs ? 'looks' : 'user' };
}

/** The pictures of a season's board, by id, with titles and readings; two queries, whatever their number. */
export async function boardOf(home: HomeReads, seasonId: string): Promise<OnBoard[]> {
	const board = (await home.inspirations.list()).filter((one) => one.seasonId === seasonId);
	const photos = new Map((await home.photos.list(board.map((one) => one.photoId))).map((photo) => [photo.id, photo]));
	const pictures = board.map((inspiration): OnBoard => {
		const photo = photos.get(inspiration.photoId);
		return { inspiration: withTitleFrom(inspiration, photo), reading: photo?.reading ?? null };
	});
	const titled = withTitles(pictures);
	return pictures.map(({ reading }, index) => ({ inspiration: titled[index]!, reading }));
}

/** The same, where the season is known. */
export async function inspirationsOf(home: HomeReads, seasonId: string): Promise<Inspiration[]> {
	await foundIn(home.seasons, 'season')(seasonId);
	return (await boardOf(home, seasonId)).map(({ inspiration }) => inspiration);
}
