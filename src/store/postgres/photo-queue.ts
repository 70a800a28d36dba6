import PgBoss from 'pg-boss';

/** One photo of one home that waits to be read. */
export type PhotoTask = { readonly owner: string; readonly homeId: string; readonly photoId: string };

/** Photos to be read, shared by all servers and workers of one database. */
export type PhotoQueue = {
	/** Queues a photo; false where it is queued already. Survives any process. */
	enqueue(task: PhotoTask): Promise<boolean>;
	/**
	 * Takes photos one after another in this process until closed. A task whose handler throws, or whose process ends, is given out again, three
	 * times in all.
	 */
	work(handler: (task: PhotoTask) => Promise<void>): Promise<void>;
	/** Photos that wait. */
	waiting(): Promise<number>;
	/** Finishes what is being read, takes no more. */
	close(): Promise<void>;
};

const QUEUE = 'read-photo';

/** Many times the longest reading (the reader gives up by itself before): later, the process that took the task has ended. */
const EXPIRE_SECONDS = 120;
/** How soon an idle worker looks again, and how soon the end of a task's process is noticed after it expired. */
const POLL_SECONDS = 0.5;
const SUPERVISE_SECONDS = 5;
const RETRIES = 2;

/** Opens the queue on PostgreSQL; `report` hears of faults in the queue itself. */
export async function openPhotoQueue(settings: {
	readonly connectionString: string;
	readonly report: (error: Error) => void;
}): Promise<PhotoQueue> {
	const boss = new PgBoss({
		connectionString: settings.connectionString,
		schedule: false,
		maintenanceIntervalSeconds: SUPERVISE_SECONDS,
	});
	boss.on('error', settings.report);
	await boss.start();
	// "short": at most one waiting task a photo; one that is being read may be queued again, since its correction may have changed.
	await boss.createQueue(QUEUE, { name: QUEUE, policy: 'short' });
	return {
		async enqueue(task) {
			const id = await boss.send(QUEUE, task, {
				singletonKey: `${task.homeId}/${task.photoId}`,
				expireInSeconds: EXPIRE_SECONDS,
				retryLimit: RETRIES,
			});
			return id !== null;
		},
		async work(handler) {
			await boss.work<PhotoTask>(QUEUE, { batchSize: 1, pollingIntervalSeconds: POLL_SECONDS }, async ([job]) => {
				if (job) await handler(job.data);
			});
		},
		waiting: () => boss.getQueueSize(QUEUE),
		close: () => boss.stop({ graceful: true, wait: true }),
	};
}
