import pg from 'pg';

/**
 * Does some work while no other process of this database does work of the same name; the others wait for their turn. The right to do it ends
 * with its connection, so that a process that is killed gives it back.
 */
export async function aloneInDatabase<T>(connectionString: string, name: string, work: () => Promise<T>): Promise<T> {
	const client = new pg.Client({ connectionString });
	await client.connect();
	try {
		await client.query('select pg_advisory_lock(hashtextextended($1, 0))', [name]);
		return await work();
	} finally {
		await client.end();
	}
}
