import { sql } from 'kysely';
import pg from 'pg';
import { afterAll, describe, expect, it, vi } from 'vitest';
import { meaningOfReach } from '../../src/server/hosted/out-of-reach.ts';
import { openDatabase } from '../../src/store/postgres/database.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { startPostgres } from '../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of connections skipped: ${postgres.reason}.`);

describe.skipIf(!postgres.ok)('connections to the database of all homes', async () => {
	if (!postgres.ok) return;
	const { connectionString } = postgres;
	const database = await openDatabase({ connectionString, maxConnections: 3 });
	const operator = new pg.Client({ connectionString });
	await operator.connect();
	afterAll(async () => {
		await operator.end();
		await database.close();
		postgres.stop();
	});
	const homes = Array.from({ length: 12 }, (_, index) => `home-${index}`);
	for (const home of homes)
		await sql`insert into entries (kind, id, body) values ('garment', 'g', ${home})`.execute(database.homeTables(home));

	it('see the rows of the home that asks and no other, whoever had them before and however they came back', async () => {
		const random = seededRandom('told connections');
		const tables = new Map(homes.map((home) => [home, database.homeTables(home)]));
		const wrong: string[] = [];
		async function ask(home: string): Promise<void> {
			const db = tables.get(home)!;
			const look = async (from = db) => {
				const rows = await from.selectFrom('entries').select('body').execute();
				if (rows.length !== 1 || rows[0]!.body !== home) wrong.push(`${home}: ${JSON.stringify(rows)}`);
			};
			const way = Math.floor(random() * 5);
			await look();
			if (way === 0) await look();
			else if (way === 1) await sql`select no_such_column from entries`.execute(db).catch(() => {});
			else if (way === 2) await new Promise(setImmediate);
			else if (way === 3)
				await db
					.transaction()
					.execute(async (trx) => {
						await sql`update entries set body = 'lost'`.execute(trx);
						throw new Error('taken back');
					})
					.catch(() => {});
			else await db.transaction().execute(async (trx) => look(trx));
			await look();
		}
		const one = async () => {
			for (let turn = 0; turn < 60; turn++) await ask(homes[Math.floor(random() * homes.length)]!);
		};
		await Promise.all(Array.from({ length: 12 }, one));
		expect(wrong).toEqual([]);
	});

	it('are told their home once by whoever reads twice', async () => {
		const [mine, other] = [database.homeTables('home-1'), database.homeTables('home-2')];
		const query = vi.spyOn(pg.Client.prototype, 'query');
		const read = async (db: typeof mine) => {
			await db.selectFrom('entries').select('id').execute();
			await db.selectFrom('photos').select('id').execute();
		};
		await Promise.all([mine, other, mine, other, mine, other].map(read));
		const told = query.mock.calls.filter(
			([words]) => typeof words === 'string' && (words as string).startsWith('SET '),
		);
		query.mockRestore();
		expect(told.length).toBeLessThanOrEqual(6);
	});

	it('may be ended by the database between two queries of a transaction: that is told, and the process goes on', async () => {
		const { rows } = await sql<{ body: string }>`select body from entries`.execute(database.homeTables('home-3'));
		expect(rows).toEqual([{ body: 'home-3' }]);
		const changing = database
			.homeTables('home-3')
			.transaction()
			.execute(async (trx) => {
				await sql`update entries set body = 'half'`.execute(trx);
				const { rows } = await sql<{ pid: number }>`select pg_backend_pid() as pid`.execute(trx);
				const { pid } = rows[0]!;
				await operator.query('select pg_terminate_backend($1)', [pid]);
				await vi.waitFor(async () => {
					const there = await operator.query('select from pg_stat_activity where pid = $1', [pid]);
					expect(there.rowCount).toBe(0);
				});
				await sql`select 1`.execute(trx);
			});
		const fault = await changing.catch((error: unknown) => error);
		expect(meaningOfReach(fault)).toMatchObject({ code: 'not-reached' });
		const after = await sql<{ body: string }>`select body from entries`.execute(database.homeTables('home-3'));
		expect(after.rows).toEqual([{ body: 'home-3' }]);
	});
});
