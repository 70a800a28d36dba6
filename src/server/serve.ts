import { randomUUID } from 'node:crypto';
import { join } from 'node:path';
import { createEventHub } from '../app/events.ts';
import { createPhotoJobs } from '../app/photo-jobs.ts';
import { followSameLight } from '../app/same-light-jobs.ts';
import type { Services } from '../app/services.ts';
import { createSharing, networkAddresses } from '../app/sharing.ts';
import { suggestFromPhotos } from '../app/suggest-from-photos.ts';
import { createReaderPool, readerThreads } from '../photo/readers/pool.ts';
import { writeBackup } from '../store/backup.ts';
import { INCOMING_FOLDER, receiveFile } from '../store/incoming-file.ts';
import { openHome } from '../store/open-home.ts';
import { buildApp } from './app.ts';
import { listen } from './listen.ts';

export type ServeSettings = {
	/** Folder that holds everything the program remembers. */
	readonly homePath: string;
	/** 0 = any free port. */
	readonly port: number;
	/** Let paired devices of the local network in. */
	readonly share: boolean;
	/** Where sentences for the person at the terminal go. */
	readonly log: (sentence: string) => void;
};

export type RunningServer = { readonly address: string; readonly services: Services; close(): Promise<void> };

/** Everything the routes need, over one opened home. */
export async function openServices(
	settings: Omit<ServeSettings, 'port'>,
): Promise<Services & { close(): Promise<void> }> {
	const now = () => new Date();
	const home = await openHome(settings.homePath, { now });
	const pool = createReaderPool({});
	const events = createEventHub();
	const sameLight = followSameLight(home.store);
	const followLight: Services['followLight'] = async (before, reading) => {
		const { relit, toRead } = await sameLight.followReading(before, reading);
		for (const id of toRead) jobs.enqueue(id);
		for (const id of relit) events.send({ event: 'photo', data: { id, status: 'read' } });
	};
	const jobs = createPhotoJobs({
		store: home.store,
		pool,
		events,
		concurrency: readerThreads(),
		sharedLight: sameLight.sharedLight,
		onRead: async (photo, reading) => {
			await suggestFromPhotos(home.store, [photo.id]);
			await followLight(photo, reading);
		},
		report: (error) => settings.log(`A photo could not be read because of a fault in the program: ${String(error)}`),
	});
	for (const id of await home.store.photos.waiting()) jobs.enqueue(id);
	return {
		store: home.store,
		pool,
		jobs,
		events,
		sharing: settings.share
			? await createSharing({
					records: home.store.pairings,
					now: () => now().getTime(),
					report: (error) => settings.log(`A note on a paired device could not be written: ${String(error)}`),
				})
			: null,
		backup: async (to) => {
			for (const path of await writeBackup(settings.homePath, to))
				settings.log(
					`Expected "${path}" as it was added; its bytes have changed on the disk. The backup holds it as it is.`,
				);
		},
		receive: (from) => receiveFile(from, join(settings.homePath, INCOMING_FOLDER)),
		findings: home.findings,
		now,
		newId: randomUUID,
		sharedLight: sameLight.sharedLight,
		followLight,
		close: async () => {
			jobs.cancelWaiting();
			await jobs.close();
			await pool.close();
			await home.close();
		},
	};
}

/** Opens the home, listens, and says where. Stops cleanly on the terminal's interrupt. */
export async function serve(settings: ServeSettings): Promise<RunningServer> {
	const services = await openServices(settings);
	for (const finding of services.findings) settings.log(finding);
	const app = await buildApp(services, { logger: true });
	const close = async () => {
		await app.close();
		await services.close();
	};
	try {
		await listen(app, settings.port, settings.share ? '0.0.0.0' : '127.0.0.1');
	} catch (error) {
		await close();
		throw error;
	}
	const { port } = app.server.address() as { port: number };
	const address = `http://localhost:${port}/`;
	settings.log(`Dyelot is ready: open ${address} in a browser. Your wardrobe is kept in ${settings.homePath}.`);
	if (services.sharing) {
		const addresses = networkAddresses().map((number) => `http://${number}:${port}/`);
		settings.log(
			addresses.length > 0
				? `Shared on the local network: open ${addresses.join(' or ')} on a phone. The code for it is shown at ${address}devices.`
				: 'Expected a local network to share on; this computer is on none.',
		);
		settings.log(`Code for a phone, valid for ten minutes: ${services.sharing.code().code}`);
	}
	let stopping = false;
	for (const signal of ['SIGINT', 'SIGTERM'] as const) {
		process.once(signal, () => {
			if (stopping) return;
			stopping = true;
			close().then(
				() => process.exit(0),
				(error: unknown) => {
					settings.log(`Stopping did not go cleanly: ${String(error)}`);
					process.exit(1);
				},
			);
		});
	}
	return { address, services, close };
}
