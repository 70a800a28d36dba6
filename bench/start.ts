import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { medianOf } from '../src/colour/median.ts';
import { residentMb, startServer } from './server-process.ts';
import type { Table } from './table.ts';

const TIMES = 7;

/** Milliseconds that Node takes to do nothing. */
function emptyNodeMs(): number {
	const from = performance.now();
	spawnSync(process.execPath, ['-e', '0']);
	return performance.now() - from;
}

/** From the command to the first answer, on an empty home, in turn with Node doing nothing. */
export async function run(): Promise<readonly Table[]> {
	const node: number[] = [];
	const starts: number[] = [];
	const idle: number[] = [];
	for (let time = 0; time < TIMES; time++) {
		node.push(emptyNodeMs());
		const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
		const server = await startServer(home);
		starts.push(server.startMs);
		idle.push(residentMb(server.process.pid!));
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
	const times = medianOf(starts.map((ms, index) => ms / node[index]!));
	return [
		{
			title: `Cold start to the first answer, medians of ${TIMES}`,
			columns: ['', 'ms', '`node -e 0` ms', 'times', 'RSS idle MB'],
			rows: [['dyelot serve', medianOf(starts), medianOf(node), times, medianOf(idle)]],
			ratios: { 'cold start / node -e 0': times },
		},
	];
}
