import { AsyncLocalStorage } from 'node:async_hooks';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import { type Language, languageFrom } from '../colour/words/language.ts';
import { spoken, spokenJson } from '../language/kept-sentence.ts';
import { speak } from '../language/speak.ts';

/** The language of the request that is being answered; kept across everything that is awaited for it. */
const languages = new AsyncLocalStorage<Language>();

/** A link that the browser itself follows cannot send the page's own language as a header: it has it behind the address. */
const languageOf = ({ query, headers }: FastifyRequest): Language => {
	const { language } = query as { readonly language?: unknown };
	return languageFrom(typeof language === 'string' ? language : headers['accept-language']);
};

/** Tables and drawings are plain text; in the page for the pocket sentences stand in a script of JSON. */
const JSON_WITHIN = /json|html/;

/** The answer with the stored sentences in it said in the reader's language. */
function spokenPayload(reply: FastifyReply, payload: unknown): unknown {
	if (typeof payload !== 'string') return payload;
	return JSON_WITHIN.test(String(reply.getHeader('content-type'))) ? spokenJson(payload) : spoken(payload);
}

/**
 * Answers each request in the language that its `Accept-Language` header, or `language` behind its address, asks for; work that belongs to no request speaks British English. Set anew
 * before the body is checked, because reading a body leaves the request's own context.
 */
export function answerInLanguage(app: FastifyInstance): void {
	speak(() => languages.getStore() ?? 'en-GB');
	app.addHook('onRequest', (request, _reply, done) => languages.run(languageOf(request), done));
	app.addHook('onSend', async (_request, reply, payload) => spokenPayload(reply, payload));
	app.addHook('preValidation', (request, _reply, done) => languages.run(languageOf(request), done));
}
