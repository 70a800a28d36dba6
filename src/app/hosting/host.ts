import { randomUUID } from 'node:crypto';
import { createReaderPool } from '../../photo/readers/pool.ts';
import type { AccountsDatabase } from '../../store/postgres/accounts/tables.ts';
import { openDatabase } from '../../store/postgres/database.ts';
import { type Notices, openNotices } from '../../store/postgres/notices.ts';
import { openPhotoQueue } from '../../store/postgres/photo-queue.ts';
import type { Services } from '../services.ts';
import { openHomeServices } from './home-services.ts';
import { createHostedEvents } from './hosted-events.ts';
import type { HostSettings, Shared } from './shared.ts';

/** Everything that a process works with where many homes are kept. */
export type Host = Shared & {
	readonly accounts: AccountsDatabase;
	/** The services of a home that exists. Who may have them is checked before. */
	homeServices(homeId: string): Promise<Services>;
	/** Forgets a home that is no more, or that was changed from below. */
	forget(homeId: string): void;
	close(): Promise<void>;
};

/** Homes that a process keeps open; one more costs a few kilobytes and two queries. */
const MOST_OPEN = 2000;

/** Homes as they are asked for, the longest unused going first. */
function createOpenHomes(open: (homeId: string) => Promise<Services>) {
	const homes = new Map<string, Promise<Services>>();
	return {
		get(homeId: string): Promise<Services> {
			const known = homes.get(homeId);
			homes.delete(homeId);
			const opening = known ?? open(homeId);
			homes.set(homeId, opening);
			// Tried anew where it failed.
			opening.catch(() => homes.get(homeId) === opening && homes.delete(homeId));
			if (homes.size > MOST_OPEN) homes.delete(homes.keys().next().value!);
			return opening;
		},
		forget: (homeId: string) => void homes.delete(homeId),
		forgetAll: () => homes.clear(),
	};
}

/** Work that no request waits for. */
function createBackground(report: (error: unknown) => void) {
	const going = new Set<Promise<void>>();
	return {
		start(work: Promise<void>): void {
			const done = work.catch(report).finally(() => going.delete(done));
			going.add(done);
		},
		ended: async () => void (await Promise.all(going)),
	};
}

/** Connects to everything; brings the tables up to date. */
export async function openHost(settings: HostSettings): Promise<Host> {
	const { connectionString, report } = settings;
	const database = await openDatabase({
		connectionString,
		...(settings.maxConnections === undefined ? {} : { maxConnections: settings.maxConnections }),
	});
	const queue = await openPhotoQueue({
		connectionString,
		report,
		...(settings.expireSeconds === undefined ? {} : { expireSeconds: settings.expireSeconds }),
	});
	let notices: Notices | null = null;
	const events = createHostedEvents(async (notice) => notices?.tell(notice), report);
	const pool = createReaderPool({ threads: settings.threads });
	const background = createBackground(report);
	const own = { inBackground: background.start, now: () => new Date(), newId: randomUUID };
	const shared: Shared = { ...settings, database, queue, pool, events, ...own };
	const homes = createOpenHomes((homeId) => openHomeServices(shared, homeId));
	const onGap = () => {
		events.missed();
		// Photos that came in while the database was out of reach may not be queued: each home, opened anew, queues what waits.
		homes.forgetAll();
	};
	notices = await openNotices({ connectionString, onNotice: events.heard, onGap, report });
	return {
		...shared,
		accounts: database.accounts,
		homeServices: homes.get,
		forget: homes.forget,
		close: async () => {
			await queue.close();
			await pool.close();
			await notices?.close();
			await background.ended();
			await database.close();
		},
	};
}
