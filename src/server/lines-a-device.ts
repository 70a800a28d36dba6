import type { Server, Socket } from 'node:net';
import { isLoopback } from './loopback.ts';

/** Lines that one device may hold open: a browser opens six to one place (common practice, no source), and several phones may share an address. */
const MOST_OF_ONE = 64;
/** The same for all devices of the network together. */
const MOST_OF_ALL = 512;

/**
 * Ends lines of other devices beyond what a device needs. Each one costs memory and a file handle for as long as it is held, and whoever opens it need
 * show no code for that. Lines of this computer have no limit: they are the owner's way in.
 */
export function limitLines(server: Pick<Server, 'on'>, mostOfOne = MOST_OF_ONE, mostOfAll = MOST_OF_ALL): void {
	const lines = new Map<string, number>();
	let all = 0;
	server.on('connection', (socket: Socket) => {
		const from = socket.remoteAddress ?? '';
		if (isLoopback(from)) return;
		const held = lines.get(from) ?? 0;
		if (held >= mostOfOne || all >= mostOfAll) {
			socket.destroy();
			return;
		}
		lines.set(from, held + 1);
		all++;
		socket.once('close', () => {
			all--;
			const left = lines.get(from)! - 1;
			if (left > 0) lines.set(from, left);
			else lines.delete(from);
		});
	});
}
