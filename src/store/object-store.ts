import { askStore, type Content, type ObjectRequest, type ObjectStoreSettings } from './object-requests.ts';
import { openObject } from './object-stream.ts';
import type { OpenedFile } from './open-file.ts';

/** An object in a list. */
export type Listed = { readonly key: string; readonly writtenAt: Date };

/** An object store, object by object; keys are below the bucket. Each call is tried three times. */
export type ObjectStore = {
	/** Size in bytes, or null where there is no such object. */
	size(key: string): Promise<number | null>;
	get(key: string): Promise<Uint8Array | null>;
	/** The object to be read piece by piece, never held as a whole. */
	open(key: string): Promise<OpenedFile | null>;
	/** Stored when it resolves. A file is sent as it is read, never held as a whole. */
	put(key: string, content: Content): Promise<void>;
	remove(key: string): Promise<void>;
	/** Objects whose keys begin so. */
	list(prefix: string): Promise<Listed[]>;
};

/** What stands between a tag of the list that an S3-compatible store answers; our keys need no escapes. */
const textsIn = (xml: string, tag: string): string[] =>
	[...xml.matchAll(new RegExp(`<${tag}>(.*?)</${tag}>`, 'gs'))].map(([, text]) => text!);

const textIn = (xml: string, tag: string): string | undefined => textsIn(xml, tag)[0];

/** The store that these settings name; nothing is asked of it yet. */
export function openObjectStore(settings: ObjectStoreSettings): ObjectStore {
	const done = (request: ObjectRequest) => askStore(settings, request, async (response) => response.arrayBuffer());
	return {
		size: (key) =>
			askStore(settings, { method: 'HEAD', path: `/${key}` }, async ({ headers }) => {
				const length = headers.get('content-length');
				return length === null ? null : Number(length);
			}),
		async get(key) {
			const bytes = await done({ method: 'GET', path: `/${key}` });
			return bytes && new Uint8Array(bytes);
		},
		open: (key) => openObject(settings, key),
		async put(key, content) {
			await done({ method: 'PUT', path: `/${key}`, content });
		},
		async remove(key) {
			await done({ method: 'DELETE', path: `/${key}` });
		},
		async list(prefix) {
			const listed: Listed[] = [];
			for (let next: string | undefined = ''; next !== undefined; ) {
				const query = new URLSearchParams({ 'list-type': '2', prefix });
				if (next !== '') query.set('continuation-token', next);
				const bytes = await done({ method: 'GET', path: `?${query}` });
				const xml: string = new TextDecoder().decode(bytes ?? new Uint8Array());
				for (const one of textsIn(xml, 'Contents'))
					listed.push({ key: textIn(one, 'Key')!, writtenAt: new Date(textIn(one, 'LastModified')!) });
				next = textIn(xml, 'NextContinuationToken');
			}
			return listed;
		},
	};
}
