import { AsyncLocalStorage } from 'node:async_hooks';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { type Language, languageFrom } from '../colour/words/language.ts';
import { speak } from '../language/speak.ts';

/** The language of the request that is being answered; kept across everything that is awaited for it. */
const languages = new AsyncLocalStorage<Language>();

const languageOf = (request: FastifyRequest): Language => languageFrom(request.headers['accept-language']);

/**
 * Answers each request in the language that its `Accept-Language` header asks for; work that belongs to no request speaks British English. Set anew
 * before the body is checked, because reading a body leaves the request's own context.
 */
export function answerInLanguage(app: FastifyInstance): void {
	speak(() => languages.getStore() ?? 'en-GB');
	app.addHook('onRequest', (request, _reply, done) => languages.run(languageOf(request), done));
	app.addHook('preValidation', (request, _reply, done) => languages.run(languageOf(request), done));
}
