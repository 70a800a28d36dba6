import { describe, expect, it } from 'vitest';
import { createPhotoJobs } from '../../src/app/photo-jobs.ts';

/** Jobs over photos that only have a version, and readers that end when they are told. */
function trial(concurrency: number) {
	const versions = new Map<string, number>();
	const reading: { id: string; end: () => void }[] = [];
	const saved: string[] = [];
	const jobs = createPhotoJobs({
		store: {
			photos: {
				get: async (id: string) => ({ id, version: versions.get(id) ?? 1, correction: {} }),
				originalPath: async (id: string) => id,
				saveReading: async (id: string) => void saved.push(id),
			},
		} as never,
		pool: {
			read: (id: string) =>
				new Promise((resolve) => {
					reading.push({ id, end: () => resolve({ ok: true, reading: {}, derived: {} }) });
				}),
		} as never,
		events: { send: () => {}, listen: () => () => {} },
		concurrency,
		sharedLight: async () => null,
		onRead: async () => {},
		onAllRead: async () => {},
		report: (error) => {
			throw error;
		},
	});
	return { jobs, reading, saved, versions };
}
const settled = () => new Promise((resolve) => setImmediate(resolve));

describe('photos that wait', () => {
	it('are read so many at a time and no more, each once', async () => {
		const { jobs, reading, saved } = trial(2);
		for (const id of ['a', 'b', 'c', 'd', 'd']) await jobs.enqueue(id);
		await settled();
		expect(reading.map(({ id }) => id)).toEqual(['a', 'b']);
		for (let at = 0; at < 4; at++) {
			reading[at]!.end();
			await settled();
		}
		await jobs.settled();
		expect(saved).toEqual(['a', 'b', 'c', 'd']);
	});

	it('and are corrected while they are read are read once more, and only that is kept', async () => {
		const { jobs, reading, saved, versions } = trial(1);
		await jobs.enqueue('a');
		await settled();
		versions.set('a', 2);
		reading[0]!.end();
		await settled();
		expect([reading.length, saved.length]).toEqual([2, 0]);
		reading[1]!.end();
		await jobs.settled();
		expect(saved).toEqual(['a']);
	});

	it('are left where reading is called off, but for those begun', async () => {
		const { jobs, reading, saved } = trial(1);
		for (const id of ['a', 'b', 'c']) await jobs.enqueue(id);
		await settled();
		expect(await jobs.cancelWaiting()).toEqual(['b', 'c']);
		reading[0]!.end();
		await jobs.settled();
		expect(saved).toEqual(['a']);
	});
});
