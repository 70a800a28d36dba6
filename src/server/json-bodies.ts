import type { FastifyInstance } from 'fastify';

/** The character U+0000 as JSON writes it; a backslash that is itself escaped before it makes it six plain letters. */
const NUL = /(?<!\\)((?:\\\\)*)\\u0000/g;

/**
 * JSON is taken without the character U+0000, which nobody can type or see: PostgreSQL refuses text that holds it (manual, section 8.3), and SQLite
 * gives it back cut off there (sqlite.org/nulinstr.html).
 */
export function takeJson(app: FastifyInstance): void {
	const parse = app.getDefaultJsonParser('error', 'error');
	app.addContentTypeParser('application/json', { parseAs: 'string' }, (request, body, done) =>
		parse(request, String(body).replaceAll(NUL, '$1'), done),
	);
}
