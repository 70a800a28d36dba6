import type { CompiledQuery, DatabaseConnection } from 'kysely';

/** Another program may keep the right to write for so long: it takes a large table in, or its disk is slow. */
const PATIENCE_MS = 60_000;
/** Between two tries; a decision takes one or two milliseconds. */
const PAUSE_MS = 4;

/** SQLite's words where somebody else has the right to write (sqlite.org/rescode.html, SQLITE_BUSY). */
const isBusy = (error: unknown): boolean => error instanceof Error && /database is locked/i.test(error.message);

/**
 * A connection that asks again where another program or thread is writing. SQLite's own waiting would stop this thread, and with it every other
 * request. Within a transaction nothing is asked again: it has the right to write from its beginning. `letOthersIn` lends the connection to whoever
 * waits for it, for so many milliseconds at least.
 */
export function patientConnection(
	connection: DatabaseConnection,
	{
		isInTransaction,
		letOthersIn,
	}: { readonly isInTransaction: () => boolean; readonly letOthersIn: (ms: number) => Promise<void> },
): DatabaseConnection {
	return {
		streamQuery: (...words) => connection.streamQuery(...words),
		async executeQuery<R>(query: CompiledQuery) {
			const until = performance.now() + PATIENCE_MS;
			for (;;) {
				try {
					return await connection.executeQuery<R>(query);
				} catch (error) {
					if (!isBusy(error) || isInTransaction() || performance.now() > until) throw error;
				}
				// Not all at the same moment again.
				await letOthersIn(PAUSE_MS * (0.5 + Math.random()));
			}
		},
	};
}
