import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { residentMb, startServer } from './server-process.ts';
import type { Row, Table } from './table.ts';

/** From the command to the first answer, on an empty home, three times. */
export async function run(): Promise<readonly Table[]> {
	const rows: Row[] = [];
	for (const attempt of ['first', 'second', 'third']) {
		const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
		const server = await startServer(home);
		rows.push([attempt, server.startMs, residentMb(server.process.pid!)]);
		await server.stop();
		rmSync(home, { recursive: true, force: true });
	}
	return [{ title: 'Cold start to the first answer', columns: ['start', 'ms', 'RSS idle MB'], rows }];
}
