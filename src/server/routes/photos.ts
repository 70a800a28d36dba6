import type { FastifyRequest } from 'fastify';
import { correctLight, drawOutline, forgetOutline } from '../../app/decisions/correct-photo.ts';
import { foundIn } from '../../app/found-in.ts';
import { colourAt, pictureOf } from '../../app/photo-pictures.ts';
import { readAgain, stopReading } from '../../app/reading-control.ts';
import { triedLight } from '../../app/tried-light.ts';
import { mediaTypeOf } from '../../store/photo-files.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { photoOperations as operations } from '../operations/photos.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Photos, what was read of them, and the pictures made from them. */
function shownPhotoRoutes(app: App, servicesOf: ServicesOf): void {
	const photoOf = (request: FastifyRequest, id: string) => foundIn(servicesOf(request).store.photos, 'photo')(id);
	app.route({
		...operations.listPhotos,
		handler: (request) => servicesOf(request).store.photos.list(request.query.ids?.split(',').filter(Boolean)),
	});
	app.route({ ...operations.getPhoto, handler: (request) => photoOf(request, request.params.id) });
	app.route({
		...operations.getOriginal,
		// No HEAD beside it: that would read the whole photo and throw it away.
		exposeHeadRoute: false,
		handler: async (request, reply) => {
			const photo = await photoOf(request, request.params.id);
			const { openOriginal } = servicesOf(request).store.photos;
			const { sizeBytes, stream } = await foundIn({ get: openOriginal }, 'photo')(photo.id);
			return reply
				.type(photo.mediaType)
				.header('content-length', sizeBytes)
				.header('content-disposition', 'attachment')
				.header('cache-control', 'private, max-age=31536000, immutable')
				.send(stream);
		},
	});
	app.route({
		...operations.getPicture,
		handler: async (request, reply) => {
			const { id, derived } = request.params;
			// The address carries the version: a correction changes the address, so the picture itself never goes stale.
			const cache = request.query.v === undefined ? 'private, no-cache' : 'private, max-age=31536000, immutable';
			const picture = await pictureOf(servicesOf(request).store, id, derived);
			return reply.type(mediaTypeOf(derived)).header('cache-control', cache).send(picture);
		},
	});
	app.route({
		...operations.getColourAt,
		handler: (request) => colourAt(servicesOf(request), request.params.id, request.query),
	});
}

/** What the user corrects in a photo, and when it is read. */
function correctedPhotoRoutes(app: App, servicesOf: ServicesOf): void {
	app.route({
		...operations.correctPhoto,
		handler: (request) => correctLight(servicesOf(request), askedBy(request), request.params.id, request.body),
	});
	app.route({
		...operations.tryLight,
		handler: (request) => triedLight(servicesOf(request), request.params.id, request.body),
	});
	app.addContentTypeParser('image/png', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	app.route({
		...operations.drawOutline,
		bodyLimit: BODY_LIMITS.outline,
		handler: (request) => {
			const { params, query, body } = request;
			return drawOutline(servicesOf(request), askedBy(request), params.id, body, query.version);
		},
	});
	app.route({
		...operations.forgetOutline,
		handler: (request) =>
			forgetOutline(servicesOf(request), askedBy(request), request.params.id, request.query.version),
	});
	app.route({
		...operations.readAgain,
		handler: async (request, reply) => reply.code(202).send(await readAgain(servicesOf(request), request.params.id)),
	});
	app.route({ ...operations.stopReading, handler: (request) => stopReading(servicesOf(request)) });
}

/** Everything about photos but how they come in and what ground they show. */
export function photoRoutes(app: App, servicesOf: ServicesOf): void {
	shownPhotoRoutes(app, servicesOf);
	correctedPhotoRoutes(app, servicesOf);
}
