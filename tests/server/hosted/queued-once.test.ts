import { afterAll, describe, expect, it } from 'vitest';
import { openHost } from '../../../src/app/hosting/host.ts';
import { hostedTestApp } from '../../support/hosted-app.ts';
import { cutOut } from '../../support/pictures.ts';
import { startPostgres } from '../../support/postgres.ts';
import { multipartBody } from '../../support/test-app.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of what opening a home queues skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

describe.skipIf(!postgres.ok)('a photo that waits', () => {
	if (!postgres.ok) return;
	it('is queued by a server that opens its home, and not once more by the reader that took it', async () => {
		const test = await hostedTestApp({ connectionString: await postgres.newDatabase() });
		const { home, ask } = await test.newcomer('Ada');
		const { payload, headers } = multipartBody({ purpose: 'garment' }, [
			{ name: 'jumper.png', bytes: await cutOut([40, 20, 30]) },
		]);
		expect((await ask('POST', `/homes/${home}/api/photos`, payload, headers)).status).toBe(202);
		const queuedWhenOpened = async (queuesWaiting: boolean) => {
			await test.host.queue.drop(home);
			const host = await openHost({ ...test.host, queuesWaiting });
			await host.homeServices(home);
			await host.close();
			return test.host.queue.waiting();
		};
		expect(await queuedWhenOpened(false)).toBe(0);
		expect(await queuedWhenOpened(true)).toBe(1);
		await test.close();
	});
});
