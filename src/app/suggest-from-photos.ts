import type { ChangedEntry, Decided, HomeReads, Kept, Reads } from '../store/store.ts';
import { appearanceOf } from '../wardrobe/words/appearance.ts';
import type { GarmentDetails } from '../wardrobe/words/garment.ts';
import { garmentName } from '../wardrobe/words/garment-name.ts';
import type { Kind } from '../wardrobe/words/kind.ts';
import type { PatternType } from '../wardrobe/words/reading.ts';
import type { CandidateDetails } from '../wardrobe/words/wish.ts';
import { type Deciders, tellChanged } from './decide.ts';
import { wasNamedByProgram } from './named-by-program.ts';

type Entry = {
	readonly name: string;
	readonly nameFrom?: 'user' | 'looks';
	readonly kind: Kind;
	readonly kindFrom: 'user' | 'photo' | 'none';
	readonly patternByUser?: PatternType | null;
};

/**
 * The entry with the kind that its photo suggests, and a name by its looks, where nobody has said either: another kind or pattern is another name.
 * What a person said is never replaced; without a reading nothing is.
 */
async function suggested<T extends Entry>(home: HomeReads, entry: T, photoId: string | undefined): Promise<T> {
	if (photoId === undefined || (entry.kindFrom !== 'none' && entry.nameFrom === 'user')) return entry;
	const photo = await home.photos.get(photoId);
	if (!photo?.reading) return entry;
	const guess = entry.kindFrom === 'none' ? photo.reading.kindGuesses[0]?.kind : undefined;
	const withKind: T = guess ? { ...entry, kind: guess, kindFrom: 'photo' } : entry;
	const nameFrom = entry.nameFrom ?? (wasNamedByProgram(entry.name, photo.originalName) ? 'looks' : 'user');
	if (nameFrom === 'user') return withKind;
	const looks = appearanceOf(withKind.kind, [photo.reading]);
	const pattern = entry.patternByUser ? { type: entry.patternByUser, sure: 1 } : looks.pattern;
	const name = garmentName({ ...looks, pattern, kind: withKind.kind, kindFrom: withKind.kindFrom });
	return { ...withKind, name, nameFrom };
}

/** The garment as its first photo suggests. */
export const suggestedGarment = <T extends GarmentDetails>(home: HomeReads, garment: T): Promise<T> =>
	suggested(home, garment, garment.photoIds[0]);

/** The candidate as its photo suggests. */
export const suggestedCandidate = <T extends CandidateDetails>(home: HomeReads, candidate: T): Promise<T> =>
	suggested(home, candidate, candidate.photoId);

/** Ids looked up one by one; for more, all entries of the kind are read at once. */
const FEW = 20;

/** Those of the ids that name something. */
async function namedBy<T extends { readonly id: string }>(
	reads: Reads<T>,
	ids: ReadonlySet<string>,
): Promise<Kept<T>[]> {
	if (ids.size > FEW) return (await reads.list()).filter(({ id }) => ids.has(id));
	const found: (Kept<T> | null)[] = [];
	for (const id of ids) found.push(await reads.get(id));
	return found.filter((one) => one !== null);
}

const idsOf = (entries: readonly ChangedEntry[], wanted: ChangedEntry['kind']): ReadonlySet<string> =>
	new Set(entries.filter(({ kind }) => kind === wanted).map(({ id }) => id));

async function suggestions(home: HomeReads, entries: readonly ChangedEntry[]): Promise<Decided> {
	const garments: GarmentDetails[] = [];
	for (const garment of await namedBy(home.garments, idsOf(entries, 'garment'))) {
		const now = await suggestedGarment(home, garment);
		if (now !== garment) garments.push(now);
	}
	const candidates: CandidateDetails[] = [];
	for (const candidate of await namedBy(home.candidates, idsOf(entries, 'candidate'))) {
		const now = await suggestedCandidate(home, candidate);
		if (now !== candidate) candidates.push(now);
	}
	return { garments: { put: garments }, candidates: { put: candidates } };
}

/** Notes what their photos suggest of these garments and candidates; of other entries nothing. */
export async function suggestForEntries({ store, events }: Deciders, entries: readonly ChangedEntry[]): Promise<void> {
	if (entries.some(({ kind }) => kind === 'garment' || kind === 'candidate'))
		tellChanged(events, await store.note((home) => suggestions(home, entries)));
}

/** Notes what these photos suggest of the garments and candidates that show them. Reads those and nothing else. */
export async function suggestFromPhotos(deciders: Deciders, photoIds: readonly string[]): Promise<void> {
	for (const photoId of photoIds)
		for (const kind of ['garment', 'candidate'] as const) {
			const ids = await deciders.store.showing(kind, photoId);
			await suggestForEntries(
				deciders,
				ids.map((id) => ({ kind, id })),
			);
		}
}
