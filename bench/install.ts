import { spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Table } from './table.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/** Installs from the lock into an empty folder: what a newcomer waits for and what it takes on disk. */
export async function run(): Promise<readonly Table[]> {
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-install-'));
	try {
		for (const file of ['package.json', 'package-lock.json', '.npmrc']) cpSync(join(root, file), join(folder, file));
		const start = performance.now();
		const done = spawnSync('npm', ['ci', '--ignore-scripts', '--include=dev'], { cwd: folder, encoding: 'utf8' });
		const seconds = (performance.now() - start) / 1000;
		if (done.status !== 0)
			return [
				{ title: 'Install', columns: ['', 'result'], rows: [['npm ci', `failed: ${done.stderr.slice(0, 200)}`]] },
			];
		const megabytes = Number(
			spawnSync('du', ['-sm', 'node_modules'], { cwd: folder, encoding: 'utf8' }).stdout.split('\t')[0],
		);
		return [
			{
				title: 'Install (npm ci from the lock, cache as it is)',
				columns: ['', 's', 'MB on disk'],
				rows: [['all packages', seconds, megabytes]],
			},
		];
	} finally {
		rmSync(folder, { recursive: true, force: true });
	}
}
