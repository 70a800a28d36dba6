import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { say } from '../language/speak.ts';
import { createReaderPool, type ReaderPool, readerThreads } from '../photo/readers/pool.ts';
import { writeBackup } from '../store/backup.ts';
import { INCOMING_FOLDER, receiveFile } from '../store/incoming-file.ts';
import { openHome } from '../store/open-home.ts';
import type { Store } from '../store/store.ts';
import { createJudgeBeside } from './beside/judge-beside.ts';
import { workBeside } from './beside/work-beside.ts';
import { createEventHub } from './events.ts';
import { followPhotos } from './follow-photos.ts';
import { judgeHere } from './judging.ts';
import { keepToldPieces } from './keep-told-pieces.ts';
import { noteGaps } from './note-gaps.ts';
import { createPhotoJobs } from './photo-jobs.ts';
import { restoreHome } from './restore-home.ts';
import type { Services } from './services.ts';
import { createSharing, type Sharing } from './sharing.ts';
import { suggestFromPhotos } from './suggest-from-photos.ts';

/** Where the program's home is, and how it works with it. */
export type OpenSettings = {
	/** Folder that holds everything the program remembers. */
	readonly homePath: string;
	/** Let paired devices of the local network in. */
	readonly share: boolean;
	/** Where sentences for the person at the terminal go. */
	readonly log: (sentence: string) => void;
	/** Who reads photos, and is closed with all else; left out: readers of its own. */
	readonly pool?: ReaderPool;
	/** Starts the program anew over an archive that was checked; the home of now goes to `aside`. Left out: nothing is restored while it runs. */
	readonly startAnew?: (aside: string) => void;
};

const openSharing = (store: Store, { log }: OpenSettings, now: () => Date): Promise<Sharing> =>
	createSharing({
		records: store.pairings,
		now: () => now().getTime(),
		report: (error) => log(say('refusals.faultOfDevice', { error: String(error) })),
	});

/** A thread that judges is kept for the next season of the same batch. */
const GONE_AFTER_MS = 1000;

/** Everything that the program does its work with, over one opened home. Photos that waited when it was closed are read now. */
export async function openServices(settings: OpenSettings): Promise<Services & { close(): Promise<void> }> {
	const now = () => new Date();
	const home = await openHome(settings.homePath, { now });
	const { store } = home;
	const pool = settings.pool ?? createReaderPool({ voice: () => 'kept' });
	const events = createEventHub();
	// What nobody asked for. Started only where it is large, and gone soon after.
	const beside = createJudgeBeside({ threads: 1, warmMs: GONE_AFTER_MS });
	const following = followPhotos(store, events, (id) => jobs.enqueue(id));
	const jobs = createPhotoJobs({
		store,
		pool,
		events,
		concurrency: readerThreads(),
		sharedLight: following.sharedLight,
		onRead: async (photo, reading) => {
			await suggestFromPhotos({ store, events }, [photo.id]);
			await keepToldPieces({ store, events }, photo, reading);
			await following.followLight(photo, reading);
		},
		onAllRead: async () => {
			await following.followGroundsRead();
			await noteGaps({ store, events, now, judge: beside.judge });
		},
		report: (error) => settings.log(say('refusals.faultOfPhoto', { error: String(error) })),
	});
	for (const id of await store.photos.waiting()) await jobs.enqueue(id);
	const receive: Services['receive'] = (from) => receiveFile(from, join(settings.homePath, INCOMING_FOLDER));
	return {
		store,
		pool,
		jobs,
		events,
		sharing: settings.share ? await openSharing(store, settings, now) : null,
		judge: judgeHere,
		beside: workBeside(settings.homePath, { events, enqueue: (id) => jobs.enqueue(id) }),
		backup: async (to) => {
			for (const path of await writeBackup(settings.homePath, to))
				settings.log(say('refusals.changedOnDisk', { path }));
		},
		restore: settings.startAnew ? restoreHome({ receive, now }, settings.homePath, settings.startAnew) : null,
		receive,
		findings: home.findings,
		now,
		newId: randomUUID,
		...following,
		close: async () => {
			await jobs.cancelWaiting();
			await jobs.close();
			await pool.close();
			await beside.close();
			await home.close();
		},
	};
}
