import { deviceName } from '../../../app/device-name.ts';
import { UserError } from '../../../app/errors.ts';
import { askForNewPasskey, newPasskey } from '../../../app/hosting/passkeys.ts';
import { hashedPassword, isPassword } from '../../../app/hosting/passwords.ts';
import { countAttempt } from '../../../app/hosting/sign-in.ts';
import { say } from '../../../language/speak.ts';
import { addPasskey, passkeysWith, removePasskey } from '../../../store/postgres/accounts/passkeys.ts';
import { personWithId, setPassword } from '../../../store/postgres/accounts/people.ts';
import { endSessions, sessionsOf } from '../../../store/postgres/accounts/sessions.ts';
import type { App } from '../../typed-app.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';

/** Tries to give one's old password within a quarter of an hour. */
const OLD_PASSWORD_TRIES = 5;

/** Where one is signed in, and with what one signs in. */
export function sessionRoutes(app: App, { host, origin, comerOf }: HostedRoutes): void {
	const { accounts } = host;
	app.route({
		...HOSTED.getAccount,
		handler: async (request) => {
			const { person, sessionId } = comerOf(request);
			const [sessions, passkeys, kept] = await Promise.all([
				sessionsOf(accounts, person.id),
				passkeysWith(accounts, { person: person.id }),
				personWithId(accounts, person.id),
			]);
			return {
				person,
				hasPassword: kept?.password !== null,
				sessions: sessions.map((one) => ({ ...one, isThis: one.id === sessionId })),
				passkeys: passkeys.map(({ id, device, addedAt }) => ({ id, device, addedAt })),
			};
		},
	});
	app.route({
		...HOSTED.endSession,
		handler: async (request) => {
			await endSessions(accounts, comerOf(request).person.id, { id: request.params.id });
			return { ended: true };
		},
	});
	app.route({
		...HOSTED.endOtherSessions,
		handler: async (request) => {
			const { person, sessionId } = comerOf(request);
			await endSessions(accounts, person.id, { except: sessionId });
			return { ended: true };
		},
	});
	app.route({
		...HOSTED.changePassword,
		handler: async (request) => {
			const { person, sessionId } = comerOf(request);
			const { old = '', password } = request.body;
			const kept = await personWithId(accounts, person.id);
			await countAttempt(host, `old-password:${person.id}`, OLD_PASSWORD_TRIES);
			if (kept?.password && !(await isPassword(old, kept.password)))
				throw new UserError('wrong-sign-in', say('hosting.wrongOldPassword'));
			await setPassword(accounts, person.id, await hashedPassword(password, person.name));
			// Whoever came in with the old one goes out.
			await endSessions(accounts, person.id, { except: sessionId });
			return { changed: true };
		},
	});
	app.route({
		...HOSTED.askForNewPasskey,
		handler: async (request) => {
			const { person } = comerOf(request);
			return askForNewPasskey(host, origin, person.name, await passkeysWith(accounts, { person: person.id }));
		},
	});
	app.route({
		...HOSTED.addPasskey,
		handler: async (request) => {
			const passkey = await newPasskey(host, origin, request.body);
			const device = deviceName(request.headers['user-agent']);
			const addedAt = host.now().toISOString();
			await addPasskey(accounts, { ...passkey, person: comerOf(request).person.id, device, addedAt });
			return { added: true };
		},
	});
	app.route({
		...HOSTED.removePasskey,
		handler: async (request) => {
			const { person } = comerOf(request);
			const kept = await personWithId(accounts, person.id);
			const passkeys = await passkeysWith(accounts, { person: person.id });
			if (kept?.password === null && passkeys.length <= 1) throw new UserError('conflict', say('hosting.lastPasskey'));
			await removePasskey(accounts, person.id, request.params.id);
			return { removed: true };
		},
	});
}
