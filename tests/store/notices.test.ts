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
