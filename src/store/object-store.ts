import { createHash } from 'node:crypto';
import { createReadStream } from 'node:fs';
import { Readable } from 'node:stream';
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
	/** How long one try may take, in milliseconds. */
	readonly timeoutMs?: number;
};

/** The object store answered something else than was expected, or not at all, however often it was asked. */
export class ObjectStoreError extends Error {}

/** What is sent: bytes, or a file of this machine with its size and the SHA-256 of its content in hex. */
export type Content = Uint8Array | { readonly path: string; readonly sizeBytes: number; readonly sha256: string };

/** An object in a list. */
export type Listed = { readonly key: string; readonly writtenAt: Date };

/** An object store, object by object; keys are below the bucket. Each call is tried three times. */
export type ObjectStore = {
	/** Size in bytes, or null where there is no such object. */
	size(key: string): Promise<number | null>;
	get(key: string): Promise<Uint8Array | null>;
	/** Stored when it resolves. A file is sent as it is read, never held as a whole. */
	put(key: string, content: Content): Promise<void>;
	remove(key: string): Promise<void>;
	/** Objects whose keys begin so. */
	list(prefix: string): Promise<Listed[]>;
};

/** Waited before each further try. */
const PAUSES_MS = [200, 1000];
const TIMEOUT_MS = 30_000;

type Method = 'GET' | 'HEAD' | 'PUT' | 'DELETE';
/** `path` is below the bucket: a key after a slash, or a query. */
type Request = { readonly method: Method; readonly path: string; readonly content?: Content };
type Answer = { readonly status: number; readonly bytes: Uint8Array; readonly headers: Headers };

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

const wait = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

const textOf = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** What stands between a tag of the list that an S3-compatible store answers; our keys need no escapes. */
const textsIn = (xml: string, tag: string): string[] =>
	[...xml.matchAll(new RegExp(`<${tag}>(.*?)</${tag}>`, 'gs'))].map(([, text]) => text!);

const textIn = (xml: string, tag: string): string | undefined => textsIn(xml, tag)[0];

/** One signed request; its answer whatever the status. Throws what `fetch` throws. */
async function once(
	{ endpoint, bucket, timeoutMs = TIMEOUT_MS, ...access }: ObjectStoreSettings,
	{ method, path, content }: Request,
): Promise<Answer> {
	const root = `${endpoint.replace(/\/$/, '')}/${encodeURIComponent(bucket)}`;
	const headersAsked = content ? checksOf(content) : {};
	const signer = new AwsV4Signer({ method, url: `${root}${path}`, headers: headersAsked, ...access, service: 's3' });
	const { url, headers } = await signer.sign();
	const signal = AbortSignal.timeout(timeoutMs);
	const response = await fetch(url, { method, headers, signal, ...(content ? bodyOf(content) : {}) });
	return {
		status: response.status,
		bytes: new Uint8Array(await response.arrayBuffer()),
		headers: response.headers,
	};
}

/** Asks until it is answered, three times in all; null where there is nothing of that name. Throws `ObjectStoreError`. */
async function call(settings: ObjectStoreSettings, request: Request): Promise<Answer | null> {
	const { method, path } = request;
	for (let tries = 0; ; tries++) {
		const answer = await once(settings, request).catch((error: Error) => error);
		const pause = PAUSES_MS[tries];
		if (pause !== undefined && (answer instanceof Error || isPassing(answer.status))) {
			await wait(pause);
			continue;
		}
		const asked = { method, key: path.slice(0, 200) };
		if (answer instanceof Error)
			throw new ObjectStoreError(say('home.storeSilent', { ...asked, cause: answer.name }), { cause: answer });
		if (answer.status >= 200 && answer.status < 300) return answer;
		if (answer.status === 404 && method !== 'PUT') return null;
		const text = textOf(answer.bytes).slice(0, 200);
		throw new ObjectStoreError(say('home.storeAnswered', { ...asked, status: answer.status, text }));
	}
}

/** The store that these settings name; nothing is asked of it yet. */
export function openObjectStore(settings: ObjectStoreSettings): ObjectStore {
	const ask = (method: Method, path: string, content?: Content) =>
		call(settings, content ? { method, path, content } : { method, path });
	return {
		async size(key) {
			const length = (await ask('HEAD', `/${key}`))?.headers.get('content-length');
			return length === null || length === undefined ? null : Number(length);
		},
		get: async (key) => (await ask('GET', `/${key}`))?.bytes ?? null,
		async put(key, content) {
			await ask('PUT', `/${key}`, content);
		},
		async remove(key) {
			await ask('DELETE', `/${key}`);
		},
		async list(prefix) {
			const listed: Listed[] = [];
			for (let next: string | undefined = ''; next !== undefined; ) {
				const query = new URLSearchParams({ 'list-type': '2', prefix });
				if (next !== '') query.set('continuation-token', next);
				const xml: string = textOf((await ask('GET', `?${query}`))?.bytes ?? new Uint8Array());
				for (const one of textsIn(xml, 'Contents'))
					listed.push({ key: textIn(one, 'Key')!, writtenAt: new Date(textIn(one, 'LastModified')!) });
				next = textIn(xml, 'NextContinuationToken');
			}
			return listed;
		},
	};
}
