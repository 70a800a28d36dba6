import { setTimeout as pause } from 'node:timers/promises';
import type PgBoss from 'pg-boss';

/** Takes tasks of a queue until stopped. */
export type QueueWorker = {
	/** Finishes the task it has, takes no more. */
	stop(): Promise<void>;
};

/**
 * Works through a queue, one task after another, and looks again after `pollMs` where none waits or one failed. The library's own workers let the process
 * end where the database is away just as a task is done. Here that is told to `report`, like whatever `handle` throws, and the task is given out again
 * once its time is over. `putOff` takes over a task that failed for a reason that passes by itself; it says whether it did.
 */
export function workThrough<Task extends object>(
	boss: PgBoss,
	queue: string,
	settings: {
		readonly handle: (task: Task, id: string) => Promise<void>;
		readonly putOff?: (task: Task, error: unknown) => Promise<boolean>;
		readonly pollMs: number;
		readonly report: (error: Error) => void;
	},
): QueueWorker {
	const { handle, putOff = async () => false, pollMs, report } = settings;
	const stopping = new AbortController();
	/** Whether another may wait. */
	const takeOne = async (): Promise<boolean> => {
		const [job] = await boss.fetch<Task>(queue);
		if (!job) return false;
		try {
			await handle(job.data, job.id);
		} catch (error) {
			report(error as Error);
			if (await putOff(job.data, error)) await boss.complete(queue, job.id);
			else await boss.fail(queue, job.id, error as Error);
			return false;
		}
		await boss.complete(queue, job.id);
		return true;
	};
	const work = async () => {
		while (!stopping.signal.aborted) {
			const mayWait = await takeOne().catch((error: Error) => {
				report(error);
				return false;
			});
			// Ended early by `stop`, which is no fault.
			if (!mayWait) await pause(pollMs, undefined, { signal: stopping.signal }).catch(() => {});
		}
	};
	const ended = work();
	return {
		async stop() {
			stopping.abort();
			await ended;
		},
	};
}
