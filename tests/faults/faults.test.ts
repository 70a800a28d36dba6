import { afterAll, describe, expect, it } from 'vitest';
import { textOfTable } from '../../bench/table.ts';
import { damagedPages } from './damaged-pages.ts';
import { damagedPhotos } from './damaged-photos.ts';
import type { Figures } from './figure.ts';
import { fullDisk } from './full-disk.ts';
import { halfDecisions } from './half-decisions.ts';
import { hostedDrills } from './hosted-drills.ts';
import { hostileRequests } from './hostile-requests.ts';
import { largeTables } from './large-tables.ts';
import { leftBehind } from './left-behind.ts';
import { manyClients } from './many-clients.ts';
import { manyPhotos } from './many-photos.ts';
import { serverKills } from './server-kills.ts';
import { slowDisk } from './slow-disk.ts';
import { storeKills } from './store-kills.ts';
import { strangers } from './strangers.ts';
import { twoProcesses } from './two-processes.ts';

/** `npm run faults` asks for the long form; every `npm test` runs the short one of the same code. */
const LONG = process.env.DYELOT_FAULTS === 'long';
const HOURS_MS = 2 * 3600 * 1000;

const sections: readonly (readonly [string, () => Promise<Figures>])[] = [
	['a program killed at every step of its work', () => storeKills(LONG ? 580 : 6)],
	['decisions killed between two statements', () => halfDecisions(LONG ? Number.POSITIVE_INFINITY : 3)],
	['two processes on one database', () => twoProcesses(LONG ? 500 : 40)],
	['a table of many lines', () => (LONG ? largeTables(100_000, 10) : largeTables(4_000, 1))],
	['the server killed in the middle of an import', () => serverKills(LONG ? 20 : 1)],
	['a full disk', () => fullDisk()],
	['a slow disk', () => slowDisk(LONG ? 12 : 2)],
	['a damaged page of the database', () => damagedPages(LONG ? 500 : 24)],
	['damaged photos', () => damagedPhotos(LONG ? 300 : 3)],
	['hostile requests', () => hostileRequests(LONG ? 120 : 4)],
	['a device that was not paired', () => strangers(LONG ? 20 : 1, LONG)],
	['people who leave in the middle', () => leftBehind(LONG ? 100 : 20)],
	['many clients at once', () => (LONG ? manyClients(50, 120) : manyClients(10, 3))],
	...(LONG ? [['a host: servers, readers, database and object store that fail', () => hostedDrills(10)] as const] : []),
	['a home of many photos, backed up and restored', () => manyPhotos(LONG ? 10_000 : 150)],
];

const told: string[] = [];
afterAll(() => {
	if (LONG) process.stdout.write(`${told.join('\n')}\n`);
});

describe('what can go wrong', () => {
	it.each(sections)(
		'%s',
		async (title, run) => {
			const result = await run();
			if ('skipped' in result) {
				process.stdout.write(`${title}: left out, because ${result.skipped}\n`);
				return;
			}
			const rows = result.figures.map(
				({ what, found, asked, met }) => [what, found, asked, met ? 'yes' : 'NO'] as const,
			);
			told.push(textOfTable({ title, columns: ['', 'found', 'asked', 'met'], rows }));
			expect(result.figures.filter(({ met }) => !met)).toEqual([]);
		},
		HOURS_MS,
	);
});
