import type { FastifyBaseLogger } from 'fastify';
import { quietError } from './quiet-log.ts';

/** Stops cleanly on the signals by which operators and terminals ask for it. */
export function stopOnSignals(log: FastifyBaseLogger, close: () => Promise<void>): void {
	let stopping = false;
	for (const signal of ['SIGINT', 'SIGTERM'] as const) {
		process.on(signal, () => {
			if (stopping) return;
			stopping = true;
			log.info('stopping');
			close().then(
				() => {
					log.info('stopped');
					process.exit(0);
				},
				(error: unknown) => {
					log.error({ fault: quietError(error) }, 'fault');
					process.exit(1);
				},
			);
		});
	}
}
