import { join } from 'node:path';
import { DatabaseSync } from '@photostructure/sqlite';
import { say } from '../language/speak.ts';

/** Name of the file that the lock is taken on. */
export const LOCK_FILE = 'home.lock';

/** Another running program holds this home. */
export class HomeInUseError extends Error {}

const isHeld = (error: unknown): boolean => error instanceof Error && /database is locked|busy/i.test(error.message);

/**
 * Takes the home for this program and returns the function that gives it back. Throws `HomeInUseError`.
 * The lock is one of the operating system's, taken by SQLite on an empty file: it goes with the program however that ends, so a kill or
 * a power cut never leaves a home that seems to be in use, as a noted process number would.
 */
export function lockHome(homePath: string): () => void {
	const lock = new DatabaseSync(join(homePath, LOCK_FILE));
	try {
		lock.exec('BEGIN EXCLUSIVE');
	} catch (error) {
		lock.close();
		if (!isHeld(error)) throw error;
		throw new HomeInUseError(say('home.locked', { path: homePath }));
	}
	return () => lock.close();
}
