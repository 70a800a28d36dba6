import { closeSync, openSync, readFileSync, rmSync, writeSync } from 'node:fs';
import { join } from 'node:path';

/** Another running program holds this home. */
export class HomeInUseError extends Error {}

function isRunning(pid: number): boolean {
	try {
		process.kill(pid, 0);
		return true;
	} catch (error) {
		// Not allowed to signal it: it runs, as somebody else.
		return (error as NodeJS.ErrnoException).code === 'EPERM';
	}
}

/** The process that the lock names, or null where that process is gone (it was killed, and the lock is stale). */
function holderOf(path: string): number | null {
	const pid = Number(readFileSync(path, 'utf8').trim());
	return Number.isInteger(pid) && pid > 0 && pid !== process.pid && isRunning(pid) ? pid : null;
}

/** Takes the home for this process and returns the function that gives it back. Throws `HomeInUseError`. */
export function lockHome(homePath: string): () => void {
	const path = join(homePath, 'in-use');
	for (let attempt = 0; attempt < 2; attempt++) {
		try {
			const file = openSync(path, 'wx');
			writeSync(file, String(process.pid));
			closeSync(file);
			return () => rmSync(path, { force: true });
		} catch (error) {
			if ((error as NodeJS.ErrnoException).code !== 'EEXIST') throw error;
			const holder = holderOf(path);
			if (holder !== null) {
				throw new HomeInUseError(
					`Expected a home that no other program uses; ${homePath} is in use by process ${holder}. Close that Dyelot first, or choose another folder with --home.`,
				);
			}
			rmSync(path, { force: true });
		}
	}
	throw new HomeInUseError(`Expected to take the home ${homePath}; another program was quicker. Try again.`);
}
