import type { FastifyReply, FastifyRequest } from 'fastify';
import { UNUSED_S } from '../../app/hosting/sessions.ts';

/** The name of the session's cookie. With the prefix a browser takes it from this host alone, over an encrypted line (RFC 6265bis, section 4.1.3.2). */
const nameAt = (origin: URL): string => (origin.protocol === 'https:' ? '__Host-dyelot' : 'dyelot-session');

const optionsAt = (origin: URL) =>
	({ httpOnly: true, sameSite: 'strict', path: '/', secure: origin.protocol === 'https:' }) as const;

export const tokenIn = (request: FastifyRequest, origin: URL): string | undefined => request.cookies[nameAt(origin)];

/** Scripts cannot read it, other sites cannot make the browser send it. */
export const keepToken = (reply: FastifyReply, origin: URL, token: string): FastifyReply =>
	reply.setCookie(nameAt(origin), token, { ...optionsAt(origin), maxAge: UNUSED_S });

export const dropToken = (reply: FastifyReply, origin: URL): FastifyReply =>
	reply.clearCookie(nameAt(origin), optionsAt(origin));
