import type { Services } from './services.ts';

/** Counts for the page's head, and what start-up mended. */
export async function statusOf({ store, sharing, findings }: Services) {
	const [photos, garments, seasons] = await Promise.all([
		store.photos.counts(),
		store.garments.count(),
		store.seasons.count(),
	]);
	return { photos, garments, seasons, sharing: sharing !== null, findings };
}
