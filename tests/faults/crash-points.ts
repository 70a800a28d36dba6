import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { dirname } from 'node:path';
import { type CompiledQuery, SqliteDriver } from 'kysely';

/** What a power cut may undo: everything that was written and not yet synced. */
type Unsynced = {
	/** Files written, by path. */
	readonly files: Set<string>;
	/** Renames that the folder has not been synced after: from, to. */
	readonly renames: Map<string, string>;
	/** Folders made that the folder above does not know on disk. */
	readonly folders: Set<string>;
	/** The write-ahead log: its path, and its length before the last statement. */
	log: { path: string; synced: number } | null;
};

type AnyFunction = (...words: never[]) => unknown;

/**
 * Ends this process by SIGKILL when the given step is reached; steps are counted before and after every call that changes a file or the
 * database (whose write-ahead log is at `logPath`). With `powerCut`, what was not yet synced by then is half lost first, as `chance` (0..1 each call) decides. Returns the count so far.
 */
export function dieAtStep(
	dieAt: number,
	{ powerCut, logPath }: { readonly powerCut: boolean; readonly logPath: string },
	chance: () => number,
): () => number {
	const unsynced: Unsynced = { files: new Set(), renames: new Map(), folders: new Set(), log: null };
	let steps = 0;
	const step = () => {
		if (++steps !== dieAt) return;
		if (powerCut) losePower(unsynced, chance);
		process.kill(process.pid, 'SIGKILL');
		// The signal arrives while this waits: nothing after it runs.
		Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0);
	};
	watchFiles(unsynced, step);
	watchDatabase(unsynced, logPath, step);
	return () => steps;
}

function losePower({ files, renames, folders, log }: Unsynced, chance: () => number): void {
	for (const path of files)
		if (fs.existsSync(path)) fs.truncateSync(path, Math.floor(chance() * fs.statSync(path).size));
	for (const [from, to] of renames) if (chance() < 0.5 && fs.existsSync(to)) fs.renameSync(to, from);
	for (const path of folders) if (chance() < 0.5) fs.rmSync(path, { recursive: true, force: true });
	if (log && fs.existsSync(log.path)) tearLog(log, chance);
}

/** The part of the log after its last sync is lost from some byte on, or is there with one sector of something else in it. */
function tearLog({ path, synced }: { path: string; synced: number }, chance: () => number): void {
	const size = fs.statSync(path).size;
	if (size <= synced) return;
	const at = synced + Math.floor(chance() * (size - synced));
	if (chance() < 0.5) {
		fs.truncateSync(path, at);
		return;
	}
	const file = fs.openSync(path, 'r+');
	fs.writeSync(file, Buffer.alloc(Math.min(512, size - at), 0x5a), 0, Math.min(512, size - at), at);
	fs.closeSync(file);
}

function watchFiles(unsynced: Unsynced, step: () => void): void {
	const around = (name: 'rename' | 'mkdir' | 'rm', done: (words: string[], result: unknown) => void) => {
		const original = fs.promises[name] as AnyFunction;
		(fs.promises as Record<string, unknown>)[name] = async (...words: never[]) => {
			step();
			const result = await original.apply(fs.promises, words);
			done(words, result);
			step();
			return result;
		};
	};
	around('rename', ([from, to]) => unsynced.renames.set(from!, to!));
	around('mkdir', ([path], firstMade) => {
		if (firstMade) unsynced.folders.add(path!);
	});
	around('rm', ([path]) => unsynced.files.delete(path!));

	const open = fs.promises.open;
	(fs.promises as Record<string, unknown>).open = async (path: string, flags: string) => {
		step();
		const handle = await open(path, flags);
		const writes = flags !== 'r';
		if (writes) unsynced.files.add(path);
		const { sync, writeFile } = handle;
		handle.writeFile = async (...words) => {
			step();
			await writeFile.apply(handle, words);
			step();
		};
		handle.sync = async () => {
			step();
			await sync.call(handle);
			if (writes) unsynced.files.delete(path);
			else settleFolder(unsynced, path);
			step();
		};
		step();
		return handle;
	};
	syncBuiltinESMExports();
}

/** A synced folder knows the files renamed into it and the folders made in it. */
function settleFolder({ renames, folders }: Unsynced, path: string): void {
	for (const [from, to] of renames) if (dirname(to) === path) renames.delete(from);
	for (const folder of folders) if (dirname(folder) === path) folders.delete(folder);
}

function watchDatabase(unsynced: Unsynced, logPath: string, step: () => void): void {
	const { acquireConnection } = SqliteDriver.prototype;
	SqliteDriver.prototype.acquireConnection = async function (this: SqliteDriver) {
		const connection = await acquireConnection.call(this);
		return {
			streamQuery: (...words) => connection.streamQuery(...words),
			async executeQuery<R>(query: CompiledQuery) {
				if (/^\s*(select|pragma)/i.test(query.sql)) return connection.executeQuery<R>(query);
				step();
				// Until the statement has come back, what it wrote is promised to nobody.
				const log = { path: logPath, synced: fs.existsSync(logPath) ? fs.statSync(logPath).size : 0 };
				const result = await connection.executeQuery<R>(query);
				unsynced.log = log;
				step();
				unsynced.log = null;
				return result;
			},
		};
	};
}
