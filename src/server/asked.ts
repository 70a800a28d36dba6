import { createHash } from 'node:crypto';
import type { FastifyRequest } from 'fastify';
import { UserError } from '../app/errors.ts';
import { say } from '../language/speak.ts';
import type { Asked } from '../store/store.ts';

/** A key as the draft "The Idempotency-Key HTTP Header Field" (IETF httpapi) gives it, with its quotes or without: visible characters. */
const KEY = /^"?([\x21\x23-\x7e]{8,200})"?$/;

const digestOf = (body: unknown): string =>
	createHash('sha256')
		.update(body instanceof Uint8Array || typeof body === 'string' ? body : (JSON.stringify(body) ?? ''))
		.digest('hex');

/** Who asks, and what: the key that the page sent with its request, and the request in short. */
export function askedBy(request: FastifyRequest): Asked {
	const { 'idempotency-key': header } = request.headers;
	const what = `${request.method} ${request.url} ${digestOf(request.body)}`;
	if (header === undefined) return { key: null, request: what };
	const key = KEY.exec(String(header))?.[1];
	if (!key) throw new UserError('bad-request', say('serverWords.badKey', { received: String(header).slice(0, 80) }));
	return { key, request: what };
}
