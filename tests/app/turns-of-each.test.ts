import { describe, expect, it } from 'vitest';
import { createTurnsOfEach } from '../../src/app/turns-of-each.ts';

/** A clock that stands still until it is told. */
function trial() {
	const due = new Set<() => void>();
	const turns = createTurnsOfEach({ mostOfOne: 4, mostOfAll: 8, refusal: () => 'later' }, (run) => {
		due.add(run);
		return () => void due.delete(run);
	});
	const timeIsUp = () => {
		for (const run of [...due]) run();
	};
	/** Enters so many times; `ins` fills as turns come, `refused` with the codes of those sent away. */
	const ins: (() => void)[] = [];
	const refused: unknown[] = [];
	const enter = (device: string, left = new AbortController().signal) =>
		turns.enter(device, left).then(
			(leave) => ins.push(leave),
			(error: { code?: string; retryAfterS?: number }) => refused.push([error.code, error.retryAfterS]),
		);
	return { ins, refused, enter, timeIsUp, due };
}
const settled = () => new Promise((resolve) => setImmediate(resolve));

describe('uploads at once', () => {
	it('are four of a device and eight of all, the others in the order in which they came', async () => {
		const { ins, enter, due } = trial();
		for (let n = 0; n < 6; n++) void enter('phone');
		await settled();
		expect(ins).toHaveLength(4);
		for (let n = 0; n < 6; n++) void enter('computer');
		await settled();
		expect(ins).toHaveLength(8);
		void enter('tablet');
		await settled();
		expect(ins).toHaveLength(8);
		ins[0]!();
		ins[0]!();
		await settled();
		expect(ins).toHaveLength(9);
		for (let n = 0; n < ins.length; n++) {
			ins[n]!();
			await settled();
		}
		expect(ins).toHaveLength(13);
		expect(due.size).toBe(0);
	});

	it('that wait too long hear when to come back, and their place is free', async () => {
		const { ins, refused, enter, timeIsUp } = trial();
		for (let n = 0; n < 5; n++) void enter('phone');
		timeIsUp();
		await settled();
		expect(refused).toEqual([['busy', 5]]);
		ins[0]!();
		void enter('phone');
		await settled();
		expect(ins).toHaveLength(5);
	});

	it('of somebody who left while waiting take no turn', async () => {
		const { ins, refused, enter, due } = trial();
		for (let n = 0; n < 4; n++) void enter('phone');
		const gone = new AbortController();
		void enter('phone', gone.signal);
		gone.abort();
		await settled();
		ins[0]!();
		await settled();
		expect([ins.length, refused.length, due.size]).toEqual([4, 1, 0]);
		void enter('phone', gone.signal);
		await settled();
		expect(refused).toHaveLength(2);
	});

	it('wait a hundred of each at most, and leave room for those of others to wait', async () => {
		const { ins, refused, enter } = trial();
		for (let n = 0; n < 4 + 100 + 3; n++) void enter('phone');
		await settled();
		expect(refused).toEqual([
			['busy', 5],
			['busy', 5],
			['busy', 5],
		]);
		for (let n = 0; n < 5; n++) void enter('computer');
		await settled();
		expect([ins.length, refused.length]).toEqual([8, 3]);
		ins[4]!();
		await settled();
		expect(ins).toHaveLength(9);
	});
});
