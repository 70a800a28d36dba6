import { seasonPocketFile } from '../../app/pocket-file.ts';
import { seasonOperations as operations } from '../operations/seasons.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** The pocket page for the shop, as a file to send to a phone. */
export function pocketRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.getPocketPage,
		handler: async (request, reply) => {
			const file = await seasonPocketFile(servicesOf(request), request.params.id);
			return reply
				.type('text/html; charset=utf-8')
				.header('content-disposition', 'attachment; filename="dyelot-pocket.html"')
				.send(file);
		},
	});
}
