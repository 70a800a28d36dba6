import type { Multipart, MultipartFile } from '@fastify/multipart';
import type { FastifyRequest } from 'fastify';
import { notFound, UserError } from '../../app/errors.ts';
import { takeIn } from '../../app/intake.ts';
import { type IntakeItem, PURPOSES, type Purpose } from '../../app/intake-item.ts';
import type { Services } from '../../app/services.ts';
import { createTurnsOfEach } from '../../app/turns-of-each.ts';
import { say } from '../../language/speak.ts';
import { MAX_PHOTO_BYTES } from '../../photo/file/limits.ts';
import { dropIncoming, type IncomingFile } from '../../store/incoming-file.ts';
import type { Asked } from '../../store/store.ts';
import { askedBy } from '../asked.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import type { Entrance } from '../entrance.ts';
import { photoOperations } from '../operations/photos.ts';
import type { ServicesOf } from '../services-of.ts';
import type { App } from '../typed-app.ts';

/** Uploads on their way at once of one device or person; each holds a line and a file open. */
const MOST_OF_ONE = 4;

const megabytes = (bytes: number) => say('photoFiles.megabytes', { size: Math.round(bytes / 1024 / 1024) });

/** Errors of reading a form that name no status are the form's: it has no boundary, or breaks off. */
function formError(error: unknown): unknown {
	if ((error as { statusCode?: number }).statusCode !== undefined) return error;
	return new UserError('bad-request', say('serverWords.brokenForm'));
}

async function* partsOf(request: FastifyRequest): AsyncGenerator<Multipart> {
	try {
		yield* request.parts();
	} catch (error) {
		throw formError(error);
	}
}

/** The file that came in, or null where it is larger than a photo may be (the rest of it is then passed over). */
async function fileOf(services: Services, part: MultipartFile): Promise<IncomingFile | null> {
	const incoming = await services.receive(part.file).catch((error: unknown) => {
		// What the disk refuses is no fault of the form.
		throw (error as NodeJS.ErrnoException).syscall === undefined ? formError(error) : error;
	});
	if (!part.file.truncated) return incoming;
	await dropIncoming(incoming);
	return null;
}

/** What the fields before the photos say of them; throws where something is missing. */
async function placeOf(services: Services, fields: ReadonlyMap<string, string>): Promise<[Purpose, string]> {
	const purpose = PURPOSES.find((one) => one === fields.get('purpose'));
	const seasonId = fields.get('seasonId') ?? '';
	if (!purpose) throw new UserError('bad-request', say('serverWords.noPurpose', { purposes: PURPOSES.join(', ') }));
	if (purpose !== 'garment' && !(await services.store.seasons.get(seasonId)))
		throw notFound(say('nouns.season'), seasonId);
	return [purpose, seasonId];
}

/** Each photo of an upload is a decision of its own, known by the upload's key and its place. */
const nth = ({ key, request }: Asked, place: number): Asked => ({
	key: key === null ? null : `${key}/${place}`,
	request,
});

async function takeParts(services: Services, request: FastifyRequest): Promise<IntakeItem[]> {
	const asked = askedBy(request);
	const fields = new Map<string, string>();
	const items: IntakeItem[] = [];
	for await (const part of partsOf(request)) {
		if (part.type === 'field') {
			fields.set(part.fieldname, String(part.value));
			continue;
		}
		const [purpose, seasonId] = await placeOf(services, fields).catch((error: unknown) => {
			part.file.resume();
			throw error;
		});
		const name = part.filename || 'photo';
		const incoming = await fileOf(services, part);
		const tooLarge = say('serverWords.tooLarge', { most: megabytes(MAX_PHOTO_BYTES), name });
		items.push(
			incoming
				? await takeIn(services, nth(asked, items.length), { incoming, name, purpose, seasonId })
				: { name, ok: false, reason: 'too-many-bytes', message: tooLarge },
		);
	}
	return items;
}

/** Photos come in here: several a request, each written to disk as it comes; one that cannot be taken never stops the others. */
export function uploadRoutes(app: App, servicesOf: ServicesOf, { whoOf, mostOfAll }: Entrance['uploads']): void {
	const turns = createTurnsOfEach({
		mostOfOne: MOST_OF_ONE,
		mostOfAll,
		refusal: () => say('refusals.tooManyPhotos'),
	});
	app.route({
		...photoOperations.addPhotos,
		bodyLimit: BODY_LIMITS.photos,
		handler: async (request, reply) => {
			if (!request.isMultipart()) throw new UserError('bad-request', say('serverWords.noForm'));
			const left = new AbortController();
			reply.raw.once('close', () => left.abort());
			// Until its turn comes its bytes wait on the line, not here.
			const leave = await turns.enter(whoOf(request), left.signal);
			try {
				return await reply.code(202).send({ items: await takeParts(servicesOf(request), request) });
			} finally {
				leave();
			}
		},
	});
}
