import type { FastifyInstance } from 'fastify';
import { seasonPocketFile } from '../../app/pocket-file.ts';
import type { Services } from '../../app/services.ts';
import { type ById, byId } from '../schemas/basics.ts';

/** The pocket page for the shop, as a file to send to a phone. */
export function pocketRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/pocket', { schema: { params: byId } }, async (request, reply) => {
		const file = await seasonPocketFile(services, request.params.id);
		return reply
			.type('text/html; charset=utf-8')
			.header('content-disposition', 'attachment; filename="dyelot-pocket.html"')
			.send(file);
	});
}
