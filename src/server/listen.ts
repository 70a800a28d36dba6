import { createServer } from 'node:net';
import type { FastifyInstance } from 'fastify';
import { USUAL_PORT } from '../app/usual-port.ts';
import { say } from '../language/speak.ts';

/** The program cannot listen where it should; the message offers another port. */
export class PortError extends Error {}

/** Ports looked at for a free one. */
const OFFERED_WITHIN = 50;
const LAST_PORT = 65_535;

const isFree = (port: number, host: string): Promise<boolean> =>
	new Promise((resolve) => {
		const server = createServer();
		server.once('error', () => resolve(false));
		server.listen({ port, host }, () => server.close(() => resolve(true)));
	});

async function freePortAfter(port: number, host: string): Promise<number | null> {
	const from = port < 1024 ? USUAL_PORT : port + 1;
	for (let next = from; next <= Math.min(LAST_PORT, from + OFFERED_WITHIN); next++)
		if (await isFree(next, host)) return next;
	return null;
}

const REASONS = ['EADDRINUSE', 'EACCES'] as const;

/** Starts to listen. Throws {@link PortError} where the port is taken or may not be used. */
export async function listen(app: FastifyInstance, port: number, host: string): Promise<void> {
	try {
		await app.listen({ port, host });
	} catch (error) {
		const code = REASONS.find((one) => one === (error as NodeJS.ErrnoException).code);
		if (code === undefined) throw error;
		const reason = say(`ports.${code}`);
		const free = await freePortAfter(port, host);
		const offer = free === null ? say('ports.another') : say('ports.offer', { free });
		throw new PortError(say('ports.taken', { port, reason, offer }));
	}
}
