import { sql, type Transaction } from 'kysely';
import { emptyOldBin } from '../bin.ts';
import { setMisshapenAside } from '../check-rows.ts';
import type { PhotoFiles } from '../photo-files.ts';
import type { Tables } from '../schema.ts';
import { sqlStore } from '../sql-store.ts';
import type { Store } from '../store.ts';
import type { HostedDatabase } from './database.ts';

/** Decides one after the other with all programs that have this home open. */
const turnsOf = (homeId: string) => async (trx: Transaction<Tables>) => {
	await sql`select pg_advisory_xact_lock(hashtextextended(${`dyelot home ${homeId}`}, 0))`.execute(trx);
};

/** Opens a home that is there; closing the store leaves the database open. Who may ask for it is checked before. */
export async function openHomeStore(
	database: Pick<HostedDatabase, 'homeTables'>,
	homeId: string,
	files: PhotoFiles,
	now: () => Date,
): Promise<Store> {
	const db = database.homeTables(homeId);
	const takeTurn = turnsOf(homeId);
	await db
		.insertInto('revisions')
		.values({ id: 1, newest: 0 })
		.onConflict((conflict) => conflict.column('id').doNothing())
		.execute();
	await emptyOldBin(db, now());
	await db.transaction().execute(async (trx) => {
		await takeTurn(trx);
		await setMisshapenAside(trx, now().toISOString());
	});
	return { ...sqlStore(db, files, now, takeTurn), close: async () => {} };
}
