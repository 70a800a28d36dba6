import type { Multipart, MultipartFile } from '@fastify/multipart';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { notFound, UserError } from '../../app/errors.ts';
import { takeIn } from '../../app/intake.ts';
import { type IntakeItem, PURPOSES, type Purpose } from '../../app/intake-item.ts';
import type { Services } from '../../app/services.ts';
import { MAX_PHOTO_BYTES } from '../../photo/file/limits.ts';
import { BODY_LIMITS } from '../body-limits.ts';

const megabytes = (bytes: number) => `${Math.round(bytes / 1024 / 1024)} MB`;

/** Errors of reading a form that name no status are the form's: it has no boundary, or breaks off. */
function formError(error: unknown): unknown {
	if ((error as { statusCode?: number }).statusCode !== undefined) return error;
	return new UserError(
		'bad-request',
		'Expected a whole form with photos for an upload; it breaks off or is none. Nothing of its last photo was stored: send that again.',
	);
}

async function* partsOf(request: FastifyRequest): AsyncGenerator<Multipart> {
	try {
		yield* request.parts();
	} catch (error) {
		throw formError(error);
	}
}

/** The file's bytes, or null where it is larger than a photo may be (the rest of it is then passed over). */
async function bytesOf(part: MultipartFile): Promise<Uint8Array | null> {
	try {
		return await part.toBuffer();
	} catch (error) {
		if ((error as { code?: string }).code === 'FST_REQ_FILE_TOO_LARGE') return null;
		throw formError(error);
	}
}

/** Photos come in here: several a request; one that cannot be taken never stops the others. */
export function uploadRoutes(app: FastifyInstance, services: Services): void {
	app.post(
		'/api/photos',
		{ bodyLimit: BODY_LIMITS.photos, schema: { consumes: ['multipart/form-data'] } },
		async (request, reply) => {
			if (!request.isMultipart())
				throw new UserError('bad-request', 'Expected a form with photos for an upload; received something else.');
			let purpose: Purpose | null = null;
			let seasonId = '';
			const items: IntakeItem[] = [];
			for await (const part of partsOf(request)) {
				if (part.type === 'field') {
					if (part.fieldname === 'seasonId') seasonId = String(part.value);
					if (part.fieldname === 'purpose') purpose = PURPOSES.find((one) => one === part.value) ?? null;
					continue;
				}
				if (!purpose) {
					part.file.resume();
					throw new UserError(
						'bad-request',
						`Expected the field "purpose" (${PURPOSES.join(', ')}) before the photos of an upload; it is missing.`,
					);
				}
				if (purpose !== 'garment' && !(await services.store.seasons.get(seasonId))) {
					part.file.resume();
					throw notFound('season', seasonId);
				}
				const name = part.filename || 'photo';
				const bytes = await bytesOf(part);
				items.push(
					bytes
						? await takeIn(services, { bytes, name }, purpose, seasonId)
						: {
								name,
								ok: false,
								reason: 'too-many-bytes',
								message: `Expected at most ${megabytes(MAX_PHOTO_BYTES)} for one photo; "${name}" is larger.`,
							},
				);
			}
			return reply.code(202).send({ items });
		},
	);
}
