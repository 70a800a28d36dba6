import { Agent, request } from 'node:http';
import { connect } from 'node:net';
import { networkInterfaces } from 'node:os';

/**
 * Address of this machine by which a request to itself comes in as from another device: its own on the local network, else a second one of the
 * loopback network (Linux answers on all of 127.0.0.0/8, RFC 1122, section 3.2.1.3, names the whole block). Nothing leaves the machine.
 */
export const strangersAddress = (): string =>
	Object.values(networkInterfaces())
		.flatMap((list) => list ?? [])
		.find(({ family, internal }) => family === 'IPv4' && !internal)?.address ?? '127.0.0.2';

/** What was answered: status and body. */
export type RawAnswer = { readonly status: number; readonly text: string };

/** Asks a server with the address exactly as written, from the stranger's own address, over a few lines that stay open. */
export function strangerTo(port: number) {
	const host = strangersAddress();
	const agent = new Agent({ keepAlive: true, maxSockets: 4, localAddress: host });
	const ask = (method: string, path: string, headers: Readonly<Record<string, string>> = {}, body?: string) =>
		new Promise<RawAnswer>((resolve, reject) => {
			const call = request(
				{ agent, host, port, method, path, headers: { host: `${host}:${port}`, ...headers } },
				(answer) => {
					let text = '';
					answer.setEncoding('utf8');
					answer.on('data', (chunk: string) => {
						text += chunk;
					});
					answer.on('error', reject);
					answer.on('end', () => resolve({ status: answer.statusCode ?? 0, text }));
				},
			);
			call.on('error', reject);
			call.end(body);
		});
	/** The status alone, 0 where the server hung up on the body; an answer that goes on for ever is left. */
	const statusOf = (method: string, path: string, headers: Readonly<Record<string, string>> = {}, body?: string) =>
		new Promise<number>((resolve, reject) => {
			const call = request(
				{ agent, host, port, method, path, headers: { host: `${host}:${port}`, ...headers } },
				(answer) => {
					const { statusCode = 0 } = answer;
					resolve(statusCode);
					if (statusCode === 200) answer.destroy();
					else answer.resume();
				},
			);
			call.on('error', (error: NodeJS.ErrnoException) =>
				error.code === 'ECONNRESET' || error.code === 'EPIPE' ? resolve(0) : reject(error),
			);
			call.end(body);
		});
	/** How many of so many lines, opened at once and left silent, the server keeps. */
	async function linesKept(lines: number): Promise<number> {
		const sockets = Array.from({ length: lines }, () => connect({ host, port, localAddress: host }));
		const told = await Promise.all(
			sockets.map(
				(socket) =>
					new Promise<boolean>((resolve) => {
						socket.on('error', () => resolve(false));
						socket.on('close', () => resolve(false));
						// Whoever is kept is answered, that it asked for nothing known.
						socket.on('data', () => resolve(true));
						socket.write(`GET /nothing HTTP/1.1\r\nHost: ${host}:${port}\r\n\r\n`);
					}),
			),
		);
		for (const socket of sockets) socket.destroy();
		return told.filter((kept) => kept).length;
	}
	return { host: `${host}:${port}`, ask, statusOf, linesKept, close: () => agent.destroy() };
}
