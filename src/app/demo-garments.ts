import { photoIdOf } from '../store/photo-files.ts';
import type { Store } from '../store/store.ts';
import { demoPicture, demoScenario } from './demo-scenario.ts';

/** Ids of the photos that these pictures of the scenario become. */
async function photoIdsOf(pictures: readonly { readonly file: string }[]): Promise<Set<string>> {
	return new Set(await Promise.all(pictures.map(async ({ file }) => photoIdOf(await demoPicture(file)))));
}

/**
 * Garments that came with the demo and go with it: those that show nothing but the demo's pictures. None where `seasonId` is no demo (its board
 * shows another picture, or none), or where another season that is still there is one too.
 */
export async function garmentsThatGoWith(store: Store, seasonId: string): Promise<string[]> {
	const inspirations = await store.inspirations.list();
	const own = inspirations.filter((one) => one.seasonId === seasonId);
	const others = inspirations.filter((one) => one.seasonId !== seasonId);
	if (own.length === 0) return [];
	const scenario = await demoScenario();
	const board = await photoIdsOf(scenario.inspirations);
	if (own.some(({ photoId }) => !board.has(photoId))) return [];
	const seasons = new Set((await store.seasons.list()).map(({ id }) => id));
	if (others.some((one) => seasons.has(one.seasonId) && board.has(one.photoId))) return [];
	const pictures = await photoIdsOf(scenario.garments);
	return (await store.garments.list())
		.filter(({ photoIds }) => photoIds.length > 0 && photoIds.every((id) => pictures.has(id)))
		.map(({ id }) => id);
}
