import type { Sorted } from '../../../src/app/decisions/sort-garments.ts';
import type { Garment } from '../../../src/wardrobe/words/garment.ts';
import { call } from './call.ts';
import { afterOthers, noteOwnVersions, versionsSeen } from './change-thing.ts';
import { queries, queryOf } from './refresh.ts';

/** A garment as it is seen, and where it goes. */
export type ToSort = Omit<Sorted, 'id'> & { readonly garment: Garment };

/** Shows the decision at once; what the program then says replaces it. */
function showAtOnce(seasonId: string, told: readonly ToSort[]): void {
	const changes = new Map(told.map(({ garment, ...change }) => [garment.id, change]));
	queries.setQueryData<readonly Garment[]>(queryOf('listGarments', {}).queryKey, (listed) =>
		listed?.map((garment) => {
			const change = changes.get(garment.id);
			if (!change) return garment;
			const others = (garment.sortedFor ?? []).filter((id) => id !== seasonId);
			const { place, wayOut, decided } = change;
			return { ...garment, place, wayOut, sortedFor: decided ? [...others, seasonId] : others };
		}),
	);
}

/** Gives garments their places in the season's round of sorting, one request after the other, unless another window changed one meanwhile. */
export function sortGarments(seasonId: string, told: readonly ToSort[]): Promise<unknown> {
	showAtOnce(seasonId, told);
	return afterOthers('sorting', async () => {
		const garments = told.map(({ garment: { id }, place, wayOut, decided }) => ({ id, place, wayOut, decided }));
		const versions = versionsSeen(told.map(({ garment }) => garment));
		const sorted = await call('sortGarments', { params: { id: seasonId }, body: { garments, versions } });
		noteOwnVersions(sorted.versions);
	});
}
