import type { FastifyRequest } from 'fastify';
import type { ServerEvent } from '../../app/events.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Server-sent events: one per photo read, one per change made in another window. Who may no longer come in hears nothing more. */
export function eventRoutes(
	app: App,
	servicesOf: ServicesOf,
	isStillLetIn: (request: FastifyRequest) => Promise<boolean>,
): void {
	app.route({
		...operations.listenToEvents,
		sse: 'only',
		handler: async (request, reply) => {
			reply.sse.keepAlive();
			/** One after the other, in the order in which they came. */
			let told = Promise.resolve();
			const tell = async ({ event, data }: ServerEvent) => {
				if (await isStillLetIn(request)) return reply.sse.send({ event, data });
				stop();
				reply.sse.close();
			};
			const stop = servicesOf(request).events.listen((heard) => {
				told = told
					.then(() => tell(heard))
					.catch((error: unknown) => {
						stop();
						request.log.info(error, 'a page stopped listening');
					});
			});
			reply.sse.onClose(stop);
			await reply.sse.send({ event: 'hello', data: {} });
		},
	});
}
