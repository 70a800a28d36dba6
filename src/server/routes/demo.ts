import type { FastifyInstance } from 'fastify';
import { loadDemo } from '../../app/load-demo.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';

/** The demo wardrobe with one click. */
export function demoRoutes(app: FastifyInstance, services: Services): void {
	app.post('/api/demo', async (request, reply) => reply.code(201).send(await loadDemo(services, askedBy(request))));
}
