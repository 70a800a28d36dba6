import { spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../support/temporary-home.ts';

const isBuilt = existsSync('dist/cli/run-cli.js');
if (!isBuilt)
	console.warn('Test of the container skipped: the program is not compiled (node scripts/setup.mjs --all).');

/** What the container file copies into the container, from the built project. */
const copied = (): string[] =>
	[...readFileSync('scripts/host/Containerfile', 'utf8').matchAll(/^COPY --from=build \/program\/(\S+) (\S+)$/gm)].map(
		([, from, to]) => {
			expect(from).toBe(to);
			return from!;
		},
	);

/** The same places, put together as a folder: no container runtime is at hand. */
function layOut(): string {
	const root = temporaryFolder();
	for (const path of copied()) {
		mkdirSync(dirname(join(root, path)), { recursive: true });
		if (path === 'node_modules') symlinkSync(join(process.cwd(), path), join(root, path));
		else cpSync(path, join(root, path), { recursive: true });
	}
	return root;
}

describe.skipIf(!isBuilt)('what the container file copies', () => {
	it('is all that the program needs to read a photo and to say what a host takes', () => {
		const root = layOut();
		const run = (...words: string[]) =>
			spawnSync(process.execPath, ['bin/dyelot.mjs', ...words], { cwd: root, encoding: 'utf8' });
		const read = run('read', '--json', join(process.cwd(), 'demo-images/g03-moss-jumper.jpg'));
		expect(read.stdout + read.stderr).toContain('"ok":true');
		expect(run('host', '--help').status).toBe(0);
		for (const page of ['web/dist/index.html', 'web/dist-pocket']) expect(existsSync(join(root, page))).toBe(true);
	});
});
