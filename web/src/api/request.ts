import { say, spokenLanguage } from '../../../src/language/speak.ts';
import { homeAddress } from './home-address.ts';
import { takeRequestKey } from './request-key.ts';

/** A request that was answered with a reason, or not at all. `message` is meant for the person at the page. */
export class RequestProblem extends Error {
	readonly code: string;
	/** What the program told beside: of code `stale`, the entries that were changed meanwhile. */
	readonly details: Readonly<Record<string, unknown>>;

	constructor(code: string, message: string, details: Readonly<Record<string, unknown>> = {}) {
		super(message);
		this.details = details;
		this.name = 'RequestProblem';
		this.code = code;
	}
}

/** Shows the program that its own page asks, in browsers that do not say so themselves. */
export const OWN_PAGE = { 'x-dyelot': 'page' } as const;

const UNREACHABLE = say('requests.unreachable');

/** The problem that an answer tells of: the server's own words, or a plain sentence where it sent none. */
export function problemOfAnswer(status: number, body: unknown): RequestProblem {
	const error = (body as { error?: Record<string, unknown> } | null)?.error;
	if (typeof error?.code === 'string' && typeof error.message === 'string') {
		return new RequestProblem(error.code, error.message, error);
	}
	return new RequestProblem('internal', say('requests.noReason', { status }));
}

/** Addresses of people, homes and sessions: those of no home. */
const OF_HOST = '/api/host/';

/** Before a request whose answer got lost is sent once more. */
const ONCE_MORE_AFTER_MS = 300;

/** Sends it; where no answer comes, once more. A request that changes something carries a key, so that twice is once. */
async function answerTo(path: string, init: RequestInit): Promise<Response> {
	try {
		return await fetch(path, init);
	} catch (error) {
		if (init.signal?.aborted) throw error;
		await new Promise((resolve) => setTimeout(resolve, ONCE_MORE_AFTER_MS));
		return await fetch(path, init).catch((again: unknown) => {
			throw init.signal?.aborted ? again : new RequestProblem('unreachable', UNREACHABLE);
		});
	}
}

/**
 * Sends one request to the program and returns its JSON; `key` names it where it changes something. Throws {@link RequestProblem}; what `signal`
 * stops throws as fetch does.
 */
export async function request<T>(
	method: string,
	path: string,
	body?: unknown,
	{ key = takeRequestKey(), signal }: { readonly key?: string; readonly signal?: AbortSignal } = {},
): Promise<T> {
	const raw = body instanceof Blob || typeof body === 'string';
	const headers: Record<string, string> = { ...OWN_PAGE, 'accept-language': spokenLanguage() };
	if (method !== 'GET') headers['idempotency-key'] = key;
	const init: RequestInit = { method, headers, ...(signal ? { signal } : {}) };
	if (body !== undefined) {
		init.body = raw ? body : JSON.stringify(body);
		headers['content-type'] = body instanceof Blob ? body.type : raw ? 'text/csv' : 'application/json';
	}
	const answer = await answerTo(path.startsWith(OF_HOST) ? path : homeAddress() + path, init);
	const text = await answer.text();
	let parsed: unknown = null;
	try {
		parsed = text === '' ? null : JSON.parse(text);
	} catch {
		throw new RequestProblem('internal', say('requests.noJson', { method, path }));
	}
	if (!answer.ok) throw problemOfAnswer(answer.status, parsed);
	return parsed as T;
}
