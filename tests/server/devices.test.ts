import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp({ share: true });
});
afterAll(() => test?.close());

const PHONE = 'Mozilla/5.0 (Linux; Android 15; Pixel 9) AppleWebKit/537.36 Chrome/140.0 Mobile Safari/537.36';
const from = (cookie = '') => ({
	remoteAddress: '192.168.1.20',
	headers: { host: test.services.sharing!.names()[0]!, 'user-agent': PHONE, 'x-dyelot': 'page', cookie },
});
const door = async () => (await test.get('/api/devices')).body;

async function pairedPhone(): Promise<string> {
	const { code } = await door();
	const answer = await test.app.inject({ method: 'POST', url: '/api/pair', payload: { code }, ...from() });
	expect(answer.statusCode).toBe(200);
	const cookie = String(answer.headers['set-cookie']);
	expect(cookie).toMatch(/HttpOnly/);
	expect(cookie).toMatch(/SameSite=Strict/);
	expect(cookie).toMatch(/Max-Age=2592000/);
	return cookie.split(';')[0]!;
}

const statusFor = async (cookie: string, url = '/api/garments', method: 'GET' | 'DELETE' = 'GET') =>
	(await test.app.inject({ method, url, ...from(cookie) })).statusCode;

describe('the devices that may come in', () => {
	it('are shown on this computer with the code, by what they are and when they were seen', async () => {
		const cookie = await pairedPhone();
		expect(await statusFor(cookie)).toBe(200);
		const { shared, code, devices } = await door();
		expect(shared).toBe(true);
		expect(code).toMatch(/^\d{8}$/);
		expect(devices).toMatchObject([{ device: 'Android phone' }]);
		expect(JSON.stringify(devices)).not.toContain(cookie.split('=')[1]);
	});

	it('may not see or send away each other', async () => {
		const cookie = await pairedPhone();
		const [{ id }] = (await door()).devices;
		expect(await statusFor(cookie, '/api/devices')).toBe(403);
		expect(await statusFor(cookie, '/api/devices', 'DELETE')).toBe(403);
		expect(await statusFor(cookie, `/api/devices/${id}`, 'DELETE')).toBe(403);
		expect(await statusFor(cookie, '/%61pi/devices')).toBe(403);
		expect(await statusFor('', '/api/devices')).toBe(401);
	});

	it('are sent away one by one or all at once, and must then give a code again', async () => {
		const [first, second] = [await pairedPhone(), await pairedPhone()];
		const { devices } = await door();
		expect((await test.send('DELETE', `/api/devices/${devices.at(-2).id}`)).status).toBe(200);
		expect([await statusFor(first), await statusFor(second)]).toEqual([401, 200]);
		expect((await test.send('DELETE', `/api/devices/${devices.at(-2).id}`)).status).toBe(404);
		expect((await test.send('DELETE', '/api/devices')).status).toBe(200);
		expect(await statusFor(second)).toBe(401);
		expect((await door()).devices).toEqual([]);
	});

	it('are told to keep their cookie for longer whenever their time begins anew, and not before', async () => {
		const cookie = await pairedPhone();
		const recognise = vi.spyOn(test.services.sharing!, 'recognise');
		for (const renewed of [true, false]) {
			recognise.mockReturnValueOnce({ paired: true, renewed });
			const { headers } = await test.app.inject({ url: '/api/garments', ...from(cookie) });
			if (renewed) expect(String(headers['set-cookie'])).toContain(`${cookie}; Max-Age=2592000`);
			else expect(headers['set-cookie']).toBeUndefined();
		}
		recognise.mockRestore();
	});

	it('hear of no change after they were sent away, on the line they had open', async () => {
		const cookie = await pairedPhone();
		const listening = test.app.inject({
			url: '/api/events',
			remoteAddress: '192.168.1.20',
			headers: { ...from(cookie).headers, accept: 'text/event-stream' },
		});
		await test.app.ready();
		await test.send('DELETE', '/api/devices');
		// The line ends by itself; a device that still listens would keep this test waiting for ever.
		test.services.events.send({ event: 'changed', data: { entries: [{ kind: 'garment', id: 'g1' }] } });
		expect((await listening).payload).not.toContain('garment');
	});

	it('are none where the program is not shared', async () => {
		const alone = await testApp();
		expect((await alone.get('/api/devices')).body).toEqual({ shared: false });
		await alone.close();
	});
});
