import { keptWords } from '../../language/kept-sentence.ts';
import type { Asked, HomeReads, Kept } from '../../store/store.ts';
import type { Garment, GarmentDetails } from '../../wardrobe/words/garment.ts';
import { decide } from '../decide.ts';
import { foundIn } from '../found-in.ts';
import { loadGarment } from '../load-garments.ts';
import { changedSinceSeen, type StaleEntry, staleError } from '../refuse-stale.ts';
import type { Services } from '../services.ts';
import { suggestedGarment } from '../suggest-from-photos.ts';

/** What a person may change of a garment. */
export type GarmentChanges = Partial<
	Omit<GarmentDetails, 'id' | 'addedAt' | 'changedAt' | 'version' | 'conditionSince'>
>;

/** Versions that were seen, by garment; one that is not told is taken as it is. */
export type SeenVersions = Readonly<Record<string, number>>;

/** Naming it or its kind by hand makes that the user's word, whatever the client says of where it came from. Another kind is another name by looks; another state is told since today. */
const changed = (home: HomeReads, garment: GarmentDetails, changes: GarmentChanges, at: string) =>
	suggestedGarment(home, {
		...garment,
		...changes,
		...(changes.kind && !changes.kindFrom ? { kindFrom: 'user' as const } : {}),
		...(changes.name ? { nameFrom: 'user' as const } : {}),
		...(changes.condition && changes.condition !== garment.condition ? { conditionSince: at.slice(0, 10) } : {}),
		changedAt: at,
	});

async function refuseUnknownPhotos(home: HomeReads, { photoIds = [] }: GarmentChanges): Promise<void> {
	for (const id of photoIds) await foundIn(home.photos, 'photo')(id);
}

/** The garments of these ids, none of them changed since it was seen. */
export async function garmentsAsSeen(
	home: HomeReads,
	ids: readonly string[],
	seen: SeenVersions,
): Promise<Kept<GarmentDetails>[]> {
	const garments: Kept<GarmentDetails>[] = [];
	const stale: StaleEntry[] = [];
	for (const id of ids) {
		const garment = await foundIn(home.garments, 'garment')(id);
		const changedMeanwhile = await changedSinceSeen(home, 'garment', id, garment, seen[id]);
		if (changedMeanwhile) stale.push(changedMeanwhile);
		garments.push(garment);
	}
	if (stale.length > 0) throw staleError(stale);
	return garments;
}

/** Names in a sentence that stays short enough for a line. */
export const namesOf = (garments: readonly { readonly name: string }[]): string =>
	garments
		.map(({ name }) => name)
		.join(', ')
		.slice(0, 280);

/** Changes one garment; answers it as it then is. */
export function changeGarment(
	services: Services,
	asked: Asked,
	id: string,
	{ version, ...changes }: GarmentChanges & { readonly version?: number },
): Promise<Garment> {
	return decide(services, asked, async (home) => {
		const [garment] = await garmentsAsSeen(home, [id], version === undefined ? {} : { [id]: version });
		await refuseUnknownPhotos(home, changes);
		const put = await changed(home, garment!, changes, services.now().toISOString());
		return {
			does: { garments: { put: [put] } },
			sentence: keptWords('decisions.changed', { name: put.name }),
			answer: async (after) => (await loadGarment(after, id))!,
		};
	});
}

/** Changes several garments alike. */
export function changeGarments(
	services: Services,
	asked: Asked,
	{
		ids,
		changes,
		versions = {},
	}: { readonly ids: readonly string[]; readonly changes: GarmentChanges; readonly versions?: SeenVersions },
): Promise<{ changed: number }> {
	return decide(services, asked, async (home) => {
		const garments = await garmentsAsSeen(home, ids, versions);
		await refuseUnknownPhotos(home, changes);
		const at = services.now().toISOString();
		const put: GarmentDetails[] = [];
		for (const garment of garments) put.push(await changed(home, garment, changes, at));
		return {
			does: { garments: { put } },
			sentence: keptWords('decisions.changed', { name: namesOf(garments) }),
			answer: async () => ({ changed: garments.length }),
		};
	});
}
