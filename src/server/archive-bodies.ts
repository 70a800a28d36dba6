import { pipeline, Transform, type TransformCallback } from 'node:stream';
import type { FastifyInstance } from 'fastify';
import { UserError } from '../app/errors.ts';
import { say } from '../language/speak.ts';

/** The routes that take an archive, by method and the name under which they are registered. All others take JSON to be there. */
const ARCHIVE_ROUTES: ReadonlySet<string> = new Set(['POST /api/restore', 'POST /api/host/homes/bring']);

const tooLarge = (limitBytes: number): UserError =>
	new UserError('too-large', say('serverWords.archiveTooLarge', { most: limitBytes / 1024 ** 3 }));

/** Lets so many bytes through and fails at the next. */
function atMost(limitBytes: number): Transform {
	let came = 0;
	return new Transform({
		transform(chunk: Uint8Array, _encoding, done: TransformCallback) {
			came += chunk.length;
			if (came <= limitBytes) done(null, chunk);
			else done(tooLarge(limitBytes));
		},
	});
}

/**
 * An archive is taken as it comes, never held as a whole, up to its route's own limit: one that tells its length is refused before it comes, any
 * other is cut off.
 */
export function takeArchives(app: FastifyInstance): void {
	app.addContentTypeParser('application/x-tar', (request, body, done) => {
		const { url, bodyLimit } = request.routeOptions;
		if (!ARCHIVE_ROUTES.has(`${request.method} ${url}`))
			return done(new UserError('bad-request', say('serverWords.noArchiveHere')));
		if (Number(request.headers['content-length'] ?? 0) > bodyLimit) return done(tooLarge(bodyLimit));
		// What goes wrong is told to whoever reads the other end.
		done(
			null,
			pipeline(body, atMost(bodyLimit), () => {}),
		);
	});
}
