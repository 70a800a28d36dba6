import type { FastifyInstance, FastifyRequest } from 'fastify';
import { UserError } from '../../app/errors.ts';
import { HomeGoneError } from '../../app/hosting/home-services.ts';
import type { Host } from '../../app/hosting/host.ts';
import { isStillIn, recognise } from '../../app/hosting/sessions.ts';
import type { Services } from '../../app/services.ts';
import { say } from '../../language/speak.ts';
import type { Role } from '../../store/postgres/accounts/tables.ts';
import type { Entrance } from '../entrance.ts';
import { PAGE_ADDRESSES } from '../open-routes.ts';
import type { App } from '../typed-app.ts';
import { noSuchAddress } from '../who-may-come-in.ts';
import { keepToken, tokenIn } from './cookie.ts';
import { homeNamedBy } from './home-in-address.ts';
import type { Comer, HostedRoutes } from './hosted-routes.ts';
import { ASKING_ONLY, HOSTED_PAGE_ADDRESSES, OPEN_ROUTES, OPERATORS_ADDRESSES, OWNERS_ROUTES } from './open-routes.ts';
import { meaningOfReach } from './out-of-reach.ts';
import { homeRoutes } from './routes/homes.ts';
import { joinRoutes } from './routes/joining.ts';
import { memberRoutes } from './routes/members.ts';
import { ownPasskeyRoutes } from './routes/own-passkeys.ts';
import { peopleRoutes } from './routes/people.ts';
import { sessionRoutes } from './routes/sessions.ts';
import { signInRoutes } from './routes/sign-in.ts';
import { turnsAtWork } from './turns-at-work.ts';

/** Photos on their way to one server: those of sixteen people who send as many as they may. */
const MOST_UPLOADS = 64;

/** Addresses of people, homes and sessions: those of no home. */
const isOfHost = (url: string | undefined): boolean => url?.startsWith('/api/host/') ?? false;

const looks = (method: string): boolean => method === 'GET' || method === 'HEAD';

function refuseBeyondRole(role: Role, route: string, method: string): void {
	if (OWNERS_ROUTES.has(route) && role !== 'own') throw new UserError('only-looking', say('hosting.onlyOwners'));
	if (role === 'look' && !looks(method) && !ASKING_ONLY.has(route))
		throw new UserError('only-looking', say('hosting.onlyLooking'));
}

/** Many homes, for people who sign in: the address names the home, the session says who asks, and the database what they may do there. */
export function hostedEntrance(host: Host, origin: URL): Entrance {
	const comers = new WeakMap<FastifyRequest, Comer>();
	const homes = new WeakMap<FastifyRequest, Services>();
	const whoAsks = (request: FastifyRequest) => recognise(host, tokenIn(request, origin), homeNamedBy(request.raw));

	async function openHome(request: FastifyRequest, home: string): Promise<void> {
		try {
			homes.set(request, await host.homeServices(home));
		} catch (error) {
			throw error instanceof HomeGoneError ? noSuchAddress(request) : error;
		}
	}
	const guard = (app: FastifyInstance) => {
		const turns = turnsAtWork(app);
		app.addHook('onRequest', async (request, reply) => {
			if (request.is404) {
				// Answered before its body is read: nobody's bytes are worth work for an address that does not exist.
				if (!looks(request.method)) throw noSuchAddress(request);
				return;
			}
			const route = `${request.method} ${request.routeOptions.url}`;
			if (OPEN_ROUTES.has(route)) return;
			const found = await whoAsks(request);
			if (!found) throw new UserError('not-signed-in', say('hosting.notSignedIn'));
			if (found.token !== null) keepToken(reply, origin, found.token);
			comers.set(request, { person: found.person, sessionId: found.id, signedInAt: found.signedInAt });
			const home = homeNamedBy(request.raw);
			if (isOfHost(request.routeOptions.url) !== (home === null)) throw noSuchAddress(request);
			if (home === null) return turns.take(request, reply, route, found.person.id);
			// Whether there is such a home is told to nobody who may not come in.
			if (found.role === null) throw noSuchAddress(request);
			refuseBeyondRole(found.role, route, request.method);
			await openHome(request, home);
			return turns.take(request, reply, route, found.person.id);
		});
	};
	const routes = (app: App) => {
		const shared: HostedRoutes = { host, origin, comerOf: (request) => letIn(comers.get(request)) };
		signInRoutes(app, shared);
		joinRoutes(app, shared);
		sessionRoutes(app, shared);
		ownPasskeyRoutes(app, shared);
		homeRoutes(app, shared);
		memberRoutes(app, shared);
		peopleRoutes(app, shared);
	};
	return {
		names: () => [origin.hostname],
		guard,
		routes,
		page: { isHosted: true, addresses: [...PAGE_ADDRESSES, ...HOSTED_PAGE_ADDRESSES] },
		meaningOf: meaningOfReach,
		isEncrypted: origin.protocol === 'https:',
		namelessAddresses: new Set(OPERATORS_ADDRESSES),
		servicesOf: (request) => letIn(homes.get(request)),
		uploads: { whoOf: (request) => letIn(comers.get(request)).person.id, mostOfAll: MOST_UPLOADS },
		isStillLetIn: (request) =>
			isStillIn(host, letIn(comers.get(request)).sessionId, letIn(homeNamedBy(request.raw) ?? undefined)),
	};
}

/** A route that nobody was let in to cannot be answered. */
function letIn<T>(one: T | undefined): T {
	if (one === undefined) throw new TypeError('a route was reached that the guard had not seen');
	return one;
}
