import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { correctLight, triedLight } from '../../app/correct-light.ts';
import { notFound, UserError } from '../../app/errors.ts';
import { knownIn } from '../../app/found-or-refused.ts';
import type { Services } from '../../app/services.ts';
import { mediaTypeOf } from '../../store/photo-files.ts';
import type { DerivedName, PhotoRecord } from '../../store/store.ts';
import { CAMERA_KINDS, type CameraKind } from '../../wardrobe/words/light.ts';
import type { Correction, NeutralPoint } from '../../wardrobe/words/reading.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { exact, oneOf } from '../schemas/basics.ts';
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
	}),
	{ additionalProperties: false },
);

/** Neutrals to try out: what they would do is told, and nothing kept. */
const trialBody = Type.Object(
	{ neutrals: Type.Array(neutralPoint, { minItems: 1, maxItems: 2 }), camera: Type.Optional(oneOf(CAMERA_KINDS)) },
	{ additionalProperties: false },
);

const DERIVED = ['thumb', 'display', 'labels', 'mask', 'cutout'] as const satisfies readonly DerivedName[];

/** Photos, what was read of them, and the user's corrections. */
export function photoRoutes(app: FastifyInstance, services: Services): void {
	const { store, jobs, events } = services;

	const known = knownIn(store.photos, 'photo');
	async function correct(id: string, correction: Correction, mask: Uint8Array | null): Promise<PhotoRecord> {
		const photo = await store.photos.saveCorrection(id, correction, mask);
		jobs.enqueue(id);
		events.send({ event: 'photo', data: { id, status: 'waiting' } });
		return photo;
	}

	app.get<{ Querystring: { ids?: string } }>(
		'/api/photos',
		{ schema: { querystring: Type.Object({ ids: Type.Optional(Type.String({ maxLength: 100_000 })) }) } },
		async (request) => store.photos.list(request.query.ids?.split(',').filter(Boolean)),
	);
	app.get<ByPhoto>('/api/photos/:id', { schema: { params: byPhoto } }, async (request) => known(request.params.id));

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
			const bytes = await store.photos.derived(id, derived);
			if (!bytes) throw notFound(`picture "${derived}" of a photo that was read`, id);
			// The address carries the version: a correction changes the address, so the picture itself never goes stale.
			const cache = request.query.v === undefined ? 'private, no-cache' : 'private, max-age=31536000, immutable';
			return reply.type(mediaTypeOf(derived)).header('cache-control', cache).send(Buffer.from(bytes));
		},
	);

	app.put<ByPhoto & { Body: Omit<Correction, 'mask'> }>(
		'/api/photos/:id/correction',
		{ schema: { params: byPhoto, body: correctionBody } },
		async (request) => {
			const photo = await known(request.params.id);
			const mask = photo.correction.mask ? { mask: true } : {};
			return correctLight(services, photo, { ...request.body, ...mask });
		},
	);
	app.post<ByPhoto & { Body: { neutrals: NeutralPoint[]; camera?: CameraKind } }>(
		'/api/photos/:id/light-trial',
		{ schema: { params: byPhoto, body: trialBody } },
		async (request) => {
			const { neutrals, camera } = request.body;
			return triedLight(services, await known(request.params.id), neutrals, camera);
		},
	);

	app.addContentTypeParser('image/png', { parseAs: 'buffer' }, (_request, body, done) => done(null, body));
	app.put<ByPhoto & { Body: Buffer }>(
		'/api/photos/:id/mask',
		{ bodyLimit: BODY_LIMITS.outline, schema: { params: byPhoto } },
		async (request) => {
			const photo = await known(request.params.id);
			if (!Buffer.isBuffer(request.body) || request.body.subarray(1, 4).toString('latin1') !== 'PNG') {
				throw new UserError(
					'bad-request',
					'Expected a PNG picture for the corrected outline; received something else.',
				);
			}
			return correct(photo.id, { ...photo.correction, mask: true }, request.body);
		},
	);
	app.delete<ByPhoto>('/api/photos/:id/mask', { schema: { params: byPhoto } }, async (request) => {
		const photo = await known(request.params.id);
		const { mask: _dropped, ...rest } = photo.correction;
		return correct(photo.id, rest, null);
	});
	app.post<ByPhoto>('/api/photos/:id/retry', { schema: { params: byPhoto } }, async (request) => {
		const photo = await known(request.params.id);
		jobs.enqueue(photo.id);
		return { queued: true };
	});
	app.post('/api/photos/cancel', async () => {
		const dropped = jobs.cancelWaiting();
		for (const id of dropped) {
			await store.photos.saveFailure(id, {
				reason: 'stopped',
				message: 'Reading was stopped before this photo. It is kept: read it whenever you like.',
			});
			events.send({ event: 'photo', data: { id, status: 'failed' } });
		}
		return { cancelled: dropped.length };
	});

	app.get<ByPhoto & { Querystring: { x: number; y: number } }>(
		'/api/photos/:id/at',
		{
			schema: {
				params: byPhoto,
				querystring: Type.Object({ x: Type.Number({ minimum: 0 }), y: Type.Number({ minimum: 0 }) }),
			},
		},
		async (request) => {
			const photo = await known(request.params.id);
			const result = await services.pool.read(
				(await store.photos.originalPath(photo.id)) ?? (await store.photos.original(photo.id)),
				{
					correction: photo.correction,
					sharedLight: await services.sharedLight(photo),
					at: [{ x: request.query.x, y: request.query.y }],
				},
			);
			if (!result.ok) throw new UserError('bad-request', result.message);
			return result.at![0];
		},
	);
}
