import type { IncomingMessage, ServerResponse } from 'node:http';
import type { TypeBoxTypeProvider } from '@fastify/type-provider-typebox';
import type { FastifyBaseLogger, FastifyInstance, RawServerDefault } from 'fastify';

/** The application as routes see it: what a request holds and what it may answer follows from the schemas of its operation. */
export type App = FastifyInstance<
	RawServerDefault,
	IncomingMessage,
	ServerResponse,
	FastifyBaseLogger,
	TypeBoxTypeProvider
>;
