import { availableParallelism, loadavg } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type ServerProcess, startServer } from '../../bench/server-process.ts';
import { openHome } from '../../src/store/open-home.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { tableOfGarments } from '../support/large-table.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figure, type Figures, noneOf } from './figure.ts';
import { stallWatch } from './stall-watch.ts';

const MOST_SECONDS = 5;
const MOST_STALL_MS = 100;

/** Bytes that make a table large enough for a thread of its own, see `LARGE`: where the lines are few, their notes are long. */
const LEAST_BYTES = 1_200_000;
const BYTES_OF_A_LINE = 70;
const largeTable = (lines: number): string =>
	tableOfGarments(lines, ' and so on'.repeat(Math.max(0, Math.ceil((LEAST_BYTES / lines - BYTES_OF_A_LINE) / 10))));

const post = (server: ServerProcess, path: string, body: string | null = null): Promise<Response> =>
	fetch(new URL(path, server.address), {
		method: 'POST',
		...(body === null ? {} : { headers: { 'content-type': 'text/csv' }, body }),
	});

/** A figure of time, judged only on a machine that does nothing else. */
function timeOf(what: string, found: string, most: string, met: boolean): Figure {
	const load = loadavg()[0]!;
	const isBusy = load > 1.5 * availableParallelism();
	const asked = isBusy ? `under ${most} (not judged: the machine is busy, load ${load.toFixed(0)})` : `under ${most}`;
	return { what, found, asked, met: met || isBusy };
}

/** Takes a table in, back and in again, and measures how long each takes and how long the server does nothing else meanwhile. */
async function timesOf(lines: number): Promise<{ figures: Figure[]; seconds: number }> {
	const watch = stallWatch();
	const server = await startServer(join(temporaryFolder(), 'home'), watch.start);
	try {
		const figures: Figure[] = [];
		let longest = 0;
		for (const [what, path, body] of [
			[`${lines} lines shown first`, 'api/garments/import?preview=true', largeTable(lines)],
			[`${lines} lines taken in`, 'api/garments/import', largeTable(lines)],
			['all of them taken back', 'api/undo', null],
			['all of them done again', 'api/redo', null],
		] as const) {
			await watch.longestStallMs(server.process.pid!);
			const start = performance.now();
			const { status } = await post(server, path, body);
			if (status !== 200) throw new Error(`${path} was answered ${status}`);
			const seconds = (performance.now() - start) / 1000;
			longest = Math.max(longest, seconds);
			const stallMs = await watch.longestStallMs(server.process.pid!);
			figures.push(
				timeOf(what, `${seconds.toFixed(1)} s`, `${MOST_SECONDS} s`, seconds < MOST_SECONDS),
				timeOf(
					'  meanwhile the server stalls',
					`${stallMs.toFixed(0)} ms`,
					`${MOST_STALL_MS} ms`,
					stallMs < MOST_STALL_MS,
				),
			);
		}
		return { figures, seconds: longest };
	} finally {
		await server.stop();
	}
}

/** How many garments a home holds after the server was killed while it took so many in. */
async function garmentsAfterKill(lines: number, afterMs: number): Promise<number> {
	const homePath = join(temporaryFolder(), 'home');
	const server = await startServer(homePath);
	const asking = post(server, 'api/garments/import', largeTable(lines)).then(
		() => 'answered',
		() => 'broken off',
	);
	await pause(afterMs);
	await server.stop('SIGKILL');
	await asking;
	const home = await openHome(homePath, { now: () => new Date() });
	const count = await home.store.garments.count();
	await home.close();
	return count;
}

/** A table of so many lines: how long it takes, how long the server stalls, and what is there when it is killed in the middle. */
export async function largeTables(lines: number, kills: number): Promise<Figures> {
	const { figures, seconds } = await timesOf(lines);
	const random = seededRandom('large tables');
	const half: string[] = [];
	let none = 0;
	for (let kill = 0; kill < kills; kill++) {
		const count = await garmentsAfterKill(lines, random() * seconds * 1000);
		if (count === 0) none++;
		else if (count !== lines) half.push(`kill ${kill}: ${count} garments`);
	}
	return {
		figures: [
			...figures,
			noneOf(`of ${kills} kills in the middle of a table, part of it there (nothing there: ${none})`, half),
			atLeast('kills that came before the end', none, kills > 3 ? 1 : 0),
		],
	};
}
