import type { PhotoRecord } from '../store/store.ts';
import type { Services } from './services.ts';

/** What {@link statusOf} tells. */
export type Status = {
	readonly photos: Readonly<Record<PhotoRecord['status'], number>>;
	readonly garments: number;
	readonly seasons: number;
	/** Whether devices of the local network can be let in. */
	readonly sharing: boolean;
	/** What start-up found and mended, one sentence each. */
	readonly findings: readonly string[];
};

/** Counts for the page's head, and what start-up mended. */
export async function statusOf({ store, sharing, findings }: Services): Promise<Status> {
	const [photos, garments, seasons] = await Promise.all([
		store.photos.counts(),
		store.garments.count(),
		store.seasons.count(),
	]);
	return { photos, garments, seasons, sharing: sharing !== null, findings };
}
