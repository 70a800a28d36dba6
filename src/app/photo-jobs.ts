import { say } from '../language/speak.ts';
import type { ReaderPool, ReadSource } from '../photo/readers/pool.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import type { Light } from '../wardrobe/words/light.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { EventHub } from './events.ts';

/** Reads waiting photos one after another as the pool has room, and tells the open pages. */
export type PhotoJobs = {
	/** Queues a photo; a photo already queued is not queued twice. Queued when it resolves. */
	enqueue(photoId: string): Promise<void>;
	/** Drops everything not yet begun; returns those ids. They stay stored and can be read later. */
	cancelWaiting(): Promise<string[]>;
	/** Resolves when nothing is queued or being read. */
	settled(): Promise<void>;
	close(): Promise<void>;
};

type JobServices = {
	readonly store: Store;
	readonly pool: ReaderPool;
	readonly events: EventHub;
	/** Called after a reading is stored (kind suggestions, same-light groups); may enqueue more. */
	readonly onRead: (photo: PhotoRecord, reading: Reading) => Promise<void>;
	/** Called once all that waited is read. */
	readonly onAllRead: () => Promise<void>;
	/** The light that the photo shares with others, or null. */
	readonly sharedLight: (photo: PhotoRecord) => Promise<Light | null>;
	readonly report: (error: unknown) => void;
	readonly concurrency: number;
};

export function createPhotoJobs(services: JobServices): PhotoJobs {
	const { store, pool, events } = services;
	const queue = new Set<string>();
	const running = new Set<Promise<void>>();
	let idleWaiters: (() => void)[] = [];
	let closed = false;
	/** Something was read since all was last brought into agreement. */
	let readSome = false;

	async function readOne(id: string): Promise<void> {
		const photo = await store.photos.get(id);
		if (!photo) return;
		const source: ReadSource = (await store.photos.originalPath(id)) ?? (await store.photos.original(id));
		const mask = photo.correction.mask ? await store.photos.derived(id, 'mask') : null;
		const result = await pool.read(source, {
			correction: photo.correction,
			sharedLight: await services.sharedLight(photo),
			derived: true,
			...(mask ? { mask } : {}),
		});
		// The correction may have changed while the photo was being read: that newer state is queued again and wins.
		const latest = await store.photos.get(id);
		if (latest && latest.version !== photo.version) return void queue.add(id);
		if (result.ok) {
			await store.photos.saveReading(id, result.reading, result.derived);
			await services.onRead(photo, result.reading);
			events.send({ event: 'photo', data: { id, status: 'read' } });
		} else {
			await store.photos.saveFailure(id, { reason: result.reason, message: result.message });
			events.send({ event: 'photo', data: { id, status: 'failed' } });
		}
	}

	function begin(work: Promise<void>): void {
		const job: Promise<void> = work.catch(services.report).finally(() => {
			running.delete(job);
			advance();
		});
		running.add(job);
	}

	function advance(): void {
		while (!closed && running.size < services.concurrency && queue.size > 0) {
			const id = queue.values().next().value!;
			queue.delete(id);
			readSome = true;
			begin(
				readOne(id).catch(async (error: unknown) => {
					services.report(error);
					const message = say('refusals.readFault');
					await store.photos.saveFailure(id, { reason: 'internal', message });
					events.send({ event: 'photo', data: { id, status: 'failed' } });
				}),
			);
		}
		if (running.size === 0 && queue.size === 0 && readSome && !closed) {
			readSome = false;
			begin(services.onAllRead());
		}
		if (running.size === 0 && (queue.size === 0 || closed)) {
			for (const wake of idleWaiters) wake();
			idleWaiters = [];
		}
	}

	const settled = () =>
		new Promise<void>((resolve) => {
			idleWaiters.push(resolve);
			advance();
		});

	return {
		async enqueue(photoId) {
			queue.add(photoId);
			advance();
		},
		async cancelWaiting() {
			const dropped = [...queue];
			queue.clear();
			return dropped;
		},
		settled,
		async close() {
			closed = true;
			await settled();
		},
	};
}
