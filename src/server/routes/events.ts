import type { ServerEvent } from '../../app/events.ts';
import type { Services } from '../../app/services.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { App } from '../typed-app.ts';
import { isLetIn } from '../who-may-come-in.ts';

/** Server-sent events: one per photo read, one per change made in another window. */
export function eventRoutes(app: App, services: Services): void {
	app.route({
		...operations.listenToEvents,
		sse: 'only',
		handler: async (request, reply) => {
			reply.sse.keepAlive();
			const stop = services.events.listen(({ event, data }: ServerEvent) => {
				if (!isLetIn(request, services.sharing)) {
					// A device that was sent away hears nothing more.
					stop();
					reply.sse.close();
					return;
				}
				void reply.sse.send({ event, data }).catch((error: unknown) => {
					stop();
					request.log.info(error, 'a page stopped listening');
				});
			});
			reply.sse.onClose(stop);
			await reply.sse.send({ event: 'hello', data: {} });
		},
	});
}
