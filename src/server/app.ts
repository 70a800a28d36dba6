import cookie from '@fastify/cookie';
import helmet from '@fastify/helmet';
import multipart from '@fastify/multipart';
import rateLimit from '@fastify/rate-limit';
import { fastifySSE } from '@fastify/sse';
import swagger from '@fastify/swagger';
import Fastify, {
	type FastifyError,
	type FastifyInstance,
	type FastifyReply,
	type FastifyServerOptions,
	type onRouteHookHandler,
} from 'fastify';
import { UserError } from '../app/errors.ts';
import { say } from '../language/speak.ts';
import { MAX_PHOTO_BYTES } from '../photo/file/limits.ts';
import { takeArchives } from './archive-bodies.ts';
import { BODY_LIMITS } from './body-limits.ts';
import type { Entrance } from './entrance.ts';
import { takeJson } from './json-bodies.ts';
import { answerInLanguage } from './language-of.ts';
import { refuseForeignHosts } from './local-only.ts';
import { openApiOptions } from './openapi.ts';
import { refuseForeignPages } from './own-page-only.ts';
import { backupRoutes } from './routes/backup.ts';
import { candidateRoutes } from './routes/candidates.ts';
import { decisionRoutes } from './routes/decisions.ts';
import { demoRoutes } from './routes/demo.ts';
import { eventRoutes } from './routes/events.ts';
import { exportRoutes } from './routes/exports.ts';
import { garmentPhotoRoutes } from './routes/garment-photos.ts';
import { garmentRoutes } from './routes/garments.ts';
import { groundRoutes } from './routes/grounds.ts';
import { inspirationRoutes } from './routes/inspirations.ts';
import { lineUpRoutes } from './routes/line-up.ts';
import { makerRoutes } from './routes/makers.ts';
import { pairWordRoutes } from './routes/pair-words.ts';
import { paletteRoutes } from './routes/palette.ts';
import { photoRoutes } from './routes/photos.ts';
import { pocketRoutes } from './routes/pocket.ts';
import { seasonRoutes } from './routes/seasons.ts';
import { statusRoutes } from './routes/status.ts';
import { tableRoutes } from './routes/tables.ts';
import { uploadRoutes } from './routes/uploads.ts';
import { wearRoutes } from './routes/wears.ts';
import { wishRoutes } from './routes/wishes.ts';
import { servePage } from './static-page.ts';
import { fieldOfComplaints, sentenceOfComplaints, validateBodiesStrictly } from './validation.ts';

/** Photos of one upload; a whole wardrobe fits. */
const MAX_FILES_A_REQUEST = 500;

/** The id of a passkey may have 1,023 bytes (W3C Web Authentication, section 5.8.3), written with a third more letters. */
const MOST_LETTERS_A_PARAMETER = 1400;

/** How long a browser keeps to encrypted lines. */
const YEAR_S = 365 * 24 * 3600;

/** No script, style, picture or connection but our own; `blob:` for photos picked in the page, `data:` for small masks. */
const contentSecurityPolicy = {
	useDefaults: false,
	directives: {
		defaultSrc: ["'none'"],
		scriptSrc: ["'self'"],
		styleSrc: ["'self'"],
		imgSrc: ["'self'", 'blob:', 'data:'],
		connectSrc: ["'self'"],
		fontSrc: ["'self'"],
		manifestSrc: ["'self'"],
		formAction: ["'self'"],
		frameAncestors: ["'none'"],
		baseUri: ["'none'"],
	},
};

const isFull = (error: unknown): boolean => {
	const { code, message } = error as { code?: string; message?: string };
	return code === 'ENOSPC' || code === 'SQLITE_FULL' || /database or disk is full/.test(message ?? '');
};

/** Turns any error into `{error: {code, message}}`; what is not meant for the user is logged and replaced. */
function answerErrors(app: FastifyInstance, meaningOf: Entrance['meaningOf']): void {
	app.setErrorHandler((error: FastifyError, request, reply) => {
		const told = error instanceof UserError ? error : meaningOf(error);
		if (told) {
			if (told !== error) request.log.error(error);
			if (told.retryAfterS !== undefined) reply.header('retry-after', told.retryAfterS);
			return reply.code(told.status).send({ error: { code: told.code, message: told.message, ...told.details } });
		}
		if (isFull(error)) {
			const message = say('serverWords.diskFull');
			return reply.code(507).send({ error: { code: 'disk-full', message } });
		}
		const status = error.statusCode ?? 500;
		if (status >= 500) {
			request.log.error(error);
			return reply.code(500).send({ error: { code: 'internal', message: say('serverWords.failed') } });
		}
		const message = error.validation
			? sentenceOfComplaints(
					error.validation,
					error.validationContext ?? 'request',
					request[(error.validationContext ?? 'body') as 'body'],
				)
			: error.message;
		const field = fieldOfComplaints(error.validation);
		return reply.code(status).send({ error: { code: 'bad-request', message, ...(field === '' ? {} : { field }) } });
	});
}

/** An address that is none is answered before any hook: in the words of the interface all the same. */
const answerNoAddress: NonNullable<FastifyServerOptions['frameworkErrors']> = (
	_error,
	{ url },
	reply: FastifyReply,
) => {
	const message = say('serverWords.badAddress', { received: url.slice(0, 80) });
	return reply.code(400).send({ error: { code: 'bad-request', message } });
};

/** Answers of the interface are not kept by browsers, unless their route says for how long. */
function keepNoCopies(app: FastifyInstance): void {
	app.addHook('onSend', async (request, reply) => {
		const isOfTheInterface = request.routeOptions.url?.startsWith('/api/') ?? false;
		if (isOfTheInterface && !reply.hasHeader('cache-control')) reply.header('cache-control', 'no-store');
	});
}

/** Every route of the interface, a file a resource. */
function registerRoutes(app: FastifyInstance, entrance: Entrance): void {
	entrance.routes(app);
	const { servicesOf } = entrance;
	statusRoutes(app, servicesOf);
	eventRoutes(app, servicesOf, entrance.isStillLetIn);
	uploadRoutes(app, servicesOf, entrance.uploads);
	photoRoutes(app, servicesOf);
	groundRoutes(app, servicesOf);
	seasonRoutes(app, servicesOf);
	inspirationRoutes(app, servicesOf);
	paletteRoutes(app, servicesOf);
	garmentRoutes(app, servicesOf);
	garmentPhotoRoutes(app, servicesOf);
	wishRoutes(app, servicesOf);
	candidateRoutes(app, servicesOf);
	makerRoutes(app, servicesOf);
	lineUpRoutes(app, servicesOf);
	wearRoutes(app, servicesOf);
	pairWordRoutes(app, servicesOf);
	decisionRoutes(app, servicesOf);
	pocketRoutes(app, servicesOf);
	exportRoutes(app, servicesOf);
	tableRoutes(app, servicesOf);
	backupRoutes(app, servicesOf);
	demoRoutes(app, servicesOf);
}

/**
 * The whole HTTP interface, not yet listening; the entrance says whose home answers and who may ask. `onRoute` hears of every route as it is
 * registered, `server` is what the entrance needs of the server itself, `first` what comes before all else.
 */
export async function buildApp(
	entrance: Entrance,
	options: {
		readonly onRoute?: onRouteHookHandler;
		readonly server?: FastifyServerOptions;
		readonly first?: (app: FastifyInstance) => void;
	} = {},
): Promise<FastifyInstance> {
	const app = Fastify({
		forceCloseConnections: true,
		bodyLimit: BODY_LIMITS.decision,
		requestTimeout: 120_000,
		frameworkErrors: answerNoAddress,
		routerOptions: { maxParamLength: MOST_LETTERS_A_PARAMETER },
		...options.server,
	});
	options.first?.(app);
	if (options.onRoute) app.addHook('onRoute', options.onRoute);
	validateBodiesStrictly(app);
	answerInLanguage(app);
	// As it is: what a schema does not name must not go missing silently. The tests hold every answer to its schema.
	app.setSerializerCompiler(() => (answer) => JSON.stringify(answer));
	answerErrors(app, entrance.meaningOf);
	await app.register(cookie);
	await app.register(helmet, {
		contentSecurityPolicy,
		strictTransportSecurity: entrance.isEncrypted ? { maxAge: YEAR_S } : false,
		// To ourselves only: by it a browser without Sec-Fetch-Site shows that a picture or a download was asked for by our page.
		referrerPolicy: { policy: 'same-origin' },
	});
	await app.register(rateLimit, { global: false });
	await app.register(multipart, {
		// The route itself says of each photo that it is too large.
		throwFileSizeLimit: false,
		limits: { fileSize: MAX_PHOTO_BYTES, files: MAX_FILES_A_REQUEST, fields: 20, fieldSize: 2000 },
	});
	await app.register(fastifySSE);
	await app.register(swagger, openApiOptions);
	refuseForeignHosts(app, entrance.names, entrance.namelessAddresses);
	refuseForeignPages(app);
	keepNoCopies(app);
	entrance.guard(app);
	takeJson(app);
	takeArchives(app);

	registerRoutes(app, entrance);
	await servePage(app, entrance.page);
	return app;
}
