import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { correctLight, drawOutline, forgetOutline } from '../../app/decisions/correct-photo.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import { colourAt, pictureOf } from '../../app/photo-pictures.ts';
import { readAgain, stopReading } from '../../app/reading-control.ts';
import type { Services } from '../../app/services.ts';
import { triedLight } from '../../app/tried-light.ts';
import { mediaTypeOf } from '../../store/photo-files.ts';
import type { DerivedName } from '../../store/store.ts';
import { CAMERA_KINDS, type CameraKind } from '../../wardrobe/words/light.ts';
import type { Correction, NeutralPoint } from '../../wardrobe/words/reading.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { exact, oneOf, type Seen, seen, version } from '../schemas/basics.ts';
import { photoId } from '../schemas/garment.ts';

const byPhoto = Type.Object({ id: photoId });
type ByPhoto = { Params: { id: string } };

const neutralPoint = Type.Object(
	{
		x: Type.Number({ minimum: 0 }),
		y: Type.Number({ minimum: 0 }),
		lightness: Type.Optional(Type.Number({ minimum: 20, maximum: 100 })),
		sure: Type.Optional(Type.Boolean()),
	},
	{ additionalProperties: false },
);

const correctionBody = Type.Partial(
	exact({
		neutrals: Type.Array(neutralPoint, { maxItems: 2 }),
		neutral: neutralPoint,
		camera: oneOf(CAMERA_KINDS),
		byHand: exact({
			warmer: Type.Number({ minimum: -10, maximum: 10 }),
			lighter: Type.Number({ minimum: -10, maximum: 10 }),
		}),
		lightGroup: Type.String({ minLength: 1, maxLength: 100 }),
		version,
	}),
	{ additionalProperties: false },
);

/** Neutrals to try out: what they would do is told, and nothing kept. */
const trialBody = Type.Object(
	{ neutrals: Type.Array(neutralPoint, { minItems: 1, maxItems: 2 }), camera: Type.Optional(oneOf(CAMERA_KINDS)) },
	{ additionalProperties: false },
);

const DERIVED = ['thumb', 'display', 'labels', 'mask', 'cutout'] as const satisfies readonly DerivedName[];
const point = Type.Object({ x: Type.Number({ minimum: 0 }), y: Type.Number({ minimum: 0 }) });

/** Photos, what was read of them, and the pictures made from them. */
function shownPhotoRoutes(app: FastifyInstance, services: Services): void {
	const { store } = services;
	const known = knownIn(store.photos, 'photo');
	app.get<{ Querystring: { ids?: string } }>(
		'/api/photos',
		{ schema: { querystring: Type.Object({ ids: Type.Optional(Type.String({ maxLength: 100_000 })) }) } },
		(request) => store.photos.list(request.query.ids?.split(',').filter(Boolean)),
	);
	app.get<ByPhoto>('/api/photos/:id', { schema: { params: byPhoto } }, (request) => known(request.params.id));
	app.get<ByPhoto>('/api/photos/:id/original', { schema: { params: byPhoto } }, async (request, reply) => {
		const photo = await known(request.params.id);
		return reply
			.type(photo.mediaType)
			.header('content-disposition', 'attachment')
			.header('cache-control', 'private, max-age=31536000, immutable')
			.send(Buffer.from(await store.photos.original(photo.id)));
	});
	app.get<{ Params: { id: string; derived: DerivedName }; Querystring: { v?: number } }>(
		'/api/photos/:id/:derived',
		{
			schema: {
				params: Type.Object({ id: photoId, derived: oneOf(DERIVED) }),
				querystring: Type.Object({ v: Type.Optional(Type.Integer()) }),
			},
		},
		async (request, reply) => {
			const { id, derived } = request.params;
			// The address carries the version: a correction changes the address, so the picture itself never goes stale.
			const cache = request.query.v === undefined ? 'private, no-cache' : 'private, max-age=31536000, immutable';
			const picture = await pictureOf(store, id, derived);
			return reply.type(mediaTypeOf(derived)).header('cache-control', cache).send(picture);
		},
	);
	app.get<ByPhoto & { Querystring: { x: number; y: number } }>(
		'/api/photos/:id/at',
		{ schema: { params: byPhoto, querystring: point } },
		(request) => colourAt(services, request.params.id, request.query),
	);
}

/** What the user corrects in a photo, and when it is read. */
function correctedPhotoRoutes(app: FastifyInstance, services: Services): void {
	app.put<ByPhoto & { Body: Omit<Correction, 'mask'> & { version?: number } }>(
		'/api/photos/:id/correction',
		{ schema: { params: byPhoto, body: correctionBody } },
		(request) => correctLight(services, askedBy(request), request.params.id, request.body),
	);
	app.post<ByPhoto & { Body: { neutrals: NeutralPoint[]; camera?: CameraKind } }>(
		'/api/photos/:id/light-trial',
		{ schema: { params: byPhoto, body: trialBody } },
		(request) => triedLight(services, request.params.id, request.body),
	);
	app.addContentTypeParser('image/png', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	app.put<ByPhoto & Seen & { Body: Buffer }>(
		'/api/photos/:id/mask',
		{ bodyLimit: BODY_LIMITS.outline, schema: { params: byPhoto, querystring: seen } },
		(request) => drawOutline(services, askedBy(request), request.params.id, request.body, request.query.version),
	);
	app.delete<ByPhoto & Seen>('/api/photos/:id/mask', { schema: { params: byPhoto, querystring: seen } }, (request) =>
		forgetOutline(services, askedBy(request), request.params.id, request.query.version),
	);
	app.post<ByPhoto>('/api/photos/:id/retry', { schema: { params: byPhoto } }, (request) =>
		readAgain(services, request.params.id),
	);
	app.post('/api/photos/cancel', () => stopReading(services));
}

export function photoRoutes(app: FastifyInstance, services: Services): void {
	shownPhotoRoutes(app, services);
	correctedPhotoRoutes(app, services);
}
