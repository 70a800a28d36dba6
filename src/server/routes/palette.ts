import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { UserError } from '../../app/errors.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { lastYearOf, loadPaletteReadings } from '../../app/load-season.ts';
import type { Services } from '../../app/services.ts';
import { paletteCss } from '../../store/export/palette-css.ts';
import { paletteSvg } from '../../store/export/palette-svg.ts';
import { paletteTokens } from '../../store/export/palette-tokens.ts';
import { derivePalette } from '../../wardrobe/palette/palette.ts';
import { paletteChange } from '../../wardrobe/palette/palette-change.ts';
import { editPalette, type PaletteEdit } from '../../wardrobe/palette/palette-edit.ts';
import { EMPTY_PALETTE, type Palette } from '../../wardrobe/words/palette-colour.ts';
import type { Season } from '../../wardrobe/words/season.ts';
import { type ById, byId, exact, oneOf } from '../schemas/basics.ts';
import { paletteEditSchema } from '../schemas/palette.ts';

/** The season's palette: derive, edit, compare with last year's, take along. */
export function paletteRoutes(app: FastifyInstance, services: Services): void {
	const { store, events, newId } = services;

	const known = knownIn(store.seasons, 'season');
	async function answer(season: Season, palette: Palette) {
		const lastYear = await lastYearOf(store, season);
		return { palette, change: lastYear ? paletteChange(lastYear.palette, palette) : null };
	}
	async function save(season: Season, palette: Palette, sentence: string) {
		await store.savePalette(season.id, palette, sentence);
		events.send({ event: 'changed', data: { what: 'palette' } });
		return answer(season, palette);
	}

	app.get<ById>('/api/seasons/:id/palette', { schema: { params: byId } }, async (request) => {
		const season = await known(request.params.id);
		return answer(season, (await store.palette(season.id)) ?? EMPTY_PALETTE);
	});
	app.post<ById & { Body: { from: 'inspirations' | 'garments' } }>(
		'/api/seasons/:id/palette/derive',
		{ schema: { params: byId, body: exact({ from: oneOf(['inspirations', 'garments'] as const) }) } },
		async (request) => {
			const season = await known(request.params.id);
			const readings = await loadPaletteReadings(store, season, request.body.from);
			const palette = derivePalette(readings, {
				baseCount: season.baseCount,
				colourCount: season.colourCount,
				seed: 1,
				keep: (await store.palette(season.id)) ?? EMPTY_PALETTE,
			});
			return save(
				season,
				palette,
				`Derived the palette from ${readings.length} ${request.body.from === 'garments' ? 'garments' : 'pictures'}`,
			);
		},
	);
	app.post<ById & { Body: PaletteEdit }>(
		'/api/seasons/:id/palette/edit',
		{ schema: { params: byId, body: paletteEditSchema } },
		async (request) => {
			const season = await known(request.params.id);
			const pictures = await loadPaletteReadings(store, season, 'inspirations');
			const board = pictures.length > 0 ? pictures : await loadPaletteReadings(store, season, 'garments');
			const palette = (await store.palette(season.id)) ?? EMPTY_PALETTE;
			const edited = editPalette(palette, request.body, newId, board);
			if (!edited.ok) throw new UserError('bad-request', edited.message);
			return save(season, edited.palette, edited.sentence);
		},
	);

	const formats = {
		css: { type: 'text/css', make: paletteCss },
		'tokens.json': { type: 'application/json', make: paletteTokens },
		svg: { type: 'image/svg+xml', make: paletteSvg },
		png: {
			type: 'image/png',
			make: async (palette: Palette, name: string) => {
				// Loaded here, as in the pocket file: the server's own process draws nothing else.
				const { default: sharp } = await import('sharp');
				return sharp(Buffer.from(paletteSvg(palette, name)))
					.png()
					.toBuffer();
			},
		},
	};
	for (const [ending, { type, make }] of Object.entries(formats)) {
		app.get<ById>(
			`/api/seasons/:id/palette.${ending}`,
			{ schema: { params: Type.Object({ id: Type.String() }) } },
			async (request, reply) => {
				const season = await known(request.params.id);
				const body = await make((await store.palette(season.id)) ?? EMPTY_PALETTE, season.name);
				return reply.type(type).header('content-disposition', `attachment; filename="palette.${ending}"`).send(body);
			},
		);
	}
}
