import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { residentMb, type ServerProcess, startServer } from './server-process.ts';
import type { Row, Table } from './table.ts';

/** Lines of each table: what a shop's whole stock would be, far beyond a wardrobe. */
const LINES = 100_000;

const garments = (): string =>
	[
		'name,kind,place,price,boughtOn,yearParts,notes',
		...Array.from(
			{ length: LINES },
			(_, line) => `Piece ${line},shirt,rail,${line % 90},2025-03-14,spring summer,"from, box ${line}"`,
		),
	].join('\n');

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
	let asked = 0;
	const done = (async () => {
		while (going) {
			const start = performance.now();
			await (await fetch(address + path)).arrayBuffer();
			longest = Math.max(longest, performance.now() - start);
			asked++;
			await new Promise((resolve) => setTimeout(resolve, 10));
		}
	})();
	return async () => {
		going = false;
		await done;
		return { longest, asked };
	};
}

async function post(server: ServerProcess, path: string, body: string, name: string): Promise<Row> {
	const stop = askMeanwhile(server.address, 'api/status');
	const stopReading = askMeanwhile(server.address, 'api/seasons');
	const start = performance.now();
	const answer = await fetch(server.address + path, {
		method: 'POST',
		headers: { 'content-type': 'text/csv' },
		body,
	});
	const text = await answer.text();
	const seconds = (performance.now() - start) / 1000;
	if (!answer.ok) throw new Error(`${path} was answered ${answer.status}: ${text.slice(0, 300)}`);
	const status = await stop();
	const reading = await stopReading();
	return [
		name,
		seconds,
		Math.round(status.longest),
		Math.round(reading.longest),
		Math.round(residentMb(server.process.pid!)),
	];
}

/** Two tables of 100,000 lines taken in by the real program, and what another page waits meanwhile. */
export async function run(): Promise<readonly Table[]> {
	const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const server = await startServer(home);
	try {
		const rows: Row[] = [];
		for (const [name, path, body] of [
			['garments, shown first', 'api/garments/import?preview=true', garments()],
			['garments, taken in', 'api/garments/import', garments()],
			['garments, taken back', 'api/undo', ''],
			['garments, done again', 'api/redo', ''],
			['wears, shown first', 'api/wears/import?preview=true', wears()],
			['wears, taken in', 'api/wears/import', wears()],
		] as const)
			rows.push(await post(server, path, body, name));
		return [
			{
				title: `Tables of ${LINES} lines`,
				columns: ['', 's', 'longest wait of a page, ms', 'of one that reads, ms', 'RSS MB'],
				rows,
			},
		];
	} finally {
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
}
