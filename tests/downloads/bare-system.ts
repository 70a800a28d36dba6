import { execFileSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readdirSync, realpathSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { basename, dirname, join } from 'node:path';

/** Libraries that the files ask the system for, as `ldd` finds them here; what lies in their own folder is left out. */
function systemLibraries(files: readonly string[]): string[] {
	const found = new Set<string>();
	for (const file of files) {
		for (const [, path] of execFileSync('ldd', [file], { encoding: 'utf8' }).matchAll(/(?:=> |^\s+)(\/\S+) \(/gm))
			if (path) found.add(path);
	}
	return [...found];
}

/**
 * A folder to make the root of a process: a shell, the one tool its start needs, the C and C++ libraries that the native files ask for,
 * and nothing else: no Node, no npm, no browser, no certificates. The download is copied to /dyelot in it.
 */
export function bareSystem(download: string): string {
	const root = mkdtempSync(join(tmpdir(), 'dyelot-bare-'));
	const natives = readdirSync(download, { recursive: true, encoding: 'utf8' })
		.filter((name) => /\.node$|\.so(\.\d+)*$|^runtime\/node$/.test(name) && !name.includes('musl'))
		.map((name) => join(download, name));
	const tools = ['sh', 'dirname'].map((name) => execFileSync('which', [name], { encoding: 'utf8' }).trim());
	const libraries = systemLibraries([...natives, ...tools]).filter((path) => !path.startsWith(download));
	const places = [...libraries.map((path) => [path, path]), ...tools.map((path) => [path, `/bin/${basename(path)}`])];
	for (const [from, to] of places as [string, string][]) {
		mkdirSync(join(root, dirname(to)), { recursive: true });
		cpSync(realpathSync(from), join(root, to));
	}
	for (const folder of ['tmp', 'root', 'proc', 'dev', 'etc']) mkdirSync(join(root, folder));
	// The two devices that every Linux has and a program may count on: nothing (1, 3) and chance (1, 9), numbers of the kernel's devices.txt.
	for (const [name, minor] of [
		['null', '3'],
		['urandom', '9'],
	] as const)
		execFileSync('mknod', ['-m', '666', join(root, 'dev', name), 'c', '1', minor]);
	cpSync(download, join(root, 'dyelot'), { recursive: true, verbatimSymlinks: true });
	return root;
}
