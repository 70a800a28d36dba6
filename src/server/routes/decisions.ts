import type { FastifyInstance } from 'fastify';
import { doAgain, restoreFromBin, takeBack } from '../../app/decisions/take-back.ts';
import type { Services } from '../../app/services.ts';
import { askedBy } from '../asked.ts';
import { type ById, byId } from '../schemas/basics.ts';

/** Decisions that a list of them shows. */
const SHOWN = 100;

/** What was decided, taking it back, and the bin. */
export function decisionRoutes(app: FastifyInstance, services: Services): void {
	app.get('/api/decisions', () => services.store.decisions(SHOWN));
	app.post('/api/undo', (request) => takeBack(services, askedBy(request)));
	app.post('/api/redo', (request) => doAgain(services, askedBy(request)));
	app.get('/api/bin', () => services.store.bin());
	app.post<ById>('/api/bin/:id/restore', { schema: { params: byId } }, (request) =>
		restoreFromBin(services, askedBy(request), request.params.id),
	);
}
