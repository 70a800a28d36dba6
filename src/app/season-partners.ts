import type { Partner } from '../wardrobe/pairs/partners.ts';
import { foundIn } from './found-in.ts';
import { loadSeasonInput } from './load-season.ts';
import type { Services } from './services.ts';

/** Everything that is here and goes with one garment in the season, best first. */
export async function partnersInSeason(services: Services, seasonId: string, garmentId: string): Promise<Partner[]> {
	const season = await foundIn(services.store.seasons, 'season')(seasonId);
	await foundIn(services.store.garments, 'garment')(garmentId);
	return services.judge('partners', await loadSeasonInput(services, season), garmentId);
}
