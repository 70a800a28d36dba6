import { pairContextOf } from '../wardrobe/pairs/pair-context.ts';
import { type Partner, partnersOf } from '../wardrobe/pairs/partners.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';

/** Everything that is here and goes with one garment in the season, best first. */
export async function partnersInSeason(services: Services, seasonId: string, garmentId: string): Promise<Partner[]> {
	const season = await foundIn(services.store.seasons, 'season')(seasonId);
	await foundIn(services.store.garments, 'garment')(garmentId);
	const input = await loadSeasonInput(services, season);
	const here = input.garments.filter(({ id, place }) => place !== 'gone' || id === garmentId);
	return partnersOf(here.find(({ id }) => id === garmentId)!, here, pairContextOf(input));
}
