import type { ReaderPool } from '../../photo/readers/pool.ts';
import type { PhotoFiles } from '../../store/photo-files.ts';
import type { HostedDatabase } from '../../store/postgres/database.ts';
import type { PhotoQueue } from '../../store/postgres/photo-queue.ts';
import type { Judge } from '../judging.ts';
import type { HostedEvents } from './hosted-events.ts';

/** Where many homes are kept, and how this process works with them. */
export type HostSettings = {
	/** With its password, if it has one: never shown. */
	readonly connectionString: string;
	/** Where the photos of a home lie. */
	readonly filesOf: (homeId: string) => PhotoFiles;
	/** Folder of this machine for files on their way. */
	readonly workFolder: string;
	/** Queue the photos that wait when a home is opened: whoever took them in may have ended before it could. */
	readonly queuesWaiting: boolean;
	/** Photos that this process reads side by side. */
	readonly threads: number;
	/** Hears of faults that no request is told of. */
	readonly report: (error: unknown) => void;
	/** Connections to the database that this process keeps at most, beside a few of the queue. */
	readonly maxConnections?: number;
	/** When a photo whose reader is silent is given to another, in seconds. */
	readonly expireSeconds?: number;
};

/** What is shared by all homes that this process has open. */
export type Shared = HostSettings & {
	readonly database: HostedDatabase;
	readonly queue: PhotoQueue;
	readonly pool: ReaderPool;
	readonly judge: Judge;
	readonly events: HostedEvents;
	/** Lets work go on that no request waits for; its faults are reported, and closing waits for it. */
	readonly inBackground: (work: Promise<void>) => void;
	readonly now: () => Date;
	readonly newId: () => string;
};
