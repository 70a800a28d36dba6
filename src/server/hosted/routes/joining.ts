import { deviceName } from '../../../app/device-name.ts';
import { UserError } from '../../../app/errors.ts';
import { joinAnew, joinHome, lookAtLink } from '../../../app/hosting/joining.ts';
import { askForNewPasskey, newPasskey } from '../../../app/hosting/passkeys.ts';
import { hashedPassword } from '../../../app/hosting/passwords.ts';
import { countFrom } from '../../../app/hosting/sign-in.ts';
import { say } from '../../../language/speak.ts';
import type { App } from '../../typed-app.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';
import { letInBrowser, STRANGERS_BYTES } from './sign-in.ts';

/** Coming in by a link: for the first time, or into one more home. */
export function joinRoutes(app: App, shared: HostedRoutes): void {
	const { host, origin, comerOf } = shared;
	const bodyLimit = STRANGERS_BYTES;
	app.route({
		...HOSTED.lookAtLink,
		bodyLimit,
		handler: async (request) => {
			await countFrom(host, request.ip);
			const { homeName, role, isHost } = await lookAtLink(host, request.body.token);
			return { homeName, role, isHost };
		},
	});
	app.route({
		...HOSTED.askToJoin,
		bodyLimit,
		handler: async (request) => {
			await countFrom(host, request.ip);
			const { token: link, name } = request.body;
			await lookAtLink(host, link);
			return askForNewPasskey(host, origin, { link }, { name });
		},
	});
	app.route({
		...HOSTED.join,
		bodyLimit,
		handler: async (request, reply) => {
			const { token, name, password, passkey } = request.body;
			await countFrom(host, request.ip);
			await lookAtLink(host, token);
			if (password === undefined && passkey === undefined) throw new UserError('bad-request', say('hosting.noSecret'));
			const device = deviceName(request.headers['user-agent']);
			const person = await joinAnew(host, token, {
				name,
				password: password === undefined ? null : await hashedPassword(password, name),
				passkey:
					passkey === undefined ? null : { ...(await newPasskey(host, origin, { link: token }, passkey)), device },
			});
			return letInBrowser(shared, person.id, request, reply);
		},
	});
	app.route({
		...HOSTED.joinHome,
		handler: (request) => joinHome(host, request.body.token, comerOf(request).person),
	});
}
