import pg from 'pg';
import { HOME_SETTING } from './apart.ts';

/** Which home each connection was told last. */
export type ToldLast = WeakMap<pg.PoolClient, string>;

/**
 * Connections of the pool that see the rows of one home. Each is told that home before it is handed out, unless it was the last that it was told.
 * One that is given back stays with its home for a moment, until all that waited for its answer has gone on: whoever reads twice reads on with it, and
 * it is told once.
 */
export function connectionsOf(pool: pg.Pool, homeId: string, toldLast: ToldLast) {
	/** Connections that may be read on with, and how each is given back to the pool. */
	const kept = new Map<pg.PoolClient, pg.PoolClient['release']>();

	async function tell(client: pg.PoolClient): Promise<void> {
		if (toldLast.get(client) === homeId) return;
		toldLast.delete(client);
		// As one message: with values apart it takes four, and nearly half as long again.
		await client.query(`SET ${HOME_SETTING} TO ${pg.escapeLiteral(homeId)}`);
		toldLast.set(client, homeId);
	}
	function giveBack(client: pg.PoolClient): void {
		const release = kept.get(client);
		kept.delete(client);
		release?.();
	}
	function keepOnRelease(client: pg.PoolClient): void {
		const { release } = client;
		client.release = (fault) => {
			if (fault) return release(fault);
			kept.set(client, release);
			// After all promises that are settled by now have been heard (Node, "process.nextTick versus queueMicrotask").
			process.nextTick(giveBack, client);
		};
	}
	return {
		async connect(): Promise<pg.PoolClient> {
			for (const client of kept.keys()) {
				kept.delete(client);
				return client;
			}
			const client = await pool.connect();
			try {
				await tell(client);
			} catch (error) {
				client.release(error as Error);
				throw error;
			}
			keepOnRelease(client);
			return client;
		},
		end: async () => {},
	};
}
