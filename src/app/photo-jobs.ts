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

type QueueWork = {
	readonly concurrency: number;
	readonly work: (id: string) => Promise<void>;
	readonly onAllDone: () => Promise<void>;
	readonly report: (error: unknown) => void;
};

/** Works through ids, `concurrency` at a time, and runs `onAllDone` once whenever the last of them is done. */
function createIdQueue({ concurrency, work, onAllDone, report }: QueueWork) {
	const waiting = new Set<string>();
	const running = new Set<Promise<void>>();
	let idleWaiters: (() => void)[] = [];
	let closed = false;
	/** Something was done since `onAllDone` last ran. */
	let didSome = false;

	function begin(work: Promise<void>): void {
		const job: Promise<void> = work.catch(report).finally(() => {
			running.delete(job);
			advance();
		});
		running.add(job);
	}

	function advance(): void {
		while (!closed && running.size < concurrency && waiting.size > 0) {
			const id = waiting.values().next().value!;
			waiting.delete(id);
			didSome = true;
			begin(work(id));
		}
		if (running.size === 0 && waiting.size === 0 && didSome && !closed) {
			didSome = false;
			begin(onAllDone());
		}
		if (running.size === 0 && (waiting.size === 0 || closed)) {
			for (const wake of idleWaiters) wake();
			idleWaiters = [];
		}
	}

	return {
		waiting,
		advance,
		settled: () =>
			new Promise<void>((resolve) => {
				idleWaiters.push(resolve);
				advance();
			}),
		/** Begins nothing more. */
		close: () => {
			closed = true;
		},
	};
}

/** Photo jobs of this process: what waits is kept in memory, and begun anew from the store at the next start. */
export function createPhotoJobs(services: JobServices): PhotoJobs {
	const { waiting, advance, settled, close } = createIdQueue({
		concurrency: services.concurrency,
		report: services.report,
		onAllDone: services.onAllRead,
		async work(id) {
			try {
				if ((await readPhotoOf(services, id)) === 'changed') waiting.add(id);
			} catch (error) {
				services.report(error);
				await noteUnread(services, id);
			}
		},
	});
	return {
		async enqueue(photoId) {
			waiting.add(photoId);
			advance();
		},
		async cancelWaiting() {
			const dropped = [...waiting];
			waiting.clear();
			return dropped;
		},
		settled,
		async close() {
			close();
			await settled();
		},
	};
}
