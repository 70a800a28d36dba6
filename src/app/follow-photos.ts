import type { Store } from '../store/store.ts';
import type { EventHub } from './events.ts';
import { followGrounds as bringIntoAgreement } from './grounds.ts';
import type { PhotoJobs } from './photo-jobs.ts';
import { followSameLight } from './same-light-jobs.ts';
import type { Services } from './services.ts';

/** What follows from a photo for those that share its light or its ground, and how the open pages hear of it. */
export function followPhotos(
	store: Store,
	events: EventHub,
	enqueue: PhotoJobs['enqueue'],
): Pick<Services, 'sharedLight' | 'followLight' | 'followGrounds'> & {
	/** Brings grounds into agreement where a photo read since the last time shows one, or showed one before. */
	followGroundsRead(): Promise<void>;
} {
	const sameLight = followSameLight(store);
	let groundsRead = false;
	const tellRead = (ids: readonly string[]) => {
		for (const id of ids) events.send({ event: 'photo', data: { id, status: 'read' } });
	};
	const followGrounds = async () => tellRead(await bringIntoAgreement(store, sameLight));
	return {
		sharedLight: sameLight.sharedLight,
		async followLight(before, reading) {
			if (before.reading?.ground || reading.ground) groundsRead = true;
			const { relit, toRead } = await sameLight.followReading(before, reading);
			for (const id of toRead) await enqueue(id);
			tellRead(relit);
		},
		followGrounds,
		async followGroundsRead() {
			if (!groundsRead) return;
			groundsRead = false;
			await followGrounds();
		},
	};
}
