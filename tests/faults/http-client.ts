import { multipartBody } from '../support/test-app.ts';

/** What came back: the status, and the body as JSON where it is JSON. */
// biome-ignore lint/suspicious/noExplicitAny: the suite checks these shapes, so nothing may be assumed of them
export type Answer = { readonly status: number; readonly body: any };

/** Asks a running server as its page does. Rejects only when the server cannot be reached. */
export type Client = {
	readonly get: (path: string) => Promise<Answer>;
	readonly send: (method: 'POST' | 'PUT' | 'PATCH' | 'DELETE', path: string, body?: unknown) => Promise<Answer>;
	/** Uploads one photo as a garment. */
	readonly upload: (name: string, bytes: Uint8Array) => Promise<Answer>;
	readonly startSeason: (name: string) => Promise<Answer>;
	/** Waits until no photo waits to be read; false when that takes longer than `seconds`. */
	readonly settled: (seconds: number) => Promise<boolean>;
};

async function answerOf(response: Response): Promise<Answer> {
	const text = await response.text();
	const isJson = response.headers.get('content-type')?.includes('json') && text !== '';
	return { status: response.status, body: isJson ? JSON.parse(text) : text };
}

export function clientOf(address: string): Client {
	const url = (path: string) => new URL(path, address);
	const get = async (path: string) => answerOf(await fetch(url(path)));
	const send: Client['send'] = async (method, path, body) =>
		answerOf(
			await fetch(url(path), {
				method,
				...(body === undefined ? {} : { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }),
			}),
		);
	return {
		get,
		send,
		startSeason: (name) =>
			send('POST', '/api/seasons', { name, yearPart: 'spring', startsOn: '2026-03-01', endsOn: '2026-05-31' }),
		upload: async (name, bytes) => {
			const { payload, headers } = multipartBody({ purpose: 'garment' }, [{ name, bytes }]);
			return answerOf(await fetch(url('/api/photos'), { method: 'POST', headers, body: payload }));
		},
		settled: async (seconds) => {
			for (const until = Date.now() + seconds * 1000; Date.now() < until; ) {
				if ((await get('/api/status')).body.photos.waiting === 0) return true;
				await new Promise((resolve) => setTimeout(resolve, 100));
			}
			return false;
		},
	};
}

/** A refusal for a person: an error code and a sentence of what was expected and what came. */
export const isClearRefusal = ({ status, body }: Answer): boolean =>
	status >= 400 &&
	typeof body?.error?.code === 'string' &&
	body.error.code !== 'internal' &&
	body.error.message?.length > 20;
