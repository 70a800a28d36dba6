import type { Asked, Decided, HomeReads, Kept, Reads, VersionedKind } from '../../store/store.ts';
import type { Inspiration, Season } from '../../wardrobe/words/season.ts';
import type { CandidateDetails, Maker, Wish } from '../../wardrobe/words/wish.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { refuseStale } from '../refuse-stale.ts';
import type { Services } from '../services.ts';

/** How entries of one kind are found, written and spoken of. */
type Kind<T> = {
	readonly kind: VersionedKind;
	readonly of: (home: HomeReads) => Reads<T>;
	readonly does: (changes: { readonly put?: readonly T[]; readonly remove?: readonly string[] }) => Decided;
};

/** A change of one entry: its fields replaced by those that are told, if it is still as it was seen. Answers it as it then is. */
export const changer =
	<T extends { readonly id: string }, C extends object>(
		{ kind, of, does }: Kind<T>,
		{
			changed,
			sentence,
		}: {
			/** The entry with the changes; throws where they do not fit it. */
			readonly changed: (entry: Kept<T>, changes: C, home: HomeReads) => T | Promise<T>;
			readonly sentence: (entry: T) => string;
		},
	) =>
	(services: Services, asked: Asked, id: string, told: C & { readonly version?: number }): Promise<Kept<T>> =>
		decide(services, asked, async (home) => {
			const { version, ...changes } = told;
			const before = await foundIn(of(home), kind)(id);
			await refuseStale(home, kind, id, before, version);
			const entry = await changed(before, changes as unknown as C, home);
			return {
				does: does({ put: [entry] }),
				sentence: sentence(entry),
				answer: async (after) => (await of(after).get(id))!,
			};
		});

/** Takes one entry away, to the bin where its kind has one, if it is still as it was seen. */
export const remover =
	<T extends { readonly id: string }>({ kind, of, does }: Kind<T>, sentence: (entry: T) => string) =>
	(services: Services, asked: Asked, id: string, seen: number | undefined): Promise<{ removed: true }> =>
		decide(services, asked, async (home) => {
			const before = await foundIn(of(home), kind)(id);
			await refuseStale(home, kind, id, before, seen);
			return {
				does: does({ remove: [id] }),
				sentence: sentence(before),
				answer: async () => ({ removed: true as const }),
			};
		});

/** Seasons, inspirations, wishes, candidates, makers, as the two above take them. */
export const KINDS = {
	season: { kind: 'season', of: (home) => home.seasons, does: (seasons) => ({ seasons }) },
	inspiration: { kind: 'inspiration', of: (home) => home.inspirations, does: (inspirations) => ({ inspirations }) },
	wish: { kind: 'wish', of: (home) => home.wishes, does: (wishes) => ({ wishes }) },
	candidate: { kind: 'candidate', of: (home) => home.candidates, does: (candidates) => ({ candidates }) },
	maker: { kind: 'maker', of: (home) => home.makers, does: (makers) => ({ makers }) },
} satisfies {
	season: Kind<Season>;
	inspiration: Kind<Inspiration>;
	wish: Kind<Wish>;
	candidate: Kind<CandidateDetails>;
	maker: Kind<Maker>;
};
