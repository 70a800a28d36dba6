import { startAuthentication, startRegistration, WebAuthnError } from '@simplewebauthn/browser';
import { say } from '../../../src/language/speak.ts';
import { RequestProblem } from '../api/request.ts';
import { ask } from './host-calls.ts';

type Asked<Options> = { readonly id: string; readonly options: Options };

/** What the browser answers, or a problem in words: it says in its own only that it was refused. */
async function orProblem<T>(asking: Promise<T>): Promise<T> {
	try {
		return await asking;
	} catch (error) {
		if (error instanceof RequestProblem) throw error;
		const isKnown = error instanceof WebAuthnError && error.code === 'ERROR_AUTHENTICATOR_PREVIOUSLY_REGISTERED';
		throw isKnown
			? new RequestProblem('conflict', say('hosting.takenPasskey'))
			: new RequestProblem('wrong-sign-in', say('doorway.noPasskey'));
	}
}

/** Signs in with a passkey of this device. */
export async function signInWithPasskey(): Promise<void> {
	const { id, options } = await ask<Asked<Parameters<typeof startAuthentication>[0]['optionsJSON']>>(
		'POST',
		'/sign-in/passkey',
	);
	const response = await orProblem(startAuthentication({ optionsJSON: options }));
	await ask('POST', '/sign-in/passkey/answer', { id, response });
}

/** Makes a passkey on this device, as asked for at `path`, and returns what the program is to be told. */
export async function makePasskey(path: string, body?: object) {
	const { id, options } = await ask<Asked<Parameters<typeof startRegistration>[0]['optionsJSON']>>('POST', path, body);
	const response = await orProblem(startRegistration({ optionsJSON: options }));
	return { id, response };
}
