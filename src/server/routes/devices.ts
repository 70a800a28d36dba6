import type { FastifyInstance } from 'fastify';
import { Type } from 'typebox';
import { deviceName } from '../../app/device-name.ts';
import { doorOf } from '../../app/door.ts';
import { notFound } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { type ById, byId, exact } from '../schemas/basics.ts';
import { rememberDevice } from '../who-may-come-in.ts';

/** How a device of the local network gets in, and how it is sent away again. */
export function deviceRoutes(app: FastifyInstance, { sharing, events }: Services): void {
	app.get('/api/devices', async (request) => doorOf(sharing, request.socket.localPort));
	if (!sharing) return;
	const changed = () => events.send({ event: 'changed', data: { things: [{ kind: 'device', id: '' }] } });
	app.post<{ Body: { code: string } }>(
		'/api/pair',
		{
			bodyLimit: BODY_LIMITS.code,
			schema: { body: exact({ code: Type.String({ maxLength: 40 }) }) },
			config: { rateLimit: { max: 10, timeWindow: '1 minute' } },
		},
		async (request, reply) => {
			const token = await sharing.pair(request.body.code, deviceName(request.headers['user-agent']));
			changed();
			return rememberDevice(reply, token).send({ paired: true });
		},
	);
	app.delete<ById>('/api/devices/:id', { schema: { params: byId } }, async (request) => {
		if (!(await sharing.unpair(request.params.id))) throw notFound('paired device', request.params.id);
		changed();
		return { unpaired: true };
	});
	app.delete('/api/devices', async () => {
		await sharing.unpairAll();
		changed();
		return { unpaired: true };
	});
}
