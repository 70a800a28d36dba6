import type { Readable } from 'node:stream';
import type { ReaderPool } from '../photo/readers/pool.ts';
import type { IncomingFile } from '../store/incoming-file.ts';
import type { PhotoRecord, Store } from '../store/store.ts';
import type { Light } from '../wardrobe/words/light.ts';
import type { Reading } from '../wardrobe/words/reading.ts';
import type { LargeWork } from './beside/large-work.ts';
import type { EventHub } from './events.ts';
import type { Judge } from './judging.ts';
import type { PhotoJobs } from './photo-jobs.ts';
import type { RestoreHome } from './restore-home.ts';
import type { Sharing } from './sharing.ts';

/** What the routes work with. Clock and ids come from here, so that tests can fix them. */
export type Services = {
	readonly store: Store;
	readonly pool: ReaderPool;
	readonly jobs: PhotoJobs;
	readonly events: EventHub;
	/** null unless started with --share. */
	readonly sharing: Sharing | null;
	/** Does large work in a thread of its own and gives its answer; null where the store is not on local disk. */
	readonly beside: ((work: LargeWork) => Promise<unknown>) | null;
	/** Works out what is asked of a season; where many share the program, what is large in a thread. */
	readonly judge: Judge;
	/** Writes the whole home as one archive; null where the store is not on local disk. */
	readonly backup: ((to: NodeJS.WritableStream) => Promise<void>) | null;
	/** Goes back to an archive; null where that cannot be done while the program runs. */
	readonly restore: RestoreHome | null;
	/** Takes a file in as it comes, before anything is known of it. */
	readonly receive: (from: Readable) => Promise<IncomingFile>;
	/** What start-up found and mended. */
	readonly findings: readonly string[];
	readonly now: () => Date;
	readonly newId: () => string;
	/** The light that the photo shares with others, or null. */
	readonly sharedLight: (photo: PhotoRecord) => Promise<Light | null>;
	/** Puts right the photos that share a light with one whose reading changed; `before` is it as it was. */
	readonly followLight: (before: PhotoRecord, reading: Reading) => Promise<void>;
	/** Brings the photos of each ground into agreement; by itself done once all that waited is read. */
	readonly followGrounds: () => Promise<void>;
};

/** The clock's day as an ISO date in local time: what the user calls today. */
export function todayOf(services: Pick<Services, 'now'>): string {
	const now = services.now();
	const two = (n: number) => String(n).padStart(2, '0');
	return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
