import { noteUnread, type PhotoReader, readPhotoOf } from './read-photo-of.ts';

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

type JobServices = PhotoReader & {
	/** Called once all that waited is read. */
	readonly onAllRead: () => Promise<void>;
	readonly report: (error: unknown) => void;
	readonly concurrency: number;
};

export function createPhotoJobs(services: JobServices): PhotoJobs {
	const queue = new Set<string>();
	const running = new Set<Promise<void>>();
	let idleWaiters: (() => void)[] = [];
	let closed = false;
	/** Something was read since all was last brought into agreement. */
	let readSome = false;

	async function readOne(id: string): Promise<void> {
		if ((await readPhotoOf(services, id)) === 'changed') queue.add(id);
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
					await noteUnread(services, id);
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
