import { deriveSeasonPalette } from '../../app/decisions/derive-palette.ts';
import { editSeasonPalette } from '../../app/decisions/edit-palette.ts';
import { type PALETTE_FILES, paletteFile } from '../../app/palette-files.ts';
import { seasonPalette } from '../../app/season-palette.ts';
import { askedBy } from '../asked.ts';
import { paletteOperations as operations } from '../operations/palette.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Any of those that hand a palette out as a file. */
type FileOperation = {
	readonly method: 'GET';
	readonly url: string;
	readonly schema: Pick<typeof operations.getPaletteCss.schema, 'params'>;
};

/** The operations that hand a palette out as a file, with the file's ending. */
const FILES = [
	[operations.getPaletteCss, 'css'],
	[operations.getPaletteTokens, 'tokens.json'],
	[operations.getPaletteSvg, 'svg'],
	[operations.getPalettePng, 'png'],
] as const satisfies readonly (readonly [FileOperation, (typeof PALETTE_FILES)[number]])[];

/** The season's palette: derive, edit, compare with last year's, take along. */
export function paletteRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.getPalette,
		handler: (request) => seasonPalette(servicesOf(request).store, request.params.id),
	});
	app.route({
		...operations.derivePalette,
		handler: (request) =>
			deriveSeasonPalette(servicesOf(request), askedBy(request), request.params.id, {
				...request.body,
				seen: request.query.version,
			}),
	});
	app.route({
		...operations.editPalette,
		handler: (request) =>
			editSeasonPalette(servicesOf(request), askedBy(request), request.params.id, request.body, request.query.version),
	});
	for (const [fileOperation, ending] of FILES) {
		const operation: FileOperation = fileOperation;
		app.route({
			...operation,
			handler: async (request, reply) => {
				const { type, body } = await paletteFile(servicesOf(request).store, request.params.id, ending);
				return reply.type(type).header('content-disposition', `attachment; filename="palette.${ending}"`).send(body);
			},
		});
	}
}
