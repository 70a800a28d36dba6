import type { FastifyReply, FastifyRequest } from 'fastify';
import { lookAgainAtLines } from '../../../app/hosting/open-lines.ts';
import { askForPasskey, personWithPasskey } from '../../../app/hosting/passkeys.ts';
import { beginSession, leaveSession } from '../../../app/hosting/sessions.ts';
import { countFrom, signIn } from '../../../app/hosting/sign-in.ts';
import { endSessions } from '../../../store/postgres/accounts/sessions.ts';
import type { App } from '../../typed-app.ts';
import { dropToken, keepToken, tokenIn } from '../cookie.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** Bytes that a stranger may send: a browser's answer about a passkey has a few kilobytes. */
export const STRANGERS_BYTES = 16 * 1024;

/** Begins a session in the browser that asks; one that it was in before ends. */
export async function letInBrowser(
	{ host, origin }: HostedRoutes,
	person: string,
	request: FastifyRequest,
	reply: FastifyReply,
): Promise<{ readonly signedIn: true }> {
	await leaveSession(host, tokenIn(request, origin));
	const { token } = await beginSession(host, person, request.headers['user-agent']);
	keepToken(reply, origin, token);
	return { signedIn: true };
}

/** Signing in, by passkey or by name and password, and out. */
export function signInRoutes(app: App, shared: HostedRoutes): void {
	const { host, origin, comerOf } = shared;
	const bodyLimit = STRANGERS_BYTES;
	app.route({
		...HOSTED.signIn,
		bodyLimit,
		handler: async (request, reply) => {
			const person = await signIn(host, { ...request.body, address: request.ip });
			return letInBrowser(shared, person.id, request, reply);
		},
	});
	app.route({
		...HOSTED.askForPasskey,
		bodyLimit,
		handler: async (request) => {
			await countFrom(host, request.ip);
			return askForPasskey(host, origin);
		},
	});
	app.route({
		...HOSTED.signInWithPasskey,
		bodyLimit,
		handler: async (request, reply) => {
			await countFrom(host, request.ip);
			const person = await personWithPasskey(host, origin, request.body);
			return letInBrowser(shared, person.id, request, reply);
		},
	});
	app.route({
		...HOSTED.signOut,
		handler: async (request, reply) => {
			const { person, sessionId } = comerOf(request);
			await endSessions(host.accounts, person.id, { id: sessionId });
			await lookAgainAtLines(host, person.id);
			dropToken(reply, origin);
			return { signedOut: true };
		},
	});
}
