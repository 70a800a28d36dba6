import { correctLight, drawOutline, forgetOutline } from '../../app/decisions/correct-photo.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { colourAt, pictureOf } from '../../app/photo-pictures.ts';
import { readAgain, stopReading } from '../../app/reading-control.ts';
import type { Services } from '../../app/services.ts';
import { triedLight } from '../../app/tried-light.ts';
import { mediaTypeOf } from '../../store/photo-files.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { photoOperations as operations } from '../operations/photos.ts';
import type { App } from '../typed-app.ts';

/** Photos, what was read of them, and the pictures made from them. */
function shownPhotoRoutes(app: App, services: Services): void {
	const { store } = services;
	const known = knownIn(store.photos, 'photo');
	app.route({
		...operations.listPhotos,
		handler: ({ query }) => store.photos.list(query.ids?.split(',').filter(Boolean)),
	});
	app.route({ ...operations.getPhoto, handler: ({ params }) => known(params.id) });
	app.route({
		...operations.getOriginal,
		handler: async (request, reply) => {
			const photo = await known(request.params.id);
			return reply
				.type(photo.mediaType)
				.header('content-disposition', 'attachment')
				.header('cache-control', 'private, max-age=31536000, immutable')
				.send(Buffer.from(await store.photos.original(photo.id)));
		},
	});
	app.route({
		...operations.getPicture,
		handler: async (request, reply) => {
			const { id, derived } = request.params;
			// The address carries the version: a correction changes the address, so the picture itself never goes stale.
			const cache = request.query.v === undefined ? 'private, no-cache' : 'private, max-age=31536000, immutable';
			const picture = await pictureOf(store, id, derived);
			return reply.type(mediaTypeOf(derived)).header('cache-control', cache).send(picture);
		},
	});
	app.route({ ...operations.getColourAt, handler: ({ params, query }) => colourAt(services, params.id, query) });
}

/** What the user corrects in a photo, and when it is read. */
function correctedPhotoRoutes(app: App, services: Services): void {
	app.route({
		...operations.correctPhoto,
		handler: (request) => correctLight(services, askedBy(request), request.params.id, request.body),
	});
	app.route({ ...operations.tryLight, handler: ({ params, body }) => triedLight(services, params.id, body) });
	app.addContentTypeParser('image/png', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	app.route({
		...operations.drawOutline,
		bodyLimit: BODY_LIMITS.outline,
		handler: (request) => {
			const { params, query, body } = request;
			return drawOutline(services, askedBy(request), params.id, body, query.version);
		},
	});
	app.route({
		...operations.forgetOutline,
		handler: (request) => forgetOutline(services, askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.readAgain,
		handler: async ({ params }, reply) => reply.code(202).send(await readAgain(services, params.id)),
	});
	app.route({ ...operations.stopReading, handler: () => stopReading(services) });
}

export function photoRoutes(app: App, services: Services): void {
	shownPhotoRoutes(app, services);
	correctedPhotoRoutes(app, services);
}
