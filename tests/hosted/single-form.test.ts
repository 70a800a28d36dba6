import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../support/temporary-home.ts';

const SCRIPT = fileURLToPath(new URL('../support/loaded-packages.ts', import.meta.url));

/** What only a host needs. */
const OF_HOSTS = ['pg', 'pg-boss', 'aws4fetch', '@simplewebauthn/server'];

/** Packages that a process has loaded once the single form has been served a page and a list. */
function loadedPackages(): string[] {
	const done = spawnSync(process.execPath, ['--import', 'tsx', SCRIPT, temporaryFolder()], { encoding: 'utf8' });
	if (done.status !== 0) throw new Error(done.stderr);
	return JSON.parse(done.stdout) as string[];
}

describe('the single form', () => {
	it('loads none of the packages of a host', () => {
		const loaded = loadedPackages();
		// Proof that the look sees what is loaded.
		expect(loaded).toContain('fastify');
		expect(loaded).toContain('kysely');
		expect(loaded.filter((name) => OF_HOSTS.includes(name))).toEqual([]);
	});
});
