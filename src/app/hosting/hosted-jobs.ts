import type { PhotoQueue } from '../../store/postgres/photo-queue.ts';
import type { Store } from '../../store/store.ts';
import type { EventHub } from '../events.ts';
import type { PhotoJobs } from '../photo-jobs.ts';

/** The photos of one home that are read by readers elsewhere. */
export function hostedJobs(settings: {
	readonly homeId: string;
	readonly queue: PhotoQueue;
	readonly store: Pick<Store, 'photos'>;
	readonly events: EventHub;
}): PhotoJobs {
	const { homeId, queue, store, events } = settings;
	return {
		async enqueue(photoId) {
			await queue.enqueue({ homeId, photoId });
		},
		cancelWaiting: () => queue.drop(homeId),
		async settled() {
			for (;;) {
				let wake = () => {};
				const heard = new Promise<void>((resolve) => {
					wake = resolve;
				});
				const stop = events.listen(wake);
				// Looked at after listening began: what is read in between is heard.
				const { waiting } = await store.photos.counts();
				if (waiting > 0) await heard;
				stop();
				if (waiting === 0) return;
			}
		},
		close: async () => {},
	};
}
