import { readdirSync, readlinkSync } from 'node:fs';
import { get } from 'node:http';
import { connect } from 'node:net';
import { join } from 'node:path';
import { endOf, residentMb, type ServerProcess, startServer } from '../../bench/server-process.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { type Figure, type Figures, noneOf } from './figure.ts';
import { clientOf } from './http-client.ts';

const MEGABYTE = 1024 * 1024;
const UPLOAD_BYTES = 55 * MEGABYTE;
const MOST_MB = 250;
const BACKUPS = 60;
/** Far longer than clearing up takes on a machine that is busy with other things; what was not freed by then never is. */
const PATIENCE_S = 300;
/** The program's own: the database, its log and its index, the lock; one more while a page is read. */
const OWN_FILES = 8;

const pause = (ms: number) => new Promise((done) => setTimeout(done, ms));

/** Looks again until it is so, for at most so many seconds; whether it came to be. */
async function within(seconds: number, isSo: () => boolean): Promise<boolean> {
	for (const until = Date.now() + seconds * 1000; Date.now() < until; await pause(50)) if (isSo()) return true;
	return isSo();
}

/** Files below a folder that the process holds open (Linux). */
function openFiles({ process: { pid } }: ServerProcess, folder: string): string[] {
	return readdirSync(`/proc/${pid}/fd`).flatMap((handle) => {
		try {
			const path = readlinkSync(`/proc/${pid}/fd/${handle}`);
			return path.startsWith(`${folder}/`) ? [path] : [];
		} catch {
			// Closed between listing and looking.
			return [];
		}
	});
}

/** Begins an upload, sends half of it as fast as it is taken, and stays on the line. */
function halfUpload(port: number) {
	const socket = connect(port, '127.0.0.1');
	socket.on('error', () => {});
	const field = '--a\r\nContent-Disposition: form-data; name="purpose"\r\n\r\ngarment\r\n';
	const file = '--a\r\nContent-Disposition: form-data; name="photo"; filename="half.jpg"\r\n\r\n';
	socket.write(
		`POST /api/photos HTTP/1.1\r\nHost: localhost:${port}\r\nContent-Length: ${UPLOAD_BYTES}\r\nContent-Type: multipart/form-data; boundary=a\r\n\r\n${field}${file}`,
	);
	const piece = Buffer.alloc(MEGABYTE);
	let left = UPLOAD_BYTES / 2;
	const more = () => {
		for (; left > 0; left -= piece.length) if (!socket.write(piece)) return;
	};
	socket.on('drain', () => {
		left -= piece.length;
		more();
	});
	socket.on('connect', more);
	socket.resume();
	return socket;
}

/** Begins a backup and hangs up after its first bytes; whether one was begun. */
const cancelledBackup = (port: number) =>
	new Promise<boolean>((resolve) => {
		const call = get({ host: '127.0.0.1', port, path: '/api/backup', agent: false }, (answer) => {
			answer.once('data', () => {
				call.destroy();
				resolve(answer.statusCode === 200);
			});
			answer.on('error', () => {});
		});
		call.on('error', () => resolve(false));
	});

/** What is left after people leave in the middle: `uploads` half-sent photos of 55 MB, sixty backups. Linux, where a process can be looked into. */
export async function leftBehind(uploads: number): Promise<Figures> {
	if (process.platform !== 'linux') return { skipped: 'only Linux shows the memory and files of a process' };
	const homePath = join(temporaryFolder(), 'home');
	const server = await startServer(homePath);
	const port = Number(new URL(server.address).port);
	const incoming = () => openFiles(server, join(homePath, 'incoming')).length;
	try {
		const sockets = Array.from({ length: uploads }, () => halfUpload(port));
		let mostMb = 0;
		let mostFiles = 0;
		await within(uploads / 8, () => {
			mostMb = Math.max(mostMb, residentMb(server.process.pid!));
			mostFiles = Math.max(mostFiles, incoming());
			return false;
		});
		for (const socket of sockets) socket.destroy();
		const isFreed = await within(
			PATIENCE_S,
			() => incoming() === 0 && readdirSync(join(homePath, 'incoming')).length === 0,
		);
		let begun = 0;
		for (let n = 0; n < BACKUPS * 1000 && begun < BACKUPS; n++) if (await cancelledBackup(port)) begun++;
		await within(PATIENCE_S, () => openFiles(server, homePath).length <= OWN_FILES);
		const files = openFiles(server, homePath);
		const answers = (await clientOf(server.address).get('/api/status')).status;
		const memory: Figure = {
			what: `memory under ${uploads} half-sent uploads of 55 MB`,
			found: `${Math.round(mostMb)} MB`,
			asked: `under ${MOST_MB} MB`,
			met: mostMb < MOST_MB,
		};
		const handles: Figure = {
			what: `files held open after ${begun} cancelled backups`,
			found: String(files.length),
			asked: `at most ${OWN_FILES} (the program's own)`,
			met: files.length <= OWN_FILES && begun === BACKUPS,
		};
		return {
			figures: [
				memory,
				noneOf('uploads of one device beyond four at once', mostFiles > 4 ? [`${mostFiles} at once`] : []),
				noneOf('half-sent uploads not freed', isFreed ? [] : readdirSync(join(homePath, 'incoming'))),
				handles,
				noneOf('that brought the server down', [...endOf(server), ...(answers === 200 ? [] : [`answered ${answers}`])]),
			],
		};
	} finally {
		await server.stop();
	}
}
