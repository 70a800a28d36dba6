import type { FastifyInstance } from 'fastify';
import { UserError } from '../app/errors.ts';
import { say } from '../language/speak.ts';

const LOOPBACK_NAMES = new Set(['localhost', '127.0.0.1', '[::1]']);

/** The host part of a Host header or origin, without its port, lower case. */
const nameOf = (host: string): string => host.toLowerCase().replace(/:\d+$/, '');

/**
 * Refuses requests under a name that is not this computer's. A page on the web can point its own name at 127.0.0.1 (DNS rebinding); that
 * shows in the Host header, which no page can forge. `extraNames` are the addresses added by sharing on the local network; what tells nothing may be
 * asked under any name.
 */
export function refuseForeignHosts(
	app: FastifyInstance,
	extraNames: () => readonly string[],
	namelessAddresses: ReadonlySet<string>,
): void {
	app.addHook('onRequest', async (request) => {
		if (namelessAddresses.has(request.routeOptions.url ?? '')) return;
		const isOurs = (host: string) => LOOPBACK_NAMES.has(nameOf(host)) || extraNames().includes(nameOf(host));
		const host = request.headers.host ?? '';
		// Of several only the first would be looked at (RFC 9112, section 3.2, asks to refuse them).
		const hosts = request.raw.rawHeaders.filter(
			(name, index) => index % 2 === 0 && name.toLowerCase() === 'host',
		).length;
		if (hosts > 1 || !isOurs(host)) {
			throw new UserError('foreign-host', say('serverWords.otherHost', { host: host.slice(0, 80) }));
		}
	});
}
