import { UserError } from '../../../app/errors.ts';
import { lookAgainAtLines } from '../../../app/hosting/open-lines.ts';
import { hashedPassword, isPassword } from '../../../app/hosting/passwords.ts';
import { countAttempt } from '../../../app/hosting/sign-in.ts';
import { say } from '../../../language/speak.ts';
import { passkeysWith } from '../../../store/postgres/accounts/passkeys.ts';
import { personWithId, setPassword } from '../../../store/postgres/accounts/people.ts';
import { endSessions, sessionsOf } from '../../../store/postgres/accounts/sessions.ts';
import type { App } from '../../typed-app.ts';
import type { HostedRoutes } from '../hosted-routes.ts';
import { HOSTED } from '../operations.ts';
import { requireRecentSignIn } from '../recent-sign-in.ts';

/** Tries to give one's old password within a quarter of an hour. */
const OLD_PASSWORD_TRIES = 5;

/** One's account: where one is signed in, with what, and one's password. */
export function sessionRoutes(app: App, shared: HostedRoutes): void {
	const { host, comerOf } = shared;
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
			const { person } = comerOf(request);
			await endSessions(accounts, person.id, { id: request.params.id });
			await lookAgainAtLines(host, person.id);
			return { ended: true };
		},
	});
	app.route({
		...HOSTED.endOtherSessions,
		handler: async (request) => {
			const { person, sessionId } = comerOf(request);
			await endSessions(accounts, person.id, { except: sessionId });
			await lookAgainAtLines(host, person.id);
			return { ended: true };
		},
	});
	app.route({
		...HOSTED.changePassword,
		handler: async (request) => {
			const { person, sessionId } = comerOf(request);
			const { old = '', password } = request.body;
			const kept = await personWithId(accounts, person.id);
			if (!kept?.password) requireRecentSignIn(shared, request);
			await countAttempt(host, `old-password:${person.id}`, OLD_PASSWORD_TRIES);
			if (kept?.password && !(await isPassword(old, kept.password)))
				throw new UserError('wrong-sign-in', say('hosting.wrongOldPassword'));
			await setPassword(accounts, person.id, await hashedPassword(password, person.name));
			// Whoever came in with the old one goes out.
			await endSessions(accounts, person.id, { except: sessionId });
			await lookAgainAtLines(host, person.id);
			return { changed: true };
		},
	});
}
