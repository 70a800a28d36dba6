import type { FastifyRequest } from 'fastify';
import type { Services } from '../app/services.ts';

/** What a request is answered with: the one home of this computer, or the home that the request names where many are kept. */
export type ServicesOf = (request: FastifyRequest) => Services;
