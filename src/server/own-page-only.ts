import type { FastifyInstance, FastifyRequest } from 'fastify';
import { UserError } from '../app/errors.ts';
import { say } from '../language/speak.ts';

/**
 * Header that our own page sends with what it asks by script. No other site can add it: a browser would first ask us whether it may, and we
 * never say yes.
 */
export const OWN_HEADER = 'x-dyelot';

/** Every browser names itself so, for reasons of history (RFC 9110, section 10.1.5, on the header); curl and scripts do not, and no site steers those. */
const isBrowser = (request: FastifyRequest): boolean => /^mozilla\//i.test(request.headers['user-agent'] ?? '');

const isOwn = (address: string, host: string): boolean => URL.canParse(address) && new URL(address).host === host;

/**
 * Who made the browser ask, or null where it was our own page or a person. The first that is there decides: `Sec-Fetch-Site` (W3C Fetch
 * Metadata; browsers send it to this computer but not to a plain-http address of the network), Origin, Referer (our page sends it to
 * ourselves only), then our own header. A browser that shows none of them is taken for foreign.
 */
function foreignAsker(request: FastifyRequest): string | null {
	const { host = '', origin, referer } = request.headers;
	const site = request.headers['sec-fetch-site'];
	if (site !== undefined) return site === 'same-origin' || site === 'none' ? null : String(site);
	if (origin !== undefined) return isOwn(origin, host) ? null : origin;
	if (referer !== undefined) return isOwn(referer, host) ? null : referer;
	if (request.headers[OWN_HEADER] !== undefined) return null;
	return isBrowser(request) ? say('serverWords.untoldPage') : null;
}

const isOfTheInterface = ({ routeOptions }: FastifyRequest): boolean => routeOptions.url?.startsWith('/api/') ?? false;

/**
 * Refuses what another site made the browser ask of the interface, whatever the method: reading is work too, and a backup much of it. The
 * page's own addresses may be linked to from anywhere.
 */
export function refuseForeignPages(app: FastifyInstance): void {
	app.addHook('onRequest', async (request) => {
		const { host = '', origin } = request.headers;
		const asker = isOfTheInterface(request)
			? foreignAsker(request)
			: origin !== undefined && !isOwn(origin, host)
				? origin
				: null;
		if (asker === null) return;
		throw new UserError('foreign-origin', say('serverWords.otherPage', { page: asker.slice(0, 80) }));
	});
}
