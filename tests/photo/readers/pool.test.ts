import { afterAll, describe, expect, it } from 'vitest';
import { createReaderPool } from '../../../src/photo/readers/pool.ts';
import { type Readers, startReaders } from '../../../src/photo/readers/readers.ts';
import { cutOut, plainPng } from '../../support/pictures.ts';

const pool = createReaderPool({ threads: 2 });
afterAll(() => pool.close());

describe('the pool of readers', () => {
	it('reads good photos beside bad ones', async () => {
		const good = await cutOut([50, 20, 30]);
		const bad = new TextEncoder().encode('no photo at all, whatever its name says');
		const results = await Promise.all([good, bad, good, new Uint8Array(), good].map((bytes) => pool.read(bytes, {})));
		expect(results.map(({ ok }) => ok)).toEqual([true, false, true, false, true]);
	});

	it('stops a photo that takes too long, says so, and goes on', async () => {
		const hasty = createReaderPool({ threads: 1, timeoutMs: 1 });
		try {
			expect(await hasty.read(await plainPng(2000, 2000, '#456789'), {})).toMatchObject({
				ok: false,
				reason: 'too-slow',
			});
		} finally {
			await hasty.close();
		}
		expect((await pool.read(await cutOut([50, 20, 30]), {})).ok).toBe(true);
	});

	describe('whose reader dies, as a crash in a decoder ends it,', () => {
		/** A pool whose reading process is killed when it was asked for the photo `doomed`, `times` times at most. */
		function mortalPool(doomed: Uint8Array, times: number) {
			let killed = 0;
			const start = (threads: number): Readers => {
				const readers = startReaders(threads);
				return {
					...readers,
					ask(request) {
						const answer = readers.ask(request);
						if (request.source === doomed && killed < times) {
							killed++;
							void readers.stop();
						}
						return answer;
					},
				};
			};
			return { mortal: createReaderPool({ threads: 1, start }), killed: () => killed };
		}

		it('reads the photo again with a new one', async () => {
			const picture = await plainPng(300, 300, '#456789');
			const { mortal, killed } = mortalPool(picture, 1);
			expect(await mortal.read(picture, {})).toMatchObject({ ok: true });
			expect(killed()).toBe(1);
			await mortal.close();
		});

		it('gives a photo up that brings every reader down, with a reason, and reads the next', async () => {
			const doomed = await plainPng(300, 300, '#456789');
			const { mortal, killed } = mortalPool(doomed, Number.POSITIVE_INFINITY);
			const [first, second] = [mortal.read(doomed, {}), mortal.read(await plainPng(300, 300, '#987654'), {})];
			expect(await first).toMatchObject({ ok: false, reason: 'crashed' });
			expect(await second).toMatchObject({ ok: true });
			// Twice beside others, once alone.
			expect(killed()).toBe(3);
			await mortal.close();
		});
	});

	it('marks no innocent photo failed beside one that brings the reader down again and again', async () => {
		let started = 0;
		/** A process that dies whenever it is asked for the photo "bad", with all that it was reading. */
		const start = (): Readers => {
			started++;
			const pending: (() => void)[] = [];
			let alive = true;
			return {
				isAlive: () => alive,
				ask: ({ id, source }) =>
					new Promise((resolve) => {
						const lost = { id, stopped: 'lost', cause: 'SIGSEGV' } as const;
						if (!alive) return resolve(lost);
						pending.push(() => resolve(lost));
						if (source === 'bad') {
							alive = false;
							for (const die of pending) die();
						}
						setImmediate(() => resolve({ id, result: { ok: false, reason: 'empty', message: String(source), ms: 0 } }));
					}),
				stop: async () => {},
			};
		};
		const doomed = createReaderPool({ threads: 4, start });
		const photos = ['a', 'b', 'c', 'bad', 'd', 'e', 'f', 'bad', 'g', 'h'];
		const results = await Promise.all(photos.map((photo) => doomed.read(photo, {})));
		const reasons = results.map((result) => (result.ok ? 'read' : result.reason));
		expect(reasons).toEqual(photos.map((photo) => (photo === 'bad' ? 'crashed' : 'empty')));
		expect(started).toBeLessThanOrEqual(1 + 2 * 3);
		await doomed.close();
	});

	it('leaves no process behind once it is closed, and says so to whoever still waits', async () => {
		const closing = createReaderPool({ threads: 1 });
		const picture = await plainPng(300, 300, '#456789');
		const reads = [closing.read(picture, {}), closing.read(picture, {})];
		await closing.close();
		for (const result of await Promise.all(reads)) expect(result).toMatchObject({ ok: false, reason: 'crashed' });
		expect(await closing.read(picture, {})).toMatchObject({ ok: false, reason: 'crashed' });
	});
});
