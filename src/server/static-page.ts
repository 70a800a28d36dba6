import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance, FastifyReply } from 'fastify';
import { say } from '../language/speak.ts';
import { PAGE_FILES } from './open-routes.ts';
import { noSuchAddress } from './who-may-come-in.ts';

const pageFolder = fileURLToPath(new URL('../../web/dist/', import.meta.url));

/** The page itself must always be asked for anew: the files that it names change with each build. */
const sendFresh = (reply: FastifyReply, file: string) =>
	reply.header('cache-control', 'no-cache').sendFile(file, pageFolder);

/** The page: whether it is told that many homes are kept, and the addresses at which it is shown. */
export type Page = { readonly isHosted: boolean; readonly addresses: readonly string[] };

/** The page that says of itself that many homes are kept. */
const hostedPage = (): string =>
	readFileSync(join(pageFolder, 'index.html'), 'utf8').replace('<html ', '<html data-form="hosted" ');

/** Serves the built page at each of its addresses; any other address is answered as not found, with the page where a person looks at it. */
export async function servePage(app: FastifyInstance, { isHosted, addresses }: Page): Promise<void> {
	const built = existsSync(join(pageFolder, 'index.html'));
	if (built) {
		await app.register(fastifyStatic, {
			root: `${pageFolder}assets`,
			prefix: PAGE_FILES.folder.replace('*', ''),
			// All of them lie in the folder itself: a name with a way in it is none of theirs.
			allowedPath: (path) => /^\/?[\w.-]+$/.test(path) && !path.includes('..'),
			// Built files carry a hash in their name.
			cacheControl: false,
			setHeaders: (response, path) => {
				if (path.includes('/assets/')) response.setHeader('cache-control', 'public, max-age=31536000, immutable');
			},
		});
		app.get(PAGE_FILES.mark, async (_request, reply) => sendFresh(reply, 'mark.svg'));
	}
	const hosted = built && isHosted ? hostedPage() : null;
	const sendPage = (reply: FastifyReply) =>
		hosted === null
			? sendFresh(reply, 'index.html')
			: reply.header('cache-control', 'no-cache').type('text/html; charset=utf-8').send(hosted);
	const page = async (reply: FastifyReply) =>
		built ? sendPage(reply) : reply.type('text/plain').send(say('serverWords.notBuilt'));
	for (const address of addresses) app.get(address, { schema: { hide: true } }, (_request, reply) => page(reply));
	app.setNotFoundHandler(async (request, reply) => {
		const isPerson = request.method === 'GET' && (request.headers.accept ?? '').includes('text/html');
		if (!isPerson || request.url.startsWith('/api/')) throw noSuchAddress(request);
		return page(reply.code(404));
	});
}
