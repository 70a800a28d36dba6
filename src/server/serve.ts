import { type OpenSettings, openServices } from '../app/open-services.ts';
import type { Services } from '../app/services.ts';
import { networkAddresses } from '../app/sharing.ts';
import { spoken } from '../language/kept-sentence.ts';
import { eitherText } from '../language/numbers.ts';
import { say } from '../language/speak.ts';
import { finishReplacing, putBack, replaceHome } from '../store/replace-home.ts';
import { buildApp } from './app.ts';
import { ownEntrance } from './entrance.ts';
import { listen } from './listen.ts';

export type ServeSettings = Omit<OpenSettings, 'startAnew'> & {
	/** 0 = any free port. */
	readonly port: number;
};

export type RunningServer = {
	readonly address: string;
	/** Those of the home that is open now: another one's after a restore. */
	readonly services: Services;
	close(): Promise<void>;
};

/** One home, opened and listened for. */
type Open = { readonly services: Services; readonly port: number; close(): Promise<void> };

async function open(settings: ServeSettings, startAnew: (aside: string) => void): Promise<Open> {
	await finishReplacing(settings.homePath);
	const services = await openServices({ ...settings, startAnew });
	for (const finding of services.findings) settings.log(spoken(finding));
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
	return { services, port: (app.server.address() as { port: number }).port, close };
}

function tellWhere({ services, port }: Open, settings: ServeSettings): string {
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
	return address;
}

/** Ends the program when the terminal interrupts it, cleanly. */
function closeOnSignal(close: () => Promise<void>, log: ServeSettings['log']): void {
	let stopping = false;
	for (const signal of ['SIGINT', 'SIGTERM'] as const) {
		process.once(signal, () => {
			if (stopping) return;
			stopping = true;
			close().then(
				() => process.exit(0),
				(error: unknown) => {
					log(say('serverWords.unclean', { error: String(error) }));
					process.exit(1);
				},
			);
		});
	}
}

/**
 * Opens the home, listens, and says where. Stops cleanly on the terminal's interrupt. After a restore it starts anew at the same address over
 * the archive; where that cannot be opened, over the home as it was.
 */
export async function serve(settings: ServeSettings): Promise<RunningServer> {
	const { homePath, log } = settings;
	/** What is open now; while the program starts anew, what will be. */
	let now: Promise<Open> = open(settings, startAnew);
	const { port } = await now;
	const samePort = { ...settings, port };

	async function anew(before: Open, aside: string): Promise<Open> {
		await before.close();
		await replaceHome(homePath, aside);
		try {
			const opened = await open(samePort, startAnew);
			log(say('serverWords.restored', { aside }));
			return opened;
		} catch (error) {
			await putBack(homePath, aside);
			log(say('serverWords.notRestored', { error: String(error) }));
			return open(samePort, startAnew);
		}
	}
	let current = await now;
	function startAnew(aside: string): void {
		now = now.then((before) => anew(before, aside));
		now.then(
			(opened) => {
				current = opened;
			},
			(error: unknown) => log(say('serverWords.unclean', { error: String(error) })),
		);
	}
	const close = async () => (await now).close();
	const address = tellWhere(current, settings);
	closeOnSignal(close, log);
	return {
		address,
		get services() {
			return current.services;
		},
		close,
	};
}
