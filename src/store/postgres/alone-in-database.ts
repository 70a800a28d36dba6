import pg from 'pg';

/**
 * Does some work while no other process of this database does work of the same name; the others wait for their turn. The right to do it ends
 * with its connection, so that a process that is killed gives it back. Rejects where the connection is lost before the work has ended.
 */
export async function aloneInDatabase<T>(connectionString: string, name: string, work: () => Promise<T>): Promise<T> {
	const client = new pg.Client({ connectionString });
	const lost = new Promise<never>((_, reject) => client.on('error', reject));
	// Heard of below; where the work has ended by then nobody waits for it.
	lost.catch(() => {});
	await client.connect();
	try {
		await client.query('select pg_advisory_lock(hashtextextended($1, 0))', [name]);
		return await Promise.race([work(), lost]);
	} finally {
		await client.end();
	}
}
