import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { tableOfGarments } from '../tests/support/large-table.ts';
import { cpuSeconds, residentMb, type ServerProcess, startServer } from './server-process.ts';
import type { Row, Table } from './table.ts';

/** Lines of each table: what a shop's whole stock would be, far beyond a wardrobe. */
const LINES = 100_000;

/** Days counted back from one that is past, for one garment. */
const wears = (): string =>
	[
		'day,garment',
		...Array.from({ length: LINES }, (_, line) => {
			const day = new Date(Date.UTC(2025, 11, 31) - Math.floor(line / 100) * 86_400_000);
			return `${day.toISOString().slice(0, 10)},Piece ${line % 100}`;
		}),
	].join('\n');

/** What another page waits meanwhile: the longest of many small questions, one after the other. */
function askMeanwhile(address: string, path: string) {
	let going = true;
	let longest = 0;
	const done = (async () => {
		while (going) {
			const start = performance.now();
			await (await fetch(address + path)).arrayBuffer();
			longest = Math.max(longest, performance.now() - start);
			await pause(10);
		}
	})();
	return async () => {
		going = false;
		await done;
		return longest;
	};
}

/** Does it while two pages ask, and measures both. */
async function measured(server: ServerProcess, name: string, act: () => Promise<unknown>): Promise<Row> {
	const pid = server.process.pid!;
	const stops = ['api/status', 'api/seasons'].map((path) => askMeanwhile(server.address, path));
	const cpuBefore = cpuSeconds(pid);
	const start = performance.now();
	await act();
	const seconds = (performance.now() - start) / 1000;
	const cpu = cpuSeconds(pid) - cpuBefore;
	const waits = await Promise.all(stops.map((stop) => stop()));
	return [name, seconds, cpu, ...waits.map((wait) => Math.round(wait)), Math.round(residentMb(pid))];
}

async function post(server: ServerProcess, path: string, body: Uint8Array<ArrayBuffer>): Promise<void> {
	const table = body.length === 0 ? {} : { headers: { 'content-type': 'text/csv' }, body };
	const answer = await fetch(server.address + path, { method: 'POST', ...table });
	const text = await answer.text();
	if (!answer.ok) throw new Error(`${path} was answered ${answer.status}: ${text.slice(0, 300)}`);
}

/** Two tables of 100,000 lines taken in by the real program, and what another page waits meanwhile; the first row tells what it waits when nothing is done. */
export async function run(): Promise<readonly Table[]> {
	const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const server = await startServer(home);
	try {
		// Written as bytes beforehand: what the asking side does with a long text is no wait of a page.
		const bytes = (text: string) => new TextEncoder().encode(text);
		const rows: Row[] = [await measured(server, 'nothing, for 5 s', () => pause(5_000))];
		for (const [name, path, body] of [
			['garments, shown first', 'api/garments/import?preview=true', bytes(tableOfGarments(LINES))],
			['garments, taken in', 'api/garments/import', bytes(tableOfGarments(LINES))],
			['garments, taken back', 'api/undo', bytes('')],
			['garments, done again', 'api/redo', bytes('')],
			['wears, shown first', 'api/wears/import?preview=true', bytes(wears())],
			['wears, taken in', 'api/wears/import', bytes(wears())],
		] as const)
			rows.push(await measured(server, name, () => post(server, path, body)));
		return [
			{
				title: `Tables of ${LINES} lines`,
				columns: ['', 's', 'CPU s', 'longest wait for the status, ms', 'for seasons, ms', 'RSS MB'],
				rows,
			},
		];
	} finally {
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
}
