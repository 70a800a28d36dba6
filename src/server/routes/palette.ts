import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { deriveSeasonPalette } from '../../app/decisions/derive-palette.ts';
import { editSeasonPalette } from '../../app/decisions/edit-palette.ts';
import { PALETTE_FILES, paletteFile } from '../../app/palette-files.ts';
import { seasonPalette } from '../../app/season-palette.ts';
import type { Services } from '../../app/services.ts';
import type { PaletteEdit } from '../../wardrobe/palette/palette-edit.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId, exact, oneOf } from '../schemas/basics.ts';
import { paletteEditSchema } from '../schemas/palette.ts';

/** The season's palette: derive, edit, compare with last year's, take along. */
export function paletteRoutes(app: FastifyInstance, services: Services): void {
	app.get<ById>('/api/seasons/:id/palette', { schema: { params: byId } }, (request) =>
		seasonPalette(services.store, request.params.id),
	);
	app.post<ById & { Body: { from: 'inspirations' | 'garments' } }>(
		'/api/seasons/:id/palette/derive',
		{ schema: { params: byId, body: exact({ from: oneOf(['inspirations', 'garments'] as const) }) } },
		(request) => deriveSeasonPalette(services, askedBy(request), request.params.id, request.body),
	);
	app.post<ById & { Body: PaletteEdit }>(
		'/api/seasons/:id/palette/edit',
		{ schema: { params: byId, body: paletteEditSchema } },
		(request) => editSeasonPalette(services, askedBy(request), request.params.id, request.body),
	);
	for (const ending of PALETTE_FILES) {
		app.get<ById>(
			`/api/seasons/:id/palette.${ending}`,
			{ schema: { params: Type.Object({ id: Type.String() }) } },
			async (request, reply) => {
				const { type, body } = await paletteFile(services.store, request.params.id, ending);
				return reply.type(type).header('content-disposition', `attachment; filename="palette.${ending}"`).send(body);
			},
		);
	}
}
