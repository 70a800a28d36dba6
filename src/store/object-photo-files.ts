import { createHash } from 'node:crypto';
import { readFile, rm } from 'node:fs/promises';
import { AwsClient } from 'aws4fetch';
import { say } from '../language/speak.ts';
import { derivedKey, originalKey, type PhotoFiles } from './photo-files.ts';

/** Where an S3-compatible object store is, and how to sign for it. */
export type ObjectStoreSettings = {
	/** Address without the bucket, such as `https://objects.example.net`. */
	readonly endpoint: string;
	readonly bucket: string;
	readonly region: string;
	readonly accessKeyId: string;
	readonly secretAccessKey: string;
};

/** The object store answered something else than was expected. */
export class ObjectStoreError extends Error {}

/** Photo files in an S3-compatible object store, below `prefix` (one a home). */
export function objectPhotoFiles(settings: ObjectStoreSettings, prefix: string): PhotoFiles {
	const { endpoint, bucket, region, accessKeyId, secretAccessKey } = settings;
	const client = new AwsClient({ accessKeyId, secretAccessKey, region, service: 's3' });
	const root = `${endpoint.replace(/\/$/, '')}/${encodeURIComponent(bucket)}/${encodeURIComponent(prefix)}`;

	async function call(
		method: 'GET' | 'HEAD' | 'PUT' | 'DELETE',
		key: string,
		body?: Uint8Array,
	): Promise<Response | null> {
		const request = {
			method,
			...(body === undefined
				? {}
				: {
						body: new Uint8Array(body),
						headers: {
							// The store checks what arrives against both.
							'x-amz-content-sha256': createHash('sha256').update(body).digest('hex'),
							'content-md5': createHash('md5').update(body).digest('base64'),
						},
					}),
		};
		const response = await client.fetch(`${root}/${key}`, request);
		if (response.ok) return response;
		const text = await response.text();
		if (response.status === 404 && method !== 'PUT') return null;
		throw new ObjectStoreError(
			say('home.storeAnswered', { method, key, status: response.status, text: text.slice(0, 200) }),
		);
	}
	const bytesOf = async (response: Response) => new Uint8Array(await response.arrayBuffer());

	async function writeOriginal(id: string, bytes: Uint8Array): Promise<void> {
		const known = await call('HEAD', originalKey(id));
		if (known?.headers.get('content-length') !== String(bytes.length)) await call('PUT', originalKey(id), bytes);
	}

	return {
		writeOriginal,
		async takeOriginal(id, path) {
			await writeOriginal(id, await readFile(path));
			await rm(path, { force: true });
		},
		async original(id) {
			const response = await call('GET', originalKey(id));
			if (!response) throw new ObjectStoreError(say('home.originalMissing', { id }));
			return bytesOf(response);
		},
		originalPath: async () => null,
		async writeDerived(id, name, bytes) {
			await call('PUT', derivedKey(id, name), bytes);
		},
		async derived(id, name) {
			const response = await call('GET', derivedKey(id, name));
			return response && bytesOf(response);
		},
		async removeDerived(id, name) {
			await call('DELETE', derivedKey(id, name));
		},
	};
}
