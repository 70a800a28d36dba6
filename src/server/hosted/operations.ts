import { Type } from 'typebox';
import { MOST_NAME_LETTERS, PASSWORD_LETTERS } from '../../language/letters.ts';
import { exact, name, oneOf } from '../schemas/basics.ts';

const id = Type.String({ minLength: 1, maxLength: 100 });
const token = Type.String({ minLength: 20, maxLength: 100 });
const password = Type.String({ minLength: 1, maxLength: PASSWORD_LETTERS.most });
const personName = { ...name, maxLength: MOST_NAME_LETTERS };
const byHome = Type.Object({ home: id });
const byMember = Type.Object({ home: id, person: id });
const byId = Type.Object({ id });

/** A browser's answer in the form of the Web Authentication API (W3C, level 3); the library looks into it. */
const credential = Type.Unsafe<never>({ type: 'object', required: ['id', 'response'], additionalProperties: true });
const passkeyAnswer = exact({ id, response: credential });

const hidden = { hide: true } as const;

/** What may be asked where many homes are kept, beside what may be asked of a home. */
export const HOSTED = {
	signIn: {
		method: 'POST',
		url: '/api/host/sign-in',
		schema: { ...hidden, body: exact({ name: personName, password }) },
	},
	askForPasskey: { method: 'POST', url: '/api/host/sign-in/passkey', schema: hidden },
	signInWithPasskey: {
		method: 'POST',
		url: '/api/host/sign-in/passkey/answer',
		schema: { ...hidden, body: passkeyAnswer },
	},
	signOut: { method: 'POST', url: '/api/host/sign-out', schema: hidden },
	lookAtLink: { method: 'POST', url: '/api/host/link', schema: { ...hidden, body: exact({ token }) } },
	askToJoin: {
		method: 'POST',
		url: '/api/host/join/passkey',
		schema: { ...hidden, body: exact({ token, name: personName }) },
	},
	join: {
		method: 'POST',
		url: '/api/host/join',
		schema: {
			...hidden,
			body: exact({
				token,
				name: personName,
				password: Type.Optional(password),
				passkey: Type.Optional(passkeyAnswer),
			}),
		},
	},
	joinHome: { method: 'POST', url: '/api/host/join/home', schema: { ...hidden, body: exact({ token }) } },
	getAccount: { method: 'GET', url: '/api/host/account', schema: hidden },
	endSession: { method: 'DELETE', url: '/api/host/sessions/:id', schema: { ...hidden, params: byId } },
	endOtherSessions: { method: 'DELETE', url: '/api/host/sessions', schema: hidden },
	changePassword: {
		method: 'PUT',
		url: '/api/host/password',
		schema: { ...hidden, body: exact({ old: Type.Optional(password), password }) },
	},
	askForNewPasskey: { method: 'POST', url: '/api/host/passkeys/ask', schema: hidden },
	addPasskey: { method: 'POST', url: '/api/host/passkeys', schema: { ...hidden, body: passkeyAnswer } },
	removePasskey: {
		method: 'DELETE',
		url: '/api/host/passkeys/:id',
		schema: { ...hidden, params: Type.Object({ id: Type.String({ minLength: 1, maxLength: 1400 }) }) },
	},
	listHomes: { method: 'GET', url: '/api/host/homes', schema: hidden },
	addHome: { method: 'POST', url: '/api/host/homes', schema: { ...hidden, body: exact({ name: personName }) } },
	renameHome: {
		method: 'PATCH',
		url: '/api/host/homes/:home',
		schema: { ...hidden, params: byHome, body: exact({ name: personName }) },
	},
	removeHome: { method: 'DELETE', url: '/api/host/homes/:home', schema: { ...hidden, params: byHome } },
	bringHome: {
		method: 'POST',
		url: '/api/host/homes/bring',
		schema: { ...hidden, querystring: Type.Object({ name: personName }) },
	},
	listMembers: { method: 'GET', url: '/api/host/homes/:home/members', schema: { ...hidden, params: byHome } },
	inviteMember: {
		method: 'POST',
		url: '/api/host/homes/:home/links',
		schema: { ...hidden, params: byHome, body: exact({ role: oneOf(['plan', 'look'] as const) }) },
	},
	putOutMember: {
		method: 'DELETE',
		url: '/api/host/homes/:home/members/:person',
		schema: { ...hidden, params: byMember },
	},
	listPeople: { method: 'GET', url: '/api/host/people', schema: hidden },
	invitePerson: { method: 'POST', url: '/api/host/people/links', schema: hidden },
	removePerson: { method: 'DELETE', url: '/api/host/people/:id', schema: { ...hidden, params: byId } },
} as const;
