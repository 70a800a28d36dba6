import { keptWords } from '../language/kept-sentence.ts';
import { foundIn } from './found-in.ts';
import type { Services } from './services.ts';

/** Queues a photo to be read once more. */
export async function readAgain({ store, jobs }: Services, id: string): Promise<{ queued: true }> {
	await foundIn(store.photos, 'photo')(id);
	await jobs.enqueue(id);
	return { queued: true };
}

/** Stops reading before the photos that still wait; they are kept. */
export async function stopReading({ store, jobs, events }: Services): Promise<{ cancelled: number }> {
	const dropped = await jobs.cancelWaiting();
	for (const id of dropped) {
		await store.photos.saveFailure(id, {
			reason: 'stopped',
			message: keptWords('refusals.readStopped'),
		});
		events.send({ event: 'photo', data: { id, status: 'failed' } });
	}
	return { cancelled: dropped.length };
}
