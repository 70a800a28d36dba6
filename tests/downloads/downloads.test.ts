import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { packagesImportedBelow } from '../../scripts/pack/runtime-packages.mjs';
import { TARGETS } from '../../scripts/pack/targets.mjs';
import { binaryKind } from './binary-kind.ts';
import { stagedFolder, targetsMade } from './staged.ts';

const FORMATS = { linux: 'elf', win32: 'pe', darwin: 'mach-o' } as const;
const MAX_PACKED_BYTES = 150e6;

const filesBelow = (folder: string) =>
	readdirSync(folder, { recursive: true, withFileTypes: true })
		.filter((entry) => entry.isFile())
		.map((entry) => join(entry.parentPath, entry.name));

it('there is a download to look at', () => {
	expect(targetsMade().length).toBeGreaterThan(0);
});

describe.each(targetsMade())('the download for $name', (target) => {
	const folder = stagedFolder(target);

	it('holds binaries for its own system only, and the runtime is one of them', () => {
		const kinds = filesBelow(folder)
			.map((path) => ({ path: path.slice(folder.length), kind: binaryKind(path) }))
			.filter(({ kind }) => kind !== null);
		const wanted = { format: FORMATS[target.platform as keyof typeof FORMATS], arch: target.arch };
		expect(kinds.map(({ path, kind }) => ({ path, ...kind }))).toEqual(kinds.map(({ path }) => ({ path, ...wanted })));
		expect(kinds.map(({ path }) => path)).toContain(`/runtime/node${target.platform === 'win32' ? '.exe' : ''}`);
		const native = kinds.map(({ path }) => path).join('\n');
		for (const name of ['onnxruntime-node', '@img/sharp-', '@photostructure/sqlite']) expect(native).toContain(name);
	});

	it('holds every package that the program loads, and what those need', () => {
		const app = join(folder, 'app');
		for (const name of packagesImportedBelow(join(app, 'dist')))
			expect(statSync(join(app, 'node_modules', name, 'package.json')).isFile(), name).toBe(true);
		const listed = spawnSync('npm', ['ls', '--all', '--json', '--omit=optional'], { cwd: app, encoding: 'utf8' });
		const { problems = [] } = JSON.parse(listed.stdout) as { problems?: string[] };
		expect(problems.filter((problem) => problem.startsWith('missing'))).toEqual([]);
	});

	it('lists its contents with checksums that are right, and its parts with their licences', () => {
		const lines = readFileSync(join(folder, 'contents.sha256'), 'utf8').trim().split('\n');
		expect(lines.length).toBe(filesBelow(folder).length - 1);
		for (const line of lines.filter((_, index) => index % 50 === 0)) {
			const [sum, path] = line.split('  ') as [string, string];
			expect(
				createHash('sha256')
					.update(readFileSync(join(folder, path)))
					.digest('hex'),
				path,
			).toBe(sum);
		}
		const parts = JSON.parse(readFileSync(join(folder, 'parts.cdx.json'), 'utf8')) as {
			bomFormat: string;
			components: { name: string; licenses?: unknown[] }[];
		};
		expect(parts.bomFormat).toBe('CycloneDX');
		expect(parts.components.filter(({ licenses }) => !licenses?.length).map(({ name }) => name)).toEqual([]);
		expect(parts.components.map(({ name }) => name)).toEqual(expect.arrayContaining(['node', 'fastify']));
	});

	it.skipIf(target.platform === 'win32')('has a start file that a shell can read', () => {
		const start = readdirSync(folder).find((name) => /^dyelot\.(sh|command)$/i.test(name));
		expect(spawnSync('sh', ['-n', join(folder, start!)]).status).toBe(0);
		expect(statSync(join(folder, start!)).mode & 0o111).toBe(0o111);
	});

	it('is under 150 MB packed', () => {
		const downloads = join(process.cwd(), 'downloads');
		const file = readdirSync(downloads).find((name) => name.includes(target.name))!;
		expect(statSync(join(downloads, file)).size).toBeLessThan(MAX_PACKED_BYTES);
	});
});

it('every runtime is pinned by version and checksum', () => {
	for (const { runtime } of TARGETS) {
		expect(runtime.version).toMatch(/^\d+\.\d+\.\d+$/);
		expect(runtime.integrity).toMatch(/^sha512-.{88}$/);
	}
});
