import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { counterpartOf } from '../../../src/app/hosting/sign-in.ts';
import { type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { startPostgres } from '../../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of addresses skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const PROXY = '10.0.0.1';
const TRIES = 60;

describe('who counts as one', () => {
	// Forms of an address: RFC 4291, section 2.2.
	it.each([
		['192.0.2.7', '192.0.2.7'],
		['::ffff:192.0.2.7', '192.0.2.7'],
		['2001:db8:1:2:3:4:5:6', '2001:db8:1:2::/64'],
		['2001:db8:1:2::6', '2001:db8:1:2::/64'],
		['2001:db8::6', '2001:db8:0:0::/64'],
		['::1', '0:0:0:0::/64'],
		['fe80::1:2:3:4', 'fe80:0:0:0::/64'],
	])('%s is %s', (address, one) => expect(counterpartOf(address)).toBe(one));
});

describe.skipIf(!postgres.ok)('tries from one address are counted', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase(), proxies: [PROXY] });
		await test.newcomer('Ada');
	});
	afterAll(() => test?.close());

	/** How often a stranger was answered, asking from here and there. */
	async function answered(from: (n: number) => { remoteAddress: string; forwarded?: string }): Promise<number> {
		let count = 0;
		for (let n = 0; n < TRIES; n++) {
			const { remoteAddress, forwarded } = from(n);
			const { statusCode } = await test.app.inject({
				method: 'POST',
				url: '/api/host/link',
				remoteAddress,
				headers: { host: test.origin.host, ...(forwarded ? { 'x-forwarded-for': forwarded } : {}) },
				payload: { token: 'x'.repeat(43) },
			});
			if (statusCode === 404) count++;
			else expect(statusCode).toBe(429);
		}
		return count;
	}

	it('whatever the header of a proxy says that nobody told us of', async () => {
		expect(await answered((n) => ({ remoteAddress: '192.0.2.1', forwarded: `198.51.100.${n}` }))).toBe(50);
	});

	it('as the told proxy saw it, whatever the one who asks wrote before that', async () => {
		expect(await answered((n) => ({ remoteAddress: PROXY, forwarded: `198.51.100.${n}, 203.0.113.9` }))).toBe(50);
		expect(await answered((n) => ({ remoteAddress: PROXY, forwarded: `203.0.113.${100 + n}` }))).toBe(TRIES);
	});

	it('wherever in its own network of IPv6 it moves', async () => {
		expect(await answered((n) => ({ remoteAddress: `2001:db8:0:7::${n + 1}` }))).toBe(50);
	});
});
