import { spawnSync } from 'node:child_process';
import { chmodSync, lstatSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { openHome } from '../../src/store/open-home.ts';
import { addedPhoto } from '../support/decided.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const rights = (path: string) => (lstatSync(path).mode & 0o777).toString(8);

/** Everything in a home, and the home itself, that somebody else on this computer could use, as `path rights`. */
function openToOthers(homePath: string): string[] {
	const below = readdirSync(homePath, { recursive: true, encoding: 'utf8' }).map((name) => join(homePath, name));
	return [homePath, ...below].map((path) => `${path} ${rights(path)}`).filter((told) => !/ [67]00$/.test(told));
}

const PHOTO = { originalName: 'a.jpg', mediaType: 'image/jpeg', addedAt: '2026-03-01T10:00:00.000Z' };
const open = (path: string) => openHome(path, { now: () => new Date('2026-03-01T10:00:00.000Z') });

const UMASKS = ['000', '022', '077', '027', '007'] as const;

/** The life of a home under each umask, in a folder named for it: made, a photo and its pictures added, backed up, restored. A process of its own, since a umask is one for all threads. */
const LIFE = `
	const { openHome } = await import('${new URL('../../src/store/open-home.ts', import.meta.url)}');
	const { addedPhoto } = await import('${new URL('../support/decided.ts', import.meta.url)}');
	const { runCli } = await import('${new URL('../../src/cli/run-cli.ts', import.meta.url)}');
	for (const umask of ${JSON.stringify(UMASKS)}) {
		const path = process.argv.at(-1) + '/' + umask;
		process.umask(Number.parseInt(umask, 8));
		const home = await openHome(path + '/home', { now: () => new Date() });
		const photo = await addedPhoto(home.store, new Uint8Array([1, 2, 3]), ${JSON.stringify(PHOTO)});
		await home.store.photos.keepMask(photo.id, new Uint8Array([4]));
		await home.close();
		if ((await runCli(['backup', path + '/a.tar', '--home', path + '/home'])) !== 0) process.exit(1);
		if ((await runCli(['restore', path + '/a.tar', '--home', path + '/again'])) !== 0) process.exit(1);
		const again = await openHome(path + '/again', { now: () => new Date() });
		await again.close();
	}
`;

describe.skipIf(process.platform === 'win32')('a home', () => {
	it('is for its owner alone under any umask, archive and restored home too', () => {
		const folder = temporaryFolder();
		for (const umask of UMASKS) mkdirSync(join(folder, umask));
		const words = ['--import', 'tsx', '--input-type=module', '-e', LIFE, folder];
		const cwd = fileURLToPath(new URL('../..', import.meta.url));
		const done = spawnSync(process.execPath, words, { cwd, encoding: 'utf8' });
		expect(`${done.stderr}${done.status}`).toBe('0');
		for (const umask of UMASKS) {
			const path = join(folder, umask);
			expect([...openToOthers(join(path, 'home')), ...openToOthers(join(path, 'again'))]).toEqual([]);
			expect(rights(join(path, 'a.tar'))).toBe('600');
		}
	});

	it('made by an earlier version is closed when it is opened, down to its last file', async () => {
		const path = temporaryFolder();
		const home = await open(path);
		const { id } = await addedPhoto(home.store, new Uint8Array([1, 2, 3]), PHOTO);
		await home.close();
		writeFileSync(join(path, 'note.txt'), 'by the user');
		for (const name of ['', 'photos', `photos/${id.slice(0, 2)}`]) chmodSync(join(path, name), 0o755);
		for (const name of ['dyelot.sqlite', 'home.lock', 'note.txt', `photos/${id.slice(0, 2)}/${id}`])
			chmodSync(join(path, name), 0o644);
		expect(openToOthers(path)).toHaveLength(7);
		const again = await open(path);
		expect(openToOthers(path)).toEqual([]);
		expect(again.findings).toEqual([]);
		await again.close();
	});

	it('whose own folder alone was closed by hand is still closed inside', async () => {
		const path = temporaryFolder();
		await (await open(path)).close();
		chmodSync(join(path, 'dyelot.sqlite'), 0o644);
		expect(rights(path)).toBe('700');
		const again = await open(path);
		expect(openToOthers(path)).toEqual([]);
		await again.close();
	});
});
