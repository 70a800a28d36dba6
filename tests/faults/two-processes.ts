import { spawn } from 'node:child_process';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { migrateToNewest } from '../../src/store/migrations/all.ts';
import { closeSqlite, openSqlite } from '../../src/store/sqlite/sqlite-database.ts';
import { putGarments } from '../support/decided.ts';
import { garmentDetails } from '../support/garment-details.ts';
import { startPostgres } from '../support/postgres.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { type Figure, type Figures, noneOf } from './figure.ts';
import { openShared, type SharedDatabase } from './shared-database.ts';

const CHILD = fileURLToPath(new URL('two-processes-child.ts', import.meta.url));

/** Runs one process that adds `count` lines to the same garment, each on what it reads. */
function writeElsewhere(database: SharedDatabase, name: string, count: number): Promise<string> {
	const words = ['--import', 'tsx', CHILD, JSON.stringify(database), name, String(count)];
	const child = spawn(process.execPath, words, { stdio: ['ignore', 'ignore', 'pipe'] });
	let complaints = '';
	child.stderr.on('data', (chunk) => {
		complaints += chunk;
	});
	return new Promise((resolve) => child.once('close', (code) => resolve(code === 0 ? '' : complaints.slice(-400))));
}

/** Two processes change one garment in turn with the other, `each` times; what the garment then lacks is lost. */
async function lostBetween(database: SharedDatabase, each: number): Promise<string[]> {
	const home = await openShared(database);
	await putGarments(home.store, garmentDetails({ id: 'g1', notes: '' }));
	const complaints = await Promise.all(['a', 'b'].map((name) => writeElsewhere(database, name, each)));
	const { notes } = (await home.store.garments.get('g1'))!;
	const decisions = await home.store.decisions(10 * each);
	await home.close();
	const wanted = ['a', 'b'].flatMap((name) => Array.from({ length: each }, (_, index) => `${name}${index}`));
	const there = new Set(notes.split('\n'));
	return [
		...complaints.filter(Boolean),
		...wanted.filter((line) => !there.has(line)).map((line) => `${line} is lost`),
		...(decisions.length === 2 * each + 1 ? [] : [`${decisions.length} decisions are kept`]),
	];
}

const told = (where: string, each: number, lost: readonly string[]): Figure =>
	noneOf(`of ${2 * each} changes of one garment by two processes on ${where}, lost`, lost);

/** Lost updates between two processes on one database. */
export async function twoProcesses(each: number): Promise<Figures> {
	const folder = temporaryFolder();
	const { db, connection } = openSqlite(join(folder, 'shared.sqlite'));
	await migrateToNewest(db);
	closeSqlite(connection);
	const figures = [told('SQLite', each, await lostBetween({ kind: 'sqlite', folder }, each))];
	const postgres = await startPostgres();
	if (!postgres.ok) {
		process.stdout.write(`two processes on PostgreSQL: left out, because ${postgres.reason}\n`);
		return { figures };
	}
	try {
		const { connectionString } = postgres;
		const lost = await lostBetween({ kind: 'postgres', connectionString, folder }, each);
		return { figures: [...figures, told('PostgreSQL', each, lost)] };
	} finally {
		postgres.stop();
	}
}
