import { type FastifyInstance, LogController, type onRouteHookHandler } from 'fastify';
import { type Host, openHost } from '../../app/hosting/host.ts';
import { hostsLink } from '../../app/hosting/joining.ts';
import type { HostSettings } from '../../app/hosting/shared.ts';
import { buildApp } from '../app.ts';
import { listen } from '../listen.ts';
import { drainOnStop } from './draining.ts';
import { healthRoutes } from './health.ts';
import { addressWithinHome } from './home-in-address.ts';
import { hostedEntrance } from './hosted-entrance.ts';
import { noteRequests, quietLog } from './quiet-log.ts';
import { stopOnSignals } from './stop-on-signals.ts';

export type HostedServer = {
	/** Where the page is, as browsers see it. */
	readonly origin: URL;
	/** Addresses (or ranges) of proxies whose word on who asks is believed; empty = nobody's. */
	readonly proxies: readonly string[];
	/** Answers where photos can be kept and fetched. */
	readonly photosReady: () => Promise<void>;
};

/** An archive of a whole wardrobe may be long on its way; a line that says nothing is ended long before. */
const REQUEST_MS = 3600 * 1000;
/** Answers on their way have so long when the server stops. */
const DRAIN_MS = 25_000;

/** The application of a host; `drain` lets the requests on their way be answered first. */
export async function hostedApp(
	host: Host,
	{ origin, proxies, photosReady }: HostedServer,
	options: { readonly onRoute?: onRouteHookHandler; readonly silent?: true } = {},
): Promise<{ readonly app: FastifyInstance; drain(): Promise<void> }> {
	let drain = () => Promise.resolve();
	const app = await buildApp(hostedEntrance(host, origin), {
		...(options.onRoute ? { onRoute: options.onRoute } : {}),
		server: {
			logger: options.silent ? false : quietLog,
			logController: new LogController({ disableRequestLogging: true }),
			trustProxy: proxies.length > 0 ? [...proxies] : false,
			rewriteUrl: addressWithinHome,
			requestTimeout: REQUEST_MS,
		},
		first: (server) => {
			noteRequests(server);
			const draining = drainOnStop(server);
			drain = () => draining.drain(DRAIN_MS);
			const ready = async () => {
				await host.database.ping();
				await photosReady();
			};
			healthRoutes(server, { ready, isDraining: draining.isDraining });
		},
	});
	return { app, drain };
}

/** Opens everything, listens, and logs where; the first start logs the link for whoever keeps the host. Stops cleanly on a signal. */
export async function serveHosted(
	settings: Omit<HostSettings, 'report' | 'queuesWaiting'> &
		HostedServer & { readonly port: number; readonly listenOn: string },
): Promise<void> {
	const { origin, port, listenOn } = settings;
	let report: HostSettings['report'] = () => {};
	const host = await openHost({ ...settings, queuesWaiting: true, report: (error) => report(error) });
	const { app, drain } = await hostedApp(host, settings).catch(async (error: unknown) => {
		await host.close();
		throw error;
	});
	report = (error) => app.log.error(error, 'fault');
	const close = async () => {
		await drain();
		await app.close();
		await host.close();
	};
	stopOnSignals(app.log, close);
	try {
		await listen(app, port, listenOn);
	} catch (error) {
		await close();
		throw error;
	}
	app.log.info({ address: origin.href }, 'ready');
	const link = await hostsLink(host, origin);
	if (link !== null) app.log.info({ link }, 'first-link');
}
