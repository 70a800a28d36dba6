import type { IncomingMessage } from 'node:http';

/** An address within a home: what stands behind is the same as where one home is kept. */
const WITHIN = /^\/homes\/([\w-]{1,64})(?=[/?#]|$)/;

const homes = new WeakMap<IncomingMessage, string>();

/** The address as it is within the home; which home is remembered with the request. */
export function addressWithinHome(request: IncomingMessage): string {
	const url = request.url ?? '/';
	const found = WITHIN.exec(url);
	if (!found) return url;
	homes.set(request, found[1]!);
	const within = url.slice(found[0].length);
	return within.startsWith('/') ? within : `/${within}`;
}

/** The home that the request's address names, or null. */
export const homeNamedBy = (request: IncomingMessage): string | null => homes.get(request) ?? null;
