import { spawnSync } from 'node:child_process';
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir, userInfo } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { freePort } from './free-port.ts';

export type TestPostgres =
	| {
			readonly ok: true;
			readonly connectionString: string;
			/** A further, empty database of the same server: its connection string. */
			newDatabase(): Promise<string>;
			/** As a crash does it, and up again. */
			restart(): void;
			stop(): void;
	  }
	| { readonly ok: false; readonly reason: string };

/** Where Debian's packages put the server's programs, which are not on the path. */
function programsFolder(): string | null {
	const debian = '/usr/lib/postgresql';
	const versions = existsSync(debian) ? readdirSync(debian).sort((a, b) => Number(b) - Number(a)) : [];
	const folders = [...versions.map((version) => join(debian, version, 'bin')), ...(process.env.PATH ?? '').split(':')];
	return folders.find((folder) => existsSync(join(folder, 'initdb')) && existsSync(join(folder, 'pg_ctl'))) ?? null;
}

/** PostgreSQL refuses to run as root; there it runs as the user its package made. */
function serverUser(): { uid: number; gid: number } | null | 'none' {
	if (userInfo().uid !== 0) return null;
	const id = (flag: string) => Number(spawnSync('id', [flag, 'postgres'], { encoding: 'utf8' }).stdout);
	const [uid, gid] = [id('-u'), id('-g')];
	return uid > 0 && gid > 0 ? { uid, gid } : 'none';
}

/** Starts a PostgreSQL of its own for a test file, in a temporary folder on a free port; or says why there is none. */
export async function startPostgres(): Promise<TestPostgres> {
	const programs = programsFolder();
	if (!programs) return { ok: false, reason: 'no PostgreSQL server is installed (Debian: apt-get install postgresql)' };
	const user = serverUser();
	if (user === 'none') return { ok: false, reason: 'PostgreSQL does not run as root, and there is no user "postgres"' };
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-postgres-'));
	if (user) chownSync(folder, user.uid, user.gid);
	const run = (program: string, words: readonly string[]) => {
		const done = spawnSync(join(programs, program), words, { encoding: 'utf8', cwd: folder, ...(user ?? {}) });
		return done.status === 0 ? null : `${program}: ${done.error?.message ?? done.stderr.trim().slice(-300)}`;
	};
	const data = join(folder, 'data');
	const port = await freePort();
	const started = () =>
		run('pg_ctl', [
			'-D',
			data,
			'-w',
			'-l',
			join(folder, 'log'),
			'-o',
			`-p ${port} -c listen_addresses=127.0.0.1 -c unix_socket_directories=${folder}`,
			'start',
		]);
	const stopped = () => run('pg_ctl', ['-D', data, '-w', '-m', 'immediate', 'stop']);
	const fault = run('initdb', ['-D', data, '-U', 'dyelot', '-A', 'trust', '-E', 'UTF8', '--no-sync']) ?? started();
	if (fault) {
		rmSync(folder, { recursive: true, force: true });
		return { ok: false, reason: `PostgreSQL did not start (${fault})` };
	}
	const databaseAt = (name: string) => `postgres://dyelot@127.0.0.1:${port}/${name}`;
	let made = 0;
	return {
		ok: true,
		connectionString: databaseAt('postgres'),
		async newDatabase() {
			const name = `further_${made++}`;
			const client = new pg.Client({ connectionString: databaseAt('postgres') });
			await client.connect();
			await client.query(`create database ${name}`);
			await client.end();
			return databaseAt(name);
		},
		restart() {
			const fault = stopped() ?? started();
			if (fault) throw new Error(fault);
		},
		stop() {
			stopped();
			rmSync(folder, { recursive: true, force: true });
		},
	};
}
