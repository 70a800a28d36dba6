import { randomUUID } from 'node:crypto';
import { createReaderPool, readerThreads } from '../../photo/readers/pool.ts';
import type { AccountsDatabase } from '../../store/postgres/accounts/tables.ts';
import { openDatabase } from '../../store/postgres/database.ts';
import { type Notices, openNotices } from '../../store/postgres/notices.ts';
import { openPhotoQueue } from '../../store/postgres/photo-queue.ts';
import { createJudgeBeside } from '../beside/judge-beside.ts';
import type { Services } from '../services.ts';
import { openHomeServices } from './home-services.ts';
import { createHostedEvents } from './hosted-events.ts';
import type { HostSettings, Shared } from './shared.ts';
import { clearWorkFolder } from './work-folder.ts';

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
			const opened = homes.get(homeId);
			homes.delete(homeId);
			const opening = opened ?? open(homeId);
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

/** Work that no request waits for; closed once all of it has ended. */
function createBackground(report: (error: unknown) => void) {
	const going = new Set<Promise<void>>();
	return {
		start(work: Promise<void>): void {
			const done = work.catch(report).finally(() => going.delete(done));
			going.add(done);
		},
		close: async () => void (await Promise.all(going)),
	};
}

type Part = { close(): Promise<void> };

/** What was opened, closed again in the other order. */
async function closeAll(opened: readonly Part[]): Promise<void> {
	for (const one of opened.toReversed()) await one.close();
}

/** Connects to everything; brings the tables up to date. Where one part cannot be opened, those before it are closed. */
export async function openHost(settings: HostSettings): Promise<Host> {
	const opened: Part[] = [];
	const kept = <T extends Part>(part: T): T => {
		opened.push(part);
		return part;
	};
	try {
		const parts = await openParts(settings, kept);
		return { ...parts, close: () => closeAll(opened) };
	} catch (error) {
		await closeAll(opened);
		throw error;
	}
}

async function openParts(settings: HostSettings, kept: <T extends Part>(part: T) => T): Promise<Omit<Host, 'close'>> {
	const { connectionString, report, maxConnections, expireSeconds } = settings;
	const database = kept(
		await openDatabase({ connectionString, ...(maxConnections === undefined ? {} : { maxConnections }) }),
	);
	const background = kept(createBackground(report));
	let notices: Notices | null = null;
	const events = createHostedEvents(async (notice) => notices?.tell(notice), report);
	const homes = createOpenHomes((homeId) => openHomeServices(shared, homeId));
	const onGap = () => {
		events.missed();
		// Photos that came in while the database was out of reach may not be queued: each home, opened anew, queues what waits.
		homes.forgetAll();
	};
	notices = kept(await openNotices({ connectionString, onNotice: events.heard, onGap, report }));
	const pool = kept(createReaderPool({ threads: settings.threads, voice: () => 'kept' }));
	const { judge } = kept(createJudgeBeside({ threads: readerThreads() }));
	// Last, to be closed first: it finishes what is being read, which the others are needed for.
	const queue = kept(
		await openPhotoQueue({ connectionString, report, ...(expireSeconds === undefined ? {} : { expireSeconds }) }),
	);
	const own = { inBackground: background.start, now: () => new Date(), newId: randomUUID };
	background.start(clearWorkFolder(settings.workFolder, own.now()));
	const shared: Shared = { ...settings, database, queue, pool, judge, events, ...own };
	return { ...shared, accounts: database.accounts, homeServices: homes.get, forget: homes.forget };
}
