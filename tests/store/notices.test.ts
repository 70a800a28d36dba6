import { connect, createServer, type Socket } from 'node:net';
import { afterAll, expect, it } from 'vitest';
import { type Notice, openNotices } from '../../src/store/postgres/notices.ts';
import { startPostgres } from '../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of notices skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

it.skipIf(!postgres.ok)('what is being told is told before the line is closed', async () => {
	if (!postgres.ok) return;
	const { connectionString } = postgres;
	const heard: Notice[] = [];
	const report = (error: unknown) => {
		throw error;
	};
	const quiet = { connectionString, onGap: () => {}, report };
	const listener = await openNotices({ ...quiet, onNotice: (notice) => void heard.push(notice) });
	const teller = await openNotices({ ...quiet, onNotice: () => {} });
	const told = Array.from({ length: 20 }, (_, n) => teller.tell({ home: String(n), event: 'hello', data: {} }));
	await teller.close();
	await Promise.all(told);
	while (heard.length < 20) await new Promise(setImmediate);
	expect(new Set(heard.map(({ home }) => home)).size).toBe(20);
	await listener.close();
});

it.skipIf(!postgres.ok)(
	'a line that breaks is opened again by one try a second, however long the database is away',
	async () => {
		if (!postgres.ok) return;
		const target = new URL(postgres.connectionString);
		let isAway = false;
		const tries: number[] = [];
		const lines = new Set<Socket>();
		const between = createServer((socket) => {
			socket.on('error', () => {});
			if (isAway) {
				tries.push(performance.now());
				socket.destroy();
				return;
			}
			const onward = connect(Number(target.port), target.hostname);
			onward.on('error', () => {});
			lines.add(socket.once('close', () => onward.destroy()));
			socket.pipe(onward).pipe(socket);
		});
		await new Promise<void>((resolve) => between.listen(0, '127.0.0.1', resolve));
		const address = new URL(target);
		address.port = String((between.address() as { port: number }).port);
		const heard: Notice[] = [];
		let gaps = 0;
		const notices = await openNotices({
			connectionString: address.href,
			onNotice: (notice) => void heard.push(notice),
			onGap: () => void gaps++,
			report: () => {},
		});
		isAway = true;
		for (const line of lines) line.destroy();
		while (tries.length < 4) await new Promise(setImmediate);
		isAway = false;
		while (gaps === 0) await new Promise(setImmediate);
		const apart = tries.slice(1).map((at, index) => at - tries[index]!);
		expect(Math.min(...apart)).toBeGreaterThan(900);
		await notices.tell({ home: 'a', event: 'hello', data: {} });
		while (heard.length === 0) await new Promise(setImmediate);
		await notices.close();
		between.close();
	},
);
