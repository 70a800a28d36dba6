import { sql } from 'kysely';
import type { AccountsDatabase } from './tables.ts';

/**
 * Counts one more try under a key, anew where the last count began before `since`; returns how many there are now. All processes count together.
 * Counts of others that began before then are forgotten.
 */
export async function countTry(
	db: AccountsDatabase,
	key: string,
	{ since, now }: { readonly since: string; readonly now: string },
): Promise<number> {
	await db.deleteFrom('tries').where('since', '<', since).where('key', '!=', key).execute();
	const { count } = await db
		.insertInto('tries')
		.values({ key, count: 1, since: now })
		.onConflict((conflict) =>
			conflict.column('key').doUpdateSet({
				count: sql<number>`case when tries.since < ${since} then 1 else tries.count + 1 end`,
				since: sql<string>`case when tries.since < ${since} then ${now} else tries.since end`,
			}),
		)
		.returning('count')
		.executeTakeFirstOrThrow();
	return count;
}

/** Forgets the tries under a key: the last one was right. */
export async function forgetTries(db: AccountsDatabase, key: string): Promise<void> {
	await db.deleteFrom('tries').where('key', '=', key).execute();
}
