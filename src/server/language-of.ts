import type { FastifyRequest } from 'fastify';
import { type Language, languageFrom } from '../colour/words/language.ts';

/** The language that a request asks its answer in, by its `Accept-Language` header. */
export const languageOf = (request: FastifyRequest): Language => languageFrom(request.headers['accept-language']);
