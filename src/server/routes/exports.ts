import type { FastifyInstance } from 'fastify';
import { everything, TABLES, tableCsv } from '../../app/exports.ts';
import type { Services } from '../../app/services.ts';

/** Everything in open formats. */
export function exportRoutes(app: FastifyInstance, services: Services): void {
	for (const table of TABLES) {
		const address = table === 'garments' ? '/api/garments.csv' : `/api/export/${table}.csv`;
		app.get(address, async (_request, reply) =>
			reply
				.type('text/csv; charset=utf-8')
				.header('content-disposition', `attachment; filename="${table}.csv"`)
				.send(await tableCsv(services.store, table)),
		);
	}
	app.get('/api/everything.json', async (_request, reply) =>
		reply.header('content-disposition', 'attachment; filename="dyelot.json"').send(await everything(services.store)),
	);
}
