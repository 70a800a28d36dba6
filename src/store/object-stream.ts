import { Readable } from 'node:stream';
import { setTimeout as wait } from 'node:timers/promises';
import { say } from '../language/speak.ts';
import {
	askStore,
	endWhenSilent,
	ObjectStoreError,
	type ObjectStoreSettings,
	PAUSES_MS,
	type Taking,
	TIMEOUT_MS,
} from './object-requests.ts';
import type { OpenedFile } from './open-file.ts';

/** An answer whose bytes are still to come. */
type Opened = { readonly response: Response; readonly line: AbortController };

/** An answer that begins at another byte than was asked for is no answer. */
const openedAt =
	(from: number): Taking<Opened> =>
	async (response, line) => {
		if (from > 0 && response.status !== 206) {
			line.abort();
			throw new TypeError(`expected the object from byte ${from} on, received status ${response.status}`);
		}
		return { response, line };
	};

/** The bytes of an answer as they come, each piece within `timeoutMs` of being asked for. */
async function* piecesOf({ response, line }: Opened, timeoutMs: number): AsyncGenerator<Uint8Array> {
	const reader = response.body?.getReader();
	while (reader) {
		const timer = endWhenSilent(line, timeoutMs);
		const { done, value } = await reader.read().finally(() => clearTimeout(timer));
		if (done) return;
		yield value;
	}
}

/**
 * Opens an object to be read piece by piece, no further than somebody takes it; null where there is none. Where the line breaks it is read on
 * from there, tried three times like everything else; then the stream fails with `ObjectStoreError`. A stream that is destroyed ends its line.
 */
export async function openObject(settings: ObjectStoreSettings, key: string): Promise<OpenedFile | null> {
	const { timeoutMs = TIMEOUT_MS } = settings;
	const open = (from: number) => askStore(settings, { method: 'GET', path: `/${key}`, from }, openedAt(from));
	const first = await open(0);
	if (first === null) return null;
	const sizeBytes = Number(first.response.headers.get('content-length'));
	let now = first;
	let isLeft = false;
	const silent = (cause: Error) => {
		const told = { method: 'GET', key: key.slice(0, 200), cause: cause.name };
		return new ObjectStoreError(say('home.storeSilent', told), { cause });
	};

	async function* bytes(): AsyncGenerator<Uint8Array> {
		let received = 0;
		for (let broken = 0; ; broken++) {
			try {
				for await (const piece of piecesOf(now, timeoutMs)) {
					received += piece.length;
					yield piece;
				}
				return;
			} catch (error) {
				const pause = PAUSES_MS[broken];
				if (isLeft) return;
				if (pause === undefined) throw silent(error as Error);
				await wait(pause);
			}
			const again = await open(received);
			if (again === null) throw silent(new RangeError('the object went while it was read'));
			now = again;
		}
	}
	const pieces = bytes();
	const stream = new Readable({
		read() {
			pieces.next().then(
				({ done, value }) => this.push(done ? null : value),
				(error: Error) => this.destroy(error),
			);
		},
		destroy(error, done) {
			isLeft = true;
			now.line.abort();
			done(error);
		},
	});
	return { sizeBytes, stream };
}
