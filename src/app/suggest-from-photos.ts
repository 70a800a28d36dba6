import type { ChangedThing, Decided, HomeReads } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { garmentName } from '../wardrobe/words/garment-name.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { PatternType } from '../wardrobe/words/reading.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { type Deciders, tellChanged } from './decide.ts';
import { isNameOfBefore } from './name-of-before.ts';

type Thing = {
	readonly name: string;
	readonly nameFrom?: 'user' | 'looks';
	readonly kind: Kind;
	readonly kindFrom: 'user' | 'photo' | 'none';
	readonly patternByUser?: PatternType | null;
};

/**
 * The thing with the kind that its photo suggests, and a name by its looks, where nobody has said either: another kind or pattern is another name.
 * What a person said is never replaced; without a reading nothing is.
 */
async function suggested<T extends Thing>(home: HomeReads, thing: T, photoId: string | undefined): Promise<T> {
	if (photoId === undefined || (thing.kindFrom !== 'none' && thing.nameFrom === 'user')) return thing;
	const photo = await home.photos.get(photoId);
	if (!photo?.reading) return thing;
	const guess = thing.kindFrom === 'none' ? photo.reading.kindGuesses[0]?.kind : undefined;
	const withKind: T = guess ? { ...thing, kind: guess, kindFrom: 'photo' } : thing;
	const nameFrom = thing.nameFrom ?? (isNameOfBefore(thing.name, photo.originalName) ? 'looks' : 'user');
	if (nameFrom === 'user') return withKind;
	const looks = appearanceOf(withKind.kind, [photo.reading]);
	const pattern = thing.patternByUser ? { type: thing.patternByUser, sure: 1 } : looks.pattern;
	const name = garmentName({ ...looks, pattern, kind: withKind.kind, kindFrom: withKind.kindFrom });
	return { ...withKind, name, nameFrom };
}

/** The garment as its first photo suggests. */
export const suggestedGarment = <T extends GarmentDetails>(home: HomeReads, garment: T): Promise<T> =>
	suggested(home, garment, garment.photoIds[0]);

/** The candidate as its photo suggests. */
export const suggestedCandidate = <T extends CandidateDetails>(home: HomeReads, candidate: T): Promise<T> =>
	suggested(home, candidate, candidate.photoId);

async function suggestion(home: HomeReads, { kind, id }: ChangedThing): Promise<Decided> {
	if (kind === 'garment') {
		const garment = await home.garments.get(id);
		return garment ? { garments: { put: [await suggestedGarment(home, garment)] } } : {};
	}
	const candidate = kind === 'candidate' ? await home.candidates.get(id) : null;
	return candidate ? { candidates: { put: [await suggestedCandidate(home, candidate)] } } : {};
}

/** Notes what their photos suggest of these garments and candidates; of other things nothing. */
export async function suggestForThings({ store, events }: Deciders, things: readonly ChangedThing[]): Promise<void> {
	for (const thing of things)
		if (thing.kind === 'garment' || thing.kind === 'candidate')
			tellChanged(events, await store.note((home) => suggestion(home, thing)));
}

/** Notes what these photos suggest of the garments and candidates that show them. Reads those and nothing else. */
export async function suggestFromPhotos(deciders: Deciders, photoIds: readonly string[]): Promise<void> {
	for (const photoId of photoIds)
		for (const kind of ['garment', 'candidate'] as const) {
			const ids = await deciders.store.showing(kind, photoId);
			await suggestForThings(
				deciders,
				ids.map((id) => ({ kind, id })),
			);
		}
}
