import type { FastifyInstance } from 'fastify';
import { knownIn } from '../../app/found-or-refused.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { pocketFile, pocketPictures } from '../../app/pocket-file.ts';
import type { Services } from '../../app/services.ts';
import { pairingsFromReadings } from '../../wardrobe/pairs/pairings.ts';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { type ById, byId } from '../schemas/basics.ts';

/** The pocket page for the shop, as a file to send to a phone. */
export function pocketRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/pocket', { schema: { params: byId } }, async (request, reply) => {
		const season = await knownIn(services.store.seasons, 'season')(request.params.id);
		const input = await loadSeasonInput(services, season);
		const garments = input.garments.filter((garment) => garment.place === 'rail' || garment.place === 'stored');
		const pictures = await pocketPictures(services.store, garments);
		const file = await pocketFile({
			seasonName: season.name,
			madeOn: input.today,
			palette: input.palette,
			wishes: input.wishes,
			garments: garments.map((garment, index) => ({ garment, picture: pictures[index]! })),
			pairings: pairingsFromReadings(input.inspirations.map(({ reading }) => reading)),
			pairWords: input.pairWords,
			kinds: KIND_NAMES,
		});
		return reply
			.type('text/html; charset=utf-8')
			.header('content-disposition', 'attachment; filename="dyelot-pocket.html"')
			.send(file);
	});
}
