import { spokenLanguage } from '../../../src/language/speak.ts';

/** A request that was answered with a reason, or not at all. `message` is meant for the person at the page. */
export class RequestProblem extends Error {
	readonly code: string;

	constructor(code: string, message: string) {
		super(message);
		this.name = 'RequestProblem';
		this.code = code;
	}
}

/** Shows the program that its own page asks, in browsers that do not say so themselves. */
export const OWN_PAGE = { 'x-dyelot': 'page' } as const;

const UNREACHABLE =
	'Expected an answer from Dyelot on this machine; none came. Is the program still running? Start it again and this page goes on where it was.';

/** The problem that an answer tells of: the server's own words, or a plain sentence where it sent none. */
export function problemOfAnswer(status: number, body: unknown): RequestProblem {
	const error = (body as { error?: { code?: unknown; message?: unknown } } | null)?.error;
	if (typeof error?.code === 'string' && typeof error.message === 'string') {
		return new RequestProblem(error.code, error.message);
	}
	return new RequestProblem(
		'internal',
		`Expected an answer to this request; the program answered ${status} without a reason.`,
	);
}

/** Sends one request to the program and returns its JSON. Throws {@link RequestProblem}; what `signal` stops throws as fetch does. */
export async function request<T>(method: string, path: string, body?: unknown, signal?: AbortSignal): Promise<T> {
	const raw = body instanceof Blob || typeof body === 'string';
	const headers: Record<string, string> = { ...OWN_PAGE, 'accept-language': spokenLanguage() };
	const init: RequestInit = { method, headers, ...(signal ? { signal } : {}) };
	if (body !== undefined) {
		init.body = raw ? body : JSON.stringify(body);
		headers['content-type'] = body instanceof Blob ? body.type : raw ? 'text/csv' : 'application/json';
	}
	let answer: Response;
	try {
		answer = await fetch(path, init);
	} catch (error) {
		if (signal?.aborted) throw error;
		throw new RequestProblem('unreachable', UNREACHABLE);
	}
	const text = await answer.text();
	let parsed: unknown = null;
	try {
		parsed = text === '' ? null : JSON.parse(text);
	} catch {
		throw new RequestProblem('internal', `Expected JSON in answer to ${method} ${path}; received something else.`);
	}
	if (!answer.ok) throw problemOfAnswer(answer.status, parsed);
	return parsed as T;
}

/** GET. */
export const get = <T>(path: string): Promise<T> => request<T>('GET', path);
