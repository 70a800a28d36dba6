import { setTimeout as pause } from 'node:timers/promises';
import PgBoss from 'pg-boss';
import { aloneInDatabase } from './alone-in-database.ts';
import { type QueueWorker, workThrough } from './queue-worker.ts';

/** One photo of one home that waits to be read. */
export type PhotoTask = { readonly homeId: string; readonly photoId: string };

/** Photos to be read, shared by all servers and readers of one database. */
export type PhotoQueue = {
	/** Queues a photo; false where it is queued already. Survives any process. */
	enqueue(task: PhotoTask): Promise<boolean>;
	/** Takes the waiting photos of a home back out; returns their ids. */
	drop(homeId: string): Promise<string[]>;
	/**
	 * Takes photos in this process until closed, `atOnce` side by side. A task whose handler throws, or whose process ends, is given out again,
	 * three times in all; then `onGivenUp` hears of it, once. Where `isPassing` says of an error that it is nothing of the photo's, it is tried
	 * again later as if it had not been tried.
	 */
	work(settings: {
		readonly atOnce: number;
		readonly handler: (task: PhotoTask) => Promise<void>;
		readonly isPassing: (error: unknown) => boolean;
		readonly onGivenUp: (task: PhotoTask) => Promise<void>;
	}): void;
	/** Photos that wait. */
	waiting(): Promise<number>;
	/** Finishes what is being read, takes no more. */
	close(): Promise<void>;
};

const QUEUE = 'read-photo';
/** Where a task goes that was tried as often as it may be. */
const GIVEN_UP = 'unread-photo';
const SCHEMA = 'dyelot_queue';
const MAKING_QUEUES = 'dyelot queues';

/** Many times the longest reading (the reader gives up by itself before): later, the process that took the task has ended. */
const EXPIRE_SECONDS = 120;
/** How soon an idle worker looks again, and how soon the end of a task's process is noticed after it expired. */
const POLL_MS = 500;
const SUPERVISE_SECONDS = 5;
const RETRIES = 2;
/** How long a photo waits whose home could not be reached. */
const LATER_SECONDS = 5;
/** A process is given so long to finish what it reads when it stops. */
const STOP_WITHIN_MS = 60_000;

/** Starts it and makes its queues; stops it where that fails, so that nothing of it keeps the process alive. */
async function beginQueues(boss: PgBoss): Promise<void> {
	await boss.start();
	try {
		await boss.createQueue(GIVEN_UP);
		// "short": at most one waiting task a photo; one that is being read may be queued again, since its correction may have changed.
		await boss.createQueue(QUEUE, { name: QUEUE, policy: 'short', deadLetter: GIVEN_UP });
	} catch (error) {
		await boss.stop({ graceful: false, wait: true });
		throw error;
	}
}

/** The library gives tasks that were given up a quarter of an hour: a process that ends while it notes one would leave it waiting for so long. */
async function expireAfter(boss: PgBoss, id: string, seconds: number): Promise<void> {
	await boss.getDb().executeSql(
		`update ${SCHEMA}.job set expire_in = make_interval(secs => $1)
		where name = $2 and id = $3`,
		[seconds, GIVEN_UP, id],
	);
}

async function dropWaiting(boss: PgBoss, homeId: string): Promise<string[]> {
	const { rows } = (await boss.getDb().executeSql(
		`select id, data->>'photoId' as photo from ${SCHEMA}.job
		where name = $1 and state in ('created', 'retry') and data->>'homeId' = $2`,
		[QUEUE, homeId],
	)) as { rows: { id: string; photo: string }[] };
	if (rows.length > 0)
		await boss.cancel(
			QUEUE,
			rows.map(({ id }) => id),
		);
	return rows.map(({ photo }) => photo);
}

/**
 * Opens the queue on PostgreSQL; `report` hears of faults in the queue itself and of tasks that failed. `expireSeconds`: when a task whose process is
 * silent is given out again; `laterSeconds`: when one that was put off is.
 */
export async function openPhotoQueue(settings: {
	readonly connectionString: string;
	readonly report: (error: Error) => void;
	readonly expireSeconds?: number;
	readonly laterSeconds?: number;
	readonly maxConnections?: number;
}): Promise<PhotoQueue> {
	const { expireSeconds = EXPIRE_SECONDS, laterSeconds = LATER_SECONDS, maxConnections = 4 } = settings;
	const boss = new PgBoss({
		connectionString: settings.connectionString,
		schema: SCHEMA,
		max: maxConnections,
		schedule: false,
		maintenanceIntervalSeconds: SUPERVISE_SECONDS,
	});
	boss.on('error', settings.report);
	// Each queue is a table: processes that make theirs at the same time lock each other out.
	await aloneInDatabase(settings.connectionString, MAKING_QUEUES, () => beginQueues(boss));
	const workers: QueueWorker[] = [];
	const send = (task: PhotoTask, startAfter: number) =>
		boss.send(QUEUE, task, {
			singletonKey: `${task.homeId}/${task.photoId}`,
			expireInSeconds: expireSeconds,
			retryLimit: RETRIES,
			startAfter,
		});
	return {
		enqueue: async (task) => (await send(task, 0)) !== null,
		drop: (homeId) => dropWaiting(boss, homeId),
		work({ atOnce, handler, isPassing, onGivenUp }) {
			const told = { pollMs: POLL_MS, report: settings.report };
			async function putOff(task: PhotoTask, error: unknown): Promise<boolean> {
				if (!isPassing(error)) return false;
				await send(task, laterSeconds);
				return true;
			}
			for (let place = 0; place < atOnce; place++)
				workers.push(workThrough(boss, QUEUE, { handle: handler, putOff, ...told }));
			const handle = async (task: PhotoTask, id: string) => {
				await expireAfter(boss, id, expireSeconds);
				await onGivenUp(task);
			};
			workers.push(workThrough(boss, GIVEN_UP, { handle, ...told }));
		},
		waiting: () => boss.getQueueSize(QUEUE),
		async close() {
			const stopped = Promise.all(workers.map((worker) => worker.stop()));
			await Promise.race([stopped, pause(STOP_WITHIN_MS, undefined, { ref: false })]);
			await boss.stop({ graceful: false, wait: true });
		},
	};
}
