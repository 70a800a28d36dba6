import { readdirSync, readFileSync } from 'node:fs';
import { afterAll, describe, expect, it } from 'vitest';
import { createReaderPool } from '../../../src/photo/readers/pool.ts';
import type { Readers } from '../../../src/photo/readers/readers.ts';
import { cutOut, plainPng } from '../../support/pictures.ts';

const pool = createReaderPool({ threads: 2 });
afterAll(() => pool.close());

/** Ids of the processes that this one started (Linux). */
const childProcesses = (): number[] =>
	readdirSync('/proc/self/task').flatMap((task) =>
		readFileSync(`/proc/self/task/${task}/children`, 'utf8').trim().split(' ').filter(Boolean).map(Number),
	);

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

	describe.skipIf(process.platform !== 'linux')('whose reader dies, as a crash in a decoder ends it,', () => {
		const picture = plainPng(3000, 3000, '#456789');
		/** Ends the readers that a pool starts, at most `times` of them, while `during` goes on. */
		async function killing(times: number, during: Promise<unknown>): Promise<void> {
			let going = true;
			let killed = 0;
			const ended = during.then(() => {
				going = false;
			});
			while (going && killed < times) {
				for (const pid of childProcesses().filter((id) => !standing.has(id))) {
					process.kill(pid, 'SIGKILL');
					killed++;
				}
				await new Promise((resolve) => setTimeout(resolve, 20));
			}
			await ended;
		}
		let standing = new Set<number>();

		it('reads the photo again with a new one', async () => {
			standing = new Set(childProcesses());
			const mortal = createReaderPool({ threads: 1 });
			const read = mortal.read(await picture, {});
			await killing(1, read);
			expect(await read).toMatchObject({ ok: true });
			await mortal.close();
		});

		it('gives a photo up that brings every reader down, with a reason, and reads the next', async () => {
			standing = new Set(childProcesses());
			const mortal = createReaderPool({ threads: 1 });
			const [first, second] = [mortal.read(await picture, {}), mortal.read(await picture, {})];
			await killing(Number.POSITIVE_INFINITY, first);
			expect(await first).toMatchObject({ ok: false, reason: 'crashed' });
			expect(await second).toMatchObject({ ok: true });
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
