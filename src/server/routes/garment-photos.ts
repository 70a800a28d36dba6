import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { joinGarments } from '../../app/decisions/join-garments.ts';
import { partGarment } from '../../app/decisions/part-garment.ts';
import { splitGarment } from '../../app/decisions/split-garment.ts';
import type { Box } from '../../app/photo-crop.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact } from '../schemas/basics.ts';
import { garmentIds, photoId, versionsById } from '../schemas/garment.ts';

const share = Type.Number({ minimum: 0, maximum: 1 });
const splitBody = exact({
	photoId,
	boxes: Type.Array(exact({ left: share, top: share, right: share, bottom: share }), { minItems: 2, maxItems: 2 }),
});
const joinBody = exact({ ids: garmentIds, versions: Type.Optional(versionsById) });

/** Which photos show which garment: several entries joined into one, a photo that shows two cut apart, a photo given to another garment. */
export function garmentPhotoRoutes(app: FastifyInstance, services: Services): void {
	app.post<{ Body: { ids: string[]; versions?: Record<string, number> } }>(
		'/api/garments/merge',
		{ schema: { body: joinBody } },
		(request) => joinGarments(services, askedBy(request), request.body),
	);
	app.post<ById & { Body: { photoId: string; boxes: [Box, Box] } }>(
		'/api/garments/:id/split',
		{ schema: { params: byId, body: splitBody } },
		(request) => splitGarment(services, askedBy(request), request.params.id, request.body),
	);
	app.post<ById & { Body: { photoId: string } }>(
		'/api/garments/:id/part',
		{ schema: { params: byId, body: exact({ photoId }) } },
		(request) => partGarment(services, askedBy(request), request.params.id, request.body),
	);
}
