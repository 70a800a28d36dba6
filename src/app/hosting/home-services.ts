import { join } from 'node:path';
import { INCOMING_FOLDER, receiveFile } from '../../store/incoming-file.ts';
import { isHome } from '../../store/postgres/accounts/homes.ts';
import { openHomeStore } from '../../store/postgres/home-store.ts';
import { dropUnusedOutlines } from '../../store/unused-outlines.ts';
import { followPhotos } from '../follow-photos.ts';
import type { Services } from '../services.ts';
import { hostedJobs } from './hosted-jobs.ts';
import type { Shared } from './shared.ts';
import { takeAway } from './take-away.ts';

/** The home was taken away meanwhile. */
export class HomeGoneError extends Error {}

/** What one home of many is worked with. Throws {@link HomeGoneError}. */
export async function openHomeServices(shared: Shared, homeId: string): Promise<Services> {
	const { database, queue, pool, judge, filesOf, workFolder, now, newId } = shared;
	if (!(await isHome(database.accounts, homeId))) throw new HomeGoneError();
	const files = filesOf(homeId);
	const { store, findings } = await openHomeStore(database, homeId, files, now);
	const events = shared.events.of(homeId);
	const jobs = hostedJobs({ homeId, queue, store, events });
	if (shared.queuesWaiting) for (const id of await store.photos.waiting()) await jobs.enqueue(id);
	shared.inBackground(dropUnusedOutlines(database.homeTables(homeId), files, now()));
	return {
		store,
		pool,
		judge,
		jobs,
		events,
		sharing: null,
		restore: null,
		backup: (to) => takeAway({ tables: database.homeTables(homeId), files, workFolder }, to),
		receive: (from) => receiveFile(from, join(workFolder, INCOMING_FOLDER)),
		beside: null,
		findings,
		now,
		newId,
		...followPhotos(store, events, jobs.enqueue),
	};
}
