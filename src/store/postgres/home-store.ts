import { sql, type Transaction } from 'kysely';
import { emptyOldBin } from '../bin.ts';
import { misshapenAside, setMisshapenAside } from '../check-rows.ts';
import type { PhotoFiles } from '../photo-files.ts';
import type { Tables } from '../schema.ts';
import { sqlStore } from '../sql-store.ts';
import type { Store } from '../store.ts';
import type { HostedDatabase } from './database.ts';

/** Decides one after the other with all programs that have this home open. */
const turnsOf = (homeId: string) => async (trx: Transaction<Tables>) => {
	await sql`select pg_advisory_xact_lock(hashtextextended(${`dyelot home ${homeId}`}, 0))`.execute(trx);
};

/** How long a home tells what was set aside in it: whichever program found it, all say it, and nobody reads a terminal. */
const TOLD_MS = 30 * 24 * 3600 * 1000;

/** A home of many: `findings` = what was found amiss lately, one sentence each; empty when all is well. */
export type HomeOfMany = { readonly store: Store; readonly findings: readonly string[] };

/** Opens a home that is there; closing the store leaves the database open. Who may ask for it is checked before. */
export async function openHomeStore(
	database: Pick<HostedDatabase, 'homeTables'>,
	homeId: string,
	files: PhotoFiles,
	now: () => Date,
): Promise<HomeOfMany> {
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
	const findings = await misshapenAside(db, new Date(now().getTime() - TOLD_MS).toISOString());
	return { store: { ...sqlStore(db, files, now, takeTurn), close: async () => {} }, findings };
}
