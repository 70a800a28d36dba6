import {
	type AuthenticationResponseJSON,
	generateAuthenticationOptions,
	generateRegistrationOptions,
	type RegistrationResponseJSON,
	verifyAuthenticationResponse,
	verifyRegistrationResponse,
} from '@simplewebauthn/server';
import { say } from '../../language/speak.ts';
import {
	addChallenge,
	addPasskey,
	type Passkey,
	passkeysWith,
	saveCounter,
	takeChallenge,
} from '../../store/postgres/accounts/passkeys.ts';
import { type Person, personWithId } from '../../store/postgres/accounts/people.ts';
import { UserError } from '../errors.ts';
import { hashOfToken } from '../token.ts';
import type { Host } from './host.ts';

/** How long a browser has for an answer. */
const CHALLENGE_MS = 5 * 60 * 1000;

type Passkeys = Pick<Host, 'accounts' | 'now' | 'newId'>;

/** What a browser is to sign, and the name under which its answer is awaited. */
export type Asking<Options> = { readonly id: string; readonly options: Options };

/** Who is asked: whoever would sign in, somebody in a session, or somebody with a link. An answer is taken from them alone. */
export type AskedOf = 'sign-in' | { readonly session: string } | { readonly link: string };

const keyOf = (who: AskedOf): string => {
	if (who === 'sign-in') return who;
	return 'session' in who ? `session:${who.session}` : `link:${hashOfToken(who.link)}`;
};

/** A browser's answer to it. */
export type Answer<Response> = { readonly id: string; readonly response: Response };

const refused = () => new UserError('wrong-sign-in', say('hosting.wrongPasskey'));

async function ask<Options extends { readonly challenge: string }>(
	{ accounts, now, newId }: Passkeys,
	who: AskedOf,
	options: Options,
): Promise<Asking<Options>> {
	const id = newId();
	const at = now();
	const expiresAt = new Date(at.getTime() + CHALLENGE_MS).toISOString();
	const { challenge } = options;
	await addChallenge(accounts, { id, askedOf: keyOf(who), challenge, expiresAt, now: at.toISOString() });
	return { id, options };
}

/** What the browser's answer is held against. The library throws on an answer that is none. */
async function expected({ accounts, now }: Passkeys, who: AskedOf, id: string, origin: URL) {
	const challenge = await takeChallenge(accounts, { id, askedOf: keyOf(who), now: now().toISOString() });
	if (challenge === null) throw refused();
	return {
		expectedChallenge: challenge,
		expectedOrigin: origin.origin,
		expectedRPID: origin.hostname,
		requireUserVerification: true,
	};
}

const orRefused = <T>(verifying: Promise<T>): Promise<T> =>
	verifying.catch((error: unknown) => {
		throw error instanceof Error ? refused() : error;
	});

/** Asks a browser for a passkey of the person of that name: kept on the device, found without a name, opened by finger, face or PIN. */
export async function askForNewPasskey(
	host: Passkeys,
	origin: URL,
	who: AskedOf,
	{ name, passkeys = [] }: { readonly name: string; readonly passkeys?: readonly Passkey[] },
) {
	const options = await generateRegistrationOptions({
		rpName: 'Dyelot',
		rpID: origin.hostname,
		userName: name,
		userDisplayName: name,
		attestationType: 'none',
		excludeCredentials: passkeys.map(({ id }) => ({ id })),
		authenticatorSelection: { residentKey: 'required', userVerification: 'required' },
	});
	return ask(host, who, options);
}

/** The passkey that the browser made. Throws `wrong-sign-in`. */
export async function newPasskey(
	host: Passkeys,
	origin: URL,
	who: AskedOf,
	{ id, response }: Answer<RegistrationResponseJSON>,
): Promise<Pick<Passkey, 'id' | 'publicKey' | 'counter' | 'transports'>> {
	const held = await expected(host, who, id, origin);
	const { verified, registrationInfo } = await orRefused(verifyRegistrationResponse({ response, ...held }));
	if (!verified || !registrationInfo) throw refused();
	const { credential } = registrationInfo;
	return {
		id: credential.id,
		publicKey: credential.publicKey,
		counter: credential.counter,
		transports: credential.transports ?? [],
	};
}

/** Keeps a passkey with its person. Throws `conflict` where it is kept already (W3C Web Authentication, section 7.1: the registration fails). */
export async function keepPasskey(accounts: Host['accounts'], passkey: Passkey): Promise<void> {
	if (!(await addPasskey(accounts, passkey))) throw new UserError('conflict', say('hosting.takenPasskey'));
}

/** Asks a browser to show that it holds a passkey, whichever. */
export async function askForPasskey(host: Passkeys, origin: URL) {
	const options = await generateAuthenticationOptions({ rpID: origin.hostname, userVerification: 'required' });
	return ask(host, 'sign-in', options);
}

/** Who holds the passkey that the browser showed. Throws `wrong-sign-in`. */
export async function personWithPasskey(
	host: Passkeys,
	origin: URL,
	{ id, response }: Answer<AuthenticationResponseJSON>,
): Promise<Person> {
	const held = await expected(host, 'sign-in', id, origin);
	const [passkey] = await passkeysWith(host.accounts, { id: response.id });
	if (!passkey) throw refused();
	const { publicKey, counter } = passkey;
	const credential = { id: passkey.id, publicKey: new Uint8Array(publicKey), counter };
	const { verified, authenticationInfo } = await orRefused(
		verifyAuthenticationResponse({ response, ...held, credential }),
	);
	if (!verified) throw refused();
	await saveCounter(host.accounts, passkey.id, authenticationInfo.newCounter);
	const person = await personWithId(host.accounts, passkey.person);
	if (!person) throw refused();
	return person;
}
