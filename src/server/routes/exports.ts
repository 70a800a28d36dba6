import { everything, type TABLES, tableCsv } from '../../app/exports.ts';
import { exportOperations } from '../operations/exports.ts';
import { homeOperations } from '../operations/home.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Which operation takes which table along. */
const TABLE_OF = {
	exportGarments: 'garments',
	exportWears: 'wears',
	exportSeasons: 'seasons',
	exportInspirations: 'inspirations',
	exportWishes: 'wishes',
	exportCandidates: 'candidates',
	exportMakers: 'makers',
	exportPhotos: 'photos',
	exportPairWords: 'pair-words',
} as const satisfies Record<keyof typeof exportOperations, (typeof TABLES)[number]>;

/** Any of them. */
type TableOperation = {
	readonly method: 'GET';
	readonly url: string;
	readonly schema: Omit<typeof exportOperations.exportGarments.schema, 'operationId' | 'summary'>;
};

/** Everything in open formats. */
export function exportRoutes(app: App, servicesOf: ServicesOf): void {
	for (const [id, table] of Object.entries(TABLE_OF)) {
		const operation: TableOperation = exportOperations[id as keyof typeof exportOperations];
		app.route({
			...operation,
			handler: async (request, reply) =>
				reply
					.type('text/csv; charset=utf-8')
					.header('content-disposition', `attachment; filename="${table}.csv"`)
					.send(await tableCsv(servicesOf(request).store, table)),
		});
	}
	app.route({
		...homeOperations.getEverything,
		handler: async (request, reply) =>
			reply
				.header('content-disposition', 'attachment; filename="dyelot.json"')
				.send(await everything(servicesOf(request).store)),
	});
}
