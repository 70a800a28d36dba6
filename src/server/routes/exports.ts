import type { FastifyInstance } from 'fastify';
import { loadGarments } from '../../app/load-garments.ts';
import type { Services } from '../../app/services.ts';
import { wearsCsv } from '../../app/tables/wears-from-table.ts';
import { garmentsCsv } from '../../store/export/garments-csv.ts';
import { thingsCsv } from '../../store/export/things-csv.ts';

/** Everything in open formats. */
export function exportRoutes(app: FastifyInstance, services: Services): void {
	const { store } = services;
	app.get('/api/garments.csv', async (_request, reply) =>
		reply
			.type('text/csv; charset=utf-8')
			.header('content-disposition', 'attachment; filename="garments.csv"')
			.send(garmentsCsv(await loadGarments(store))),
	);
	const tables: Readonly<Record<string, () => Promise<readonly object[]>>> = {
		seasons: store.seasons.list,
		inspirations: store.inspirations.list,
		wishes: store.wishes.list,
		candidates: store.candidates.list,
		makers: store.makers.list,
		photos: () => store.photos.list(),
		'pair-words': store.pairWords,
	};
	for (const [name, list] of Object.entries(tables)) {
		app.get(`/api/export/${name}.csv`, async (_request, reply) =>
			reply
				.type('text/csv; charset=utf-8')
				.header('content-disposition', `attachment; filename="${name}.csv"`)
				.send(thingsCsv(await list())),
		);
	}
	app.get('/api/export/wears.csv', async (_request, reply) =>
		reply
			.type('text/csv; charset=utf-8')
			.header('content-disposition', 'attachment; filename="wears.csv"')
			.send(wearsCsv(await store.wears(), await store.garments.list())),
	);
	app.get('/api/everything.json', async (_request, reply) => {
		const seasons = await store.seasons.list();
		const bySeason = async <T>(load: (id: string) => Promise<T>) =>
			Object.fromEntries(await Promise.all(seasons.map(async ({ id }) => [id, await load(id)] as const)));
		const [garments, inspirations, wishes, candidates, makers, photos, wears, pairWords, palettes, lineUps] =
			await Promise.all([
				loadGarments(store),
				store.inspirations.list(),
				store.wishes.list(),
				store.candidates.list(),
				store.makers.list(),
				store.photos.list(),
				store.wears(),
				store.pairWords(),
				bySeason((id) => store.palette(id)),
				bySeason((id) => store.lineUp(id)),
			]);
		const all = {
			seasons,
			palettes,
			lineUps,
			garments,
			inspirations,
			wishes,
			candidates,
			makers,
			wears,
			pairWords,
			photos,
		};
		return reply.header('content-disposition', 'attachment; filename="dyelot.json"').send(all);
	});
}
