import { photoIdOf } from '../store/photo-files.ts';
import type { HomeReads } from '../store/store.ts';
import { demoPicture, demoScenario } from './demo-scenario.ts';

/** Ids of the photos that the scenario's pictures become. */
export type DemoPhotoIds = { readonly board: ReadonlySet<string>; readonly garments: ReadonlySet<string> };

async function photoIdsOf(pictures: readonly { readonly file: string }[]): Promise<Set<string>> {
	return new Set(await Promise.all(pictures.map(async ({ file }) => photoIdOf(await demoPicture(file)))));
}

export async function demoPhotoIds(): Promise<DemoPhotoIds> {
	const scenario = await demoScenario();
	return { board: await photoIdsOf(scenario.inspirations), garments: await photoIdsOf(scenario.garments) };
}

/**
 * Garments that came with the demo and go with it: those that show nothing but the demo's pictures. None where `seasonId` is no demo (its board
 * shows another picture, or none), or where another season that is still there is one too.
 */
export async function garmentsThatGoWith(home: HomeReads, seasonId: string, demo: DemoPhotoIds): Promise<string[]> {
	const inspirations = await home.inspirations.list();
	const own = inspirations.filter((one) => one.seasonId === seasonId);
	const others = inspirations.filter((one) => one.seasonId !== seasonId);
	if (own.length === 0 || own.some(({ photoId }) => !demo.board.has(photoId))) return [];
	const seasons = new Set((await home.seasons.list()).map(({ id }) => id));
	if (others.some((one) => seasons.has(one.seasonId) && demo.board.has(one.photoId))) return [];
	return (await home.garments.list())
		.filter(({ photoIds }) => photoIds.length > 0 && photoIds.every((id) => demo.garments.has(id)))
		.map(({ id }) => id);
}
