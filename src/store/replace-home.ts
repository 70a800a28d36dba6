import { existsSync } from 'node:fs';
import { rename, rm } from 'node:fs/promises';
import { dirname, resolve } from 'node:path';
import { syncFolder } from './durable-write.ts';
import { type Restored, restoreBackup } from './restore.ts';

/** Where a checked archive waits, beside the home, to take its place. */
const waitingFolder = (homePath: string): string => `${resolve(homePath)}.restored`;

/** Unpacks an archive beside the home and checks it; the home is not touched. Throws `BadArchiveError`. */
export async function prepareHome(archive: string, homePath: string, now: () => Date): Promise<Restored> {
	await rm(waitingFolder(homePath), { recursive: true, force: true });
	return restoreBackup(archive, waitingFolder(homePath), now);
}

/** A folder beside the home, named for the moment, that is not there yet. */
export function asideFolder(homePath: string, at: Date): string {
	const moment = at.toISOString().slice(0, 16).replace('T', '-').replace(':', '');
	const path = `${resolve(homePath)}-before-${moment}`;
	for (let turn = 1; ; turn++) {
		const free = turn === 1 ? path : `${path}-${turn}`;
		if (!existsSync(free)) return free;
	}
}

/** Lets the waiting home take the place of the one that is there, which is kept as `aside`. No program may use either. */
export async function replaceHome(homePath: string, aside: string): Promise<void> {
	await rename(resolve(homePath), aside);
	await rename(waitingFolder(homePath), resolve(homePath));
	await syncFolder(dirname(resolve(homePath)));
}

/** Goes back to the home that was set aside, where the one in its place cannot be opened; that one waits again. */
export async function putBack(homePath: string, aside: string): Promise<void> {
	await rename(resolve(homePath), waitingFolder(homePath));
	await rename(aside, resolve(homePath));
	await syncFolder(dirname(resolve(homePath)));
}

/** Ends what a stop between the two steps of {@link replaceHome} left: no home, and one that waits. */
export async function finishReplacing(homePath: string): Promise<void> {
	if (!existsSync(resolve(homePath)) && existsSync(waitingFolder(homePath)))
		await rename(waitingFolder(homePath), resolve(homePath));
}
