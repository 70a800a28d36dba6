import type { PhotoTask } from '../../store/postgres/photo-queue.ts';
import { keepToldPieces } from '../keep-told-pieces.ts';
import { noteGaps } from '../note-gaps.ts';
import { noteUnread, type PhotoReader, readPhotoOf } from '../read-photo-of.ts';
import type { Services } from '../services.ts';
import { suggestFromPhotos } from '../suggest-from-photos.ts';
import { HomeGoneError } from './home-services.ts';
import type { Host } from './host.ts';
import { isOutOfReach } from './out-of-reach.ts';

const readerOf = (services: Services): PhotoReader => ({
	...services,
	onRead: async (photo, reading) => {
		await suggestFromPhotos(services, [photo.id]);
		await keepToldPieces(services, photo, reading);
		await services.followLight(photo, reading);
	},
});

/** The services of a home, or null where it was taken away before its photo could be read. */
async function servicesOrGone(host: Host, homeId: string): Promise<Services | null> {
	try {
		return await host.homeServices(homeId);
	} catch (error) {
		if (error instanceof HomeGoneError) return null;
		throw error;
	}
}

/** Takes photos from the queue and reads them until the host is closed; `onRead` and `onGivenUp` hear of each. */
export async function work(
	host: Host,
	{ onRead, onGivenUp }: { readonly onRead: (ms: number) => void; readonly onGivenUp: () => void },
): Promise<void> {
	host.queue.work({
		atOnce: host.threads,
		handler: async ({ homeId, photoId }: PhotoTask) => {
			const begun = performance.now();
			const services = await servicesOrGone(host, homeId);
			if (services === null) return;
			const reader = readerOf(services);
			while ((await readPhotoOf(reader, photoId)) === 'changed');
			const { waiting } = await services.store.photos.counts();
			if (waiting === 0) {
				await services.followGrounds();
				await noteGaps(services);
			}
			onRead(Math.round(performance.now() - begun));
		},
		isPassing: isOutOfReach,
		onGivenUp: async ({ homeId, photoId }) => {
			const services = await servicesOrGone(host, homeId);
			if (services === null) return;
			await noteUnread(services, photoId);
			onGivenUp();
		},
	});
}
