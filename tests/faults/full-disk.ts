import { spawnSync } from 'node:child_process';
import { cpSync, rmSync, statfsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import { startServer } from '../../bench/server-process.ts';
import { openHome } from '../../src/store/open-home.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { type Answer, type Client, clientOf, isClearRefusal } from './http-client.ts';

const DISK_MB = 24;

/** A name space of mounts of its own, by root or by a user's own: the small disk is gone with the program that lives in it. */
const NAME_SPACES = [
	['unshare', '--mount'],
	['unshare', '--user', '--map-root-user', '--mount'],
] as const;

/** Words that start a program with a small disk at `path`, or null where this machine lets nobody mount one. */
function onSmallDisk(path: string): readonly string[] | null {
	const line = `mount -t tmpfs -o size=${DISK_MB}m tmpfs "$0" && exec "$@"`;
	const within = NAME_SPACES.map((words) => [...words, 'sh', '-c', line, path]).find(
		([command, ...words]) => spawnSync(command!, [...words, 'true']).status === 0,
	);
	return within ?? null;
}

/** Takes the last byte of the disk. */
function fill(folder: string): void {
	for (let bytes = 1024 * 1024, part = 0; bytes >= 1; part++) {
		try {
			writeFileSync(join(folder, `filler-${part}`), Buffer.alloc(bytes));
		} catch {
			// This much no longer fits: try with less. What was written of it stays, which is just as well.
			bytes = Math.floor(bytes / 4);
		}
	}
}

/** What the program holds, as it tells it. */
async function heldBy(client: Client) {
	const [garments, photos, seasons, wears] = await Promise.all(
		['/api/garments', '/api/photos', '/api/seasons', '/api/wears'].map((path) => client.get(path)),
	);
	return { garments: garments!.body, photos: photos!.body, seasons: seasons!.body, wears: wears!.body };
}

/** Tries every way to change something; each is answered with a clear refusal or done. */
async function changes(client: Client, garmentId: string, round: number): Promise<Record<string, Answer>> {
	return {
		upload: await client.upload('large.png', await cutOut([40 + round, 20, 10], 1200)),
		'change of a garment': await client.send('PATCH', '/api/garments', {
			ids: [garmentId],
			changes: { notes: `${round} ${'long '.repeat(380)}` },
		}),
		wear: await client.send('POST', '/api/wears', { wears: [{ garmentId, on: `2026-03-0${round}` }] }),
		season: await client.startSeason(`Season ${round}`),
		undo: await client.send('POST', '/api/undo'),
	};
}

/** A home on a disk that fills up, is tried while full, and is given room again. */
export async function fullDisk(): Promise<Figures> {
	const homePath = join(temporaryFolder(), 'home');
	const path = temporaryFolder();
	const shell = onSmallDisk(path);
	if (!shell) return { skipped: 'this machine lets nobody mount a small disk (unshare --mount)' };
	const server = await startServer(join(path, 'home'), { shell });
	try {
		const client = clientOf(server.address);
		// The disk as the program sees it.
		const seen = `/proc/${server.process.pid}/root${path}`;
		const first = await client.upload('coat.png', await cutOut([40, 20, 10]));
		await client.settled(900);
		const { entryId } = first.body.items[0];
		const before = await heldBy(client);
		fill(seen);
		const free = statfsSync(seen).bfree;
		const refused: string[] = [];
		const unclear: string[] = [];
		// Long enough to use up what the write-ahead log has in reserve.
		for (let round = 1; round <= 9; round++) {
			for (const [what, answer] of Object.entries(await changes(client, entryId, round))) {
				if (answer.status < 400) continue;
				refused.push(what);
				if (!isClearRefusal(answer))
					unclear.push(`${what}: ${answer.status} ${JSON.stringify(answer.body).slice(0, 200)}`);
			}
		}
		const full = await heldBy(client);
		const kept = full.photos.length >= before.photos.length && full.garments.length >= before.garments.length;
		const backup = await fetch(new URL('/api/backup', server.address)).then(
			(response) => response.arrayBuffer().then(() => response.status),
			() => 'broken off' as const,
		);
		for (let part = 0; part < 200; part++) rmSync(join(seen, `filler-${part}`), { force: true });
		const afterwards = Object.entries(await changes(client, entryId, 1)).filter(([, { status }]) => status >= 400);
		await client.settled(900);
		const last = await heldBy(client);
		// As it stands, copied while the program sleeps, then opened by another.
		server.process.kill('SIGSTOP');
		cpSync(join(seen, 'home'), homePath, { recursive: true });
		server.process.kill('SIGCONT');
		const home = await openHome(homePath, { now: () => new Date() });
		const reopened = (await home.store.garments.list()).map(({ id, notes }) => [id, notes]);
		const told = (last.garments as { id: string; notes: string }[]).map(({ id, notes }) => [id, notes]);
		await home.close();
		return {
			figures: [
				atLeast('changes refused while the disk was full', refused.length, 5),
				noneOf('of those, without a clear sentence', unclear),
				noneOf('things gone while the disk was full', kept ? [] : ['fewer photos or garments']),
				noneOf('a backup from a full disk that claims to be whole', backup === 200 ? ['answered 200'] : []),
				noneOf(
					'changes refused once there was room again',
					afterwards.map(([what, { status }]) => `${what} ${status}`),
				),
				noneOf(
					'differences between what was told and what another program finds',
					isDeepStrictEqual(sorted(reopened), sorted(told)) ? [] : ['garments differ'],
				),
				{ what: 'blocks free when it was full', found: String(free), asked: '0', met: free === 0 },
			],
		};
	} finally {
		await server.stop();
	}
}

const sorted = (rows: unknown[][]): unknown[][] => [...rows].sort((a, b) => (String(a[0]) < String(b[0]) ? -1 : 1));
