import { type OpenSettings, openServices } from '../app/open-services.ts';
import type { Services } from '../app/services.ts';
import { networkAddresses } from '../app/sharing.ts';
import { eitherText } from '../language/numbers.ts';
import { say } from '../language/speak.ts';
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
	settings.log(say('serverWords.ready', { address, home: settings.homePath }));
	if (services.sharing) {
		const addresses = networkAddresses().map((number) => `http://${number}:${port}/`);
		settings.log(
			addresses.length > 0
				? say('serverWords.shared', { addresses: eitherText(addresses), address })
				: say('serverWords.noNetwork'),
		);
		settings.log(say('serverWords.code', { code: services.sharing.code().code }));
	}
	let stopping = false;
	for (const signal of ['SIGINT', 'SIGTERM'] as const) {
		process.once(signal, () => {
			if (stopping) return;
			stopping = true;
			close().then(
				() => process.exit(0),
				(error: unknown) => {
					settings.log(say('serverWords.unclean', { error: String(error) }));
					process.exit(1);
				},
			);
		});
	}
	return { address, services, close };
}
