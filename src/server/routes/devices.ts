import { deviceName } from '../../app/device-name.ts';
import { doorOf } from '../../app/door.ts';
import { notFound } from '../../app/errors.ts';
import type { Services } from '../../app/services.ts';
import { say } from '../../language/speak.ts';
import { BODY_LIMITS } from '../body-limits.ts';
import { homeOperations as operations } from '../operations/home.ts';
import type { App } from '../typed-app.ts';
import { rememberDevice } from '../who-may-come-in.ts';

/** How a device of the local network gets in, and how it is sent away again. */
export function deviceRoutes(app: App, { sharing, events }: Services): void {
	app.route({ ...operations.listDevices, handler: async ({ socket }) => doorOf(sharing, socket.localPort) });
	if (!sharing) return;
	const changed = () => events.send({ event: 'changed', data: { entries: [{ kind: 'device', id: '' }] } });
	app.route({
		...operations.pairDevice,
		bodyLimit: BODY_LIMITS.code,
		config: { rateLimit: { max: 10, timeWindow: '1 minute' } },
		handler: async (request, reply) => {
			const token = await sharing.pair(request.body.code, deviceName(request.headers['user-agent']));
			changed();
			rememberDevice(reply, token);
			return { paired: true as const };
		},
	});
	app.route({
		...operations.unpairDevice,
		handler: async ({ params }) => {
			if (!(await sharing.unpair(params.id))) throw notFound(say('nouns.pairedDevice'), params.id);
			changed();
			return { unpaired: true as const };
		},
	});
	app.route({
		...operations.unpairDevices,
		handler: async () => {
			await sharing.unpairAll();
			changed();
			return { unpaired: true as const };
		},
	});
}
