import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { UserError } from '../app/errors.ts';

const pageFolder = fileURLToPath(new URL('../../web/dist/', import.meta.url));

/** Serves the built page; every address that is no file and not under /api is one of the page's own stations. */
export async function servePage(app: FastifyInstance): Promise<void> {
	const built = existsSync(`${pageFolder}index.html`);
	if (built) {
		await app.register(fastifyStatic, {
			root: pageFolder,
			// Built files carry a hash in their name; the page itself must always be asked for anew.
			cacheControl: false,
			setHeaders: (response, path) =>
				response.setHeader(
					'cache-control',
					path.includes('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
				),
		});
	}
	app.setNotFoundHandler(async (request, reply) => {
		if (request.method !== 'GET' || request.url.startsWith('/api/')) {
			throw new UserError(
				'not-found',
				`Expected an address of Dyelot; ${request.method} ${request.url.slice(0, 120)} is none.`,
			);
		}
		if (!built)
			return reply
				.type('text/plain')
				.send('The page is not built yet. Start Dyelot with "npm start", which builds it.');
		return reply.header('cache-control', 'no-cache').sendFile('index.html');
	});
}
