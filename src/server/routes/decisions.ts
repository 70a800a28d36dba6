import type { FastifyInstance } from 'fastify';
import { notFound, UserError } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { suggestFromPhotos } from '../../app/suggest-from-photos.ts';
import { type ById, byId } from '../schemas/basics.ts';

/** What was decided, taking it back, and the bin. */
export function decisionRoutes(app: FastifyInstance, { store, events }: Services): void {
	app.get('/api/decisions', async () => store.decisions(100));
	app.post('/api/undo', async () => {
		const undone = await store.undo();
		if (!undone) throw new UserError('conflict', 'Expected a decision to take back; there is none left.');
		events.send({ event: 'changed', data: { what: 'everything' } });
		return undone;
	});
	app.post('/api/redo', async () => {
		const redone = await store.redo();
		await suggestFromPhotos(store);
		if (!redone)
			throw new UserError('conflict', 'Expected a decision that was taken back, to do it again; there is none.');
		events.send({ event: 'changed', data: { what: 'everything' } });
		return redone;
	});
	app.get('/api/bin', async () => store.bin());
	app.post<ById>('/api/bin/:id/restore', { schema: { params: byId } }, async (request) => {
		if (!(await store.restoreFromBin(request.params.id))) throw notFound('thing in the bin', request.params.id);
		events.send({ event: 'changed', data: { what: 'everything' } });
		return { restored: true };
	});
}
