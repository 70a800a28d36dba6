import type { FastifyInstance, FastifyRequest } from 'fastify';
import { say } from '../../language/speak.ts';

/** How a server stops without cutting anybody off in the middle. */
export type Draining = {
	/** Takes no new requests; resolves when those on their way are answered, or after `withinMs`. */
	drain(withinMs: number): Promise<void>;
	readonly isDraining: () => boolean;
};

/** A line of news goes on for ever, and its page opens another elsewhere. */
const isEndless = ({ routeOptions }: FastifyRequest): boolean => routeOptions.url === '/api/events';

const BACK_IN_S = 2;

/** Counts the requests on their way; before any other hook. */
export function drainOnStop(app: FastifyInstance): Draining {
	const onTheirWay = new Set<FastifyRequest>();
	let draining = false;
	let drained = () => {};
	app.addHook('onRequest', async (request, reply) => {
		if (draining && !isEndless(request)) reply.header('connection', 'close');
		if (draining && request.routeOptions.url !== '/health') {
			await reply
				.code(503)
				.header('retry-after', BACK_IN_S)
				.send({ error: { code: 'not-reached', message: say('hosting.stopping') } });
			return reply;
		}
		if (!isEndless(request)) onTheirWay.add(request);
		return undefined;
	});
	// Of an answer that its reader left, this one comes too.
	app.addHook('onRequest', async (request, reply) => {
		reply.raw.once('close', () => {
			onTheirWay.delete(request);
			if (draining && onTheirWay.size === 0) drained();
		});
	});
	return {
		isDraining: () => draining,
		drain(withinMs) {
			draining = true;
			if (onTheirWay.size === 0) return Promise.resolve();
			return new Promise((resolve) => {
				const timer = setTimeout(resolve, withinMs);
				drained = () => {
					clearTimeout(timer);
					resolve();
				};
			});
		},
	};
}
