import { createServer } from 'node:net';

/** A port of this computer that nobody uses just now. */
export const freePort = (): Promise<number> =>
	new Promise((resolve, reject) => {
		const server = createServer().once('error', reject);
		server.listen(0, '127.0.0.1', () => {
			const { port } = server.address() as { port: number };
			server.close(() => resolve(port));
		});
	});
