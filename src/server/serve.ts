import { type OpenSettings, openServices } from '../app/open-services.ts';
import type { Services } from '../app/services.ts';
import { networkAddresses } from '../app/sharing.ts';
import { buildApp } from './app.ts';
import { ownEntrance } from './entrance.ts';
import { listen } from './listen.ts';

export type ServeSettings = OpenSettings & {
	/** 0 = any free port. */
	readonly port: number;
};

export type RunningServer = { readonly address: string; readonly services: Services; close(): Promise<void> };

/** Opens the home, listens, and says where. Stops cleanly on the terminal's interrupt. */
export async function serve(settings: ServeSettings): Promise<RunningServer> {
	const services = await openServices(settings);
	for (const finding of services.findings) settings.log(finding);
	const app = await buildApp(ownEntrance(services), { server: { logger: { level: 'warn' } } });
	const close = async () => {
		await app.close();
		await services.close();
	};
	try {
		await listen(app, settings.port, settings.share ? '0.0.0.0' : '127.0.0.1');
	} catch (error) {
		await close();
		throw error;
	}
	const { port } = app.server.address() as { port: number };
	const address = `http://localhost:${port}/`;
	settings.log(`Dyelot is ready: open ${address} in a browser. Your wardrobe is kept in ${settings.homePath}.`);
	if (services.sharing) {
		const addresses = networkAddresses().map((number) => `http://${number}:${port}/`);
		settings.log(
			addresses.length > 0
				? `Shared on the local network: open ${addresses.join(' or ')} on a phone. The code for it is shown at ${address}devices.`
				: 'Expected a local network to share on; this computer is on none.',
		);
		settings.log(`Code for a phone, valid for ten minutes: ${services.sharing.code().code}`);
	}
	let stopping = false;
	for (const signal of ['SIGINT', 'SIGTERM'] as const) {
		process.once(signal, () => {
			if (stopping) return;
			stopping = true;
			close().then(
				() => process.exit(0),
				(error: unknown) => {
					settings.log(`Stopping did not go cleanly: ${String(error)}`);
					process.exit(1);
				},
			);
		});
	}
	return { address, services, close };
}
