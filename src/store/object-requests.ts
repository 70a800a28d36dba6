import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import { AwsV4Signer } from 'aws4fetch';
import { say } from '../language/speak.ts';

/** Where an S3-compatible object store is, and how to sign for it. */
export type ObjectStoreSettings = {
	/** Address without the bucket, such as `https://objects.example.net`. */
	readonly endpoint: string;
	readonly bucket: string;
	readonly region: string;
	readonly accessKeyId: string;
	readonly secretAccessKey: string;
	/** How long one try may take, in milliseconds; of an object that is read piece by piece, how long each piece may. */
	readonly timeoutMs?: number;
};

/** The object store answered something else than was expected, or not at all, however often it was asked. */
export class ObjectStoreError extends Error {}

/** What is sent: bytes, or a file of this machine with its size and the SHA-256 of its content in hex. */
export type Content = Uint8Array | { readonly path: string; readonly sizeBytes: number; readonly sha256: string };

/** `path` is below the bucket: a key after a slash, or a query. `from`: the first byte that is asked for. */
export type ObjectRequest = {
	readonly method: 'GET' | 'HEAD' | 'PUT' | 'DELETE';
	readonly path: string;
	readonly content?: Content;
	readonly from?: number;
};

/** What is taken of a good answer, while the try lasts; `line` ends it. A failure in it is one of the try. */
export type Taking<T> = (response: Response, line: AbortController) => Promise<T>;

/** Waited before each further try. */
export const PAUSES_MS = [200, 1000] as const;
export const TIMEOUT_MS = 30_000;

/** Ends a line that says nothing for so long; the timer is the caller's to clear. */
export const endWhenSilent = (line: AbortController, ms: number): NodeJS.Timeout =>
	setTimeout(() => line.abort(new DOMException(String(ms), 'TimeoutError')), ms);

/** The store checks what arrives against these. */
function checksOf(content: Content): Record<string, string> {
	if (!(content instanceof Uint8Array))
		return { 'x-amz-content-sha256': content.sha256, 'content-length': String(content.sizeBytes) };
	return {
		'x-amz-content-sha256': createHash('sha256').update(content).digest('hex'),
		'content-md5': createHash('md5').update(content).digest('base64'),
	};
}

/** Opened anew for each try. */
const bodyOf = (content: Content) =>
	content instanceof Uint8Array
		? { body: new Uint8Array(content) }
		: { body: Readable.toWeb(createReadStream(content.path)) as ReadableStream, duplex: 'half' as const };

const isPassing = (status: number): boolean => status >= 500 || status === 429 || status === 408;

type Answer<T> =
	| { readonly ok: true; readonly taken: T }
	| { readonly ok: false; readonly status: number; readonly text: string };

/** One signed request. Throws what `fetch` and the taking throw. */
async function once<T>(
	{ endpoint, bucket, timeoutMs = TIMEOUT_MS, ...access }: ObjectStoreSettings,
	{ method, path, content, from }: ObjectRequest,
	taking: Taking<T>,
): Promise<Answer<T>> {
	const root = `${endpoint.replace(/\/$/, '')}/${encodeURIComponent(bucket)}`;
	const headersAsked = { ...(content ? checksOf(content) : {}), ...(from ? { range: `bytes=${from}-` } : {}) };
	const signer = new AwsV4Signer({ method, url: `${root}${path}`, headers: headersAsked, ...access, service: 's3' });
	const { url, headers } = await signer.sign();
	const line = new AbortController();
	const timer = endWhenSilent(line, timeoutMs);
	try {
		const init = { method, headers, signal: line.signal, ...(content ? bodyOf(content) : {}) };
		const response = await fetch(url, init);
		if (response.ok) return { ok: true, taken: await taking(response, line) };
		return { ok: false, status: response.status, text: (await response.text()).slice(0, 200) };
	} finally {
		clearTimeout(timer);
	}
}

/** Asks until it is answered, three times in all; null where there is nothing of that name. Throws `ObjectStoreError`. */
export async function askStore<T>(
	settings: ObjectStoreSettings,
	request: ObjectRequest,
	taking: Taking<T>,
): Promise<T | null> {
	const asked = { method: request.method, key: request.path.slice(0, 200) };
	for (let tries = 0; ; tries++) {
		const answer = await once(settings, request, taking).catch((error: Error) => error);
		if (!(answer instanceof Error) && answer.ok) return answer.taken;
		const pause = PAUSES_MS[tries];
		if (pause !== undefined && (answer instanceof Error || isPassing(answer.status))) {
			await wait(pause);
			continue;
		}
		if (answer instanceof Error)
			throw new ObjectStoreError(say('home.storeSilent', { ...asked, cause: answer.name }), { cause: answer });
		if (answer.status === 404 && request.method !== 'PUT') return null;
		const { status, text } = answer;
		throw new ObjectStoreError(say('home.storeAnswered', { ...asked, status, text }));
	}
}
