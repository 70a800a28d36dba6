import Fastify, { LogController } from 'fastify';
import { openHost } from '../../app/hosting/host.ts';
import type { HostSettings } from '../../app/hosting/shared.ts';
import { work } from '../../app/hosting/work.ts';
import { healthRoutes } from './health.ts';
import { quietLog } from './quiet-log.ts';
import type { HostedServer } from './serve-hosted.ts';
import { stopOnSignals } from './stop-on-signals.ts';

/** Reads photos of all homes until a signal stops it; with a port it also tells an operator's programs how it is. */
export async function workHosted(
	settings: Omit<HostSettings, 'report' | 'queuesWaiting'> &
		Pick<HostedServer, 'photosReady'> & { readonly port: number | null; readonly listenOn: string },
): Promise<void> {
	const app = Fastify({
		logger: quietLog,
		logController: new LogController({ disableRequestLogging: true }),
		forceCloseConnections: true,
	});
	const host = await openHost({
		...settings,
		queuesWaiting: false,
		report: (error) => app.log.error(error, 'fault'),
	});
	const ready = async () => {
		await host.database.ping();
		await settings.photosReady();
	};
	healthRoutes(app, { ready, isDraining: () => false });
	if (settings.port !== null) await app.listen({ port: settings.port, host: settings.listenOn });
	stopOnSignals(app.log, async () => {
		await host.close();
		await app.close();
	});
	await work(host, {
		onRead: (ms) => app.log.info({ ms }, 'photo-read'),
		onGivenUp: () => app.log.warn('photo-given-up'),
	});
	app.log.info({ atOnce: settings.threads }, 'ready');
}
