import { deviceName } from '../../../app/device-name.ts';
import { UserError } from '../../../app/errors.ts';
import { askForNewPasskey, keepPasskey, newPasskey } from '../../../app/hosting/passkeys.ts';
import { say } from '../../../language/speak.ts';
import { passkeysWith, removePasskey } from '../../../store/postgres/accounts/passkeys.ts';
import { personWithId } from '../../../store/postgres/accounts/people.ts';
import type { App } from '../../typed-app.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';
import { requireRecentSignIn } from '../recent-sign-in.ts';

/** The passkeys of who is signed in: a new one, and one less. */
export function ownPasskeyRoutes(app: App, shared: HostedRoutes): void {
	const { host, origin, comerOf } = shared;
	const { accounts } = host;
	app.route({
		...HOSTED.askForNewPasskey,
		handler: async (request) => {
			requireRecentSignIn(shared, request);
			const { person, sessionId: session } = comerOf(request);
			const passkeys = await passkeysWith(accounts, { person: person.id });
			return askForNewPasskey(host, origin, { session }, { name: person.name, passkeys });
		},
	});
	app.route({
		...HOSTED.addPasskey,
		handler: async (request) => {
			requireRecentSignIn(shared, request);
			const { person, sessionId: session } = comerOf(request);
			const passkey = await newPasskey(host, origin, { session }, request.body);
			const device = deviceName(request.headers['user-agent']);
			const addedAt = host.now().toISOString();
			await keepPasskey(accounts, { ...passkey, person: person.id, device, addedAt });
			return { added: true };
		},
	});
	app.route({
		...HOSTED.removePasskey,
		handler: async (request) => {
			requireRecentSignIn(shared, request);
			const { person } = comerOf(request);
			const kept = await personWithId(accounts, person.id);
			const passkeys = await passkeysWith(accounts, { person: person.id });
			if (kept?.password === null && passkeys.length <= 1) throw new UserError('conflict', say('hosting.lastPasskey'));
			await removePasskey(accounts, person.id, request.params.id);
			return { removed: true };
		},
	});
}
