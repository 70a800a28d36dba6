import { createReaderPool, type ReaderPool } from '../../src/photo/readers/pool.ts';

let readers: ReaderPool | null = null;

/**
 * Readers of photos that all applications of a test worker share: starting them takes longer than the few photos that a test has read. They end with the
 * worker, not with an application.
 */
export function sharedReaders(): ReaderPool {
	readers ??= createReaderPool({ voice: () => 'kept' });
	const { read } = readers;
	return { read, close: async () => {} };
}
