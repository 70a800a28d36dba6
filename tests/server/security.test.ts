import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cutOut } from '../support/pictures.ts';
import { multipartBody, type TestApp, testApp } from '../support/test-app.ts';

let test: TestApp;
beforeAll(async () => {
	test = await testApp();
});
afterAll(() => test?.close());

describe('requests from elsewhere', () => {
	it.each([
		'evil.example',
		'evil.example:4810',
		'localhost.evil.example',
		'127.0.0.1.evil.example',
		'[::1].evil.example',
	])('with the host "%s" are refused (DNS rebinding)', async (host) => {
		const response = await test.app.inject({ url: '/api/garments', headers: { host } });
		expect(response.statusCode).toBe(403);
	});

	it.each([
		['a foreign origin', { origin: 'https://evil.example' }],
		['an opaque origin', { origin: 'null' }],
		['another port of this computer', { origin: 'http://localhost:9999' }],
		['a cross-site form', { 'sec-fetch-site': 'cross-site' }],
	])('with %s are refused (cross-site request forgery)', async (_, headers) => {
		const response = await test.app.inject({
			method: 'POST',
			url: '/api/undo',
			headers: { host: 'localhost:4810', ...headers },
		});
		expect(response.statusCode).toBe(403);
	});

	const firefox = 'Mozilla/5.0 (X11; Linux x86_64; rv:140.0) Gecko/20100101 Firefox/140.0';
	it.each([
		['of another site', { 'sec-fetch-site': 'cross-site' }],
		['of a sister site', { 'sec-fetch-site': 'same-site' }],
		['with a foreign origin', { origin: 'https://evil.example' }],
		['with a foreign referer', { referer: 'https://evil.example/page', 'user-agent': firefox }],
		['of another port', { referer: 'http://localhost:9999/', 'user-agent': firefox }],
		['of a browser that says nothing', { 'user-agent': firefox }],
		['of another site that could add our header', { 'sec-fetch-site': 'cross-site', 'x-dyelot': 'page' }],
	])('that only read are refused, too, where they are %s', async (_, headers) => {
		for (const url of ['/api/backup', '/api/garments', '/%61pi/garments'])
			expect((await test.app.inject({ url, headers: { host: 'localhost:4810', ...headers } })).statusCode).toBe(403);
	});

	it.each([
		['typed in by a person', { 'sec-fetch-site': 'none', 'user-agent': firefox }],
		[
			'a picture in our page, as a browser without Sec-Fetch-Site asks',
			{ referer: 'http://localhost:4810/', 'user-agent': firefox },
		],
		['a script of our page without any of these', { 'x-dyelot': 'page', 'user-agent': firefox }],
		['a program, which no site steers', { 'user-agent': 'curl/8.14.1' }],
	])('that read are answered where they are %s', async (_, headers) => {
		const answer = await test.app.inject({ url: '/api/garments', headers: { host: 'localhost:4810', ...headers } });
		expect(answer.statusCode).toBe(200);
	});

	it('may link to the page, which then asks for itself', async () => {
		const headers = { host: 'localhost:4810', 'sec-fetch-site': 'cross-site', 'user-agent': firefox };
		expect((await test.app.inject({ url: '/seasons', headers })).statusCode).toBe(200);
	});

	it('from the page itself are answered', async () => {
		const headers = { host: 'localhost:4810', origin: 'http://localhost:4810', 'sec-fetch-site': 'same-origin' };
		expect((await test.app.inject({ url: '/api/garments', headers })).statusCode).toBe(200);
	});
});

describe('what the server sends', () => {
	it('allows no script, style, picture or connection but its own', async () => {
		const { headers } = await test.app.inject({ url: '/api/status', headers: { host: 'localhost' } });
		const policy = String(headers['content-security-policy']);
		expect(policy).toContain("default-src 'none'");
		expect(policy).not.toMatch(/unsafe|https?:|\*/);
		expect(headers['strict-transport-security']).toBeUndefined();
		expect(headers['x-content-type-options']).toBe('nosniff');
	});

	it('is not kept by the browser', async () => {
		const { headers } = await test.app.inject({ url: '/api/garments', headers: { host: 'localhost' } });
		expect(headers['cache-control']).toBe('no-store');
	});

	it('never shows an original as a page: it is a download', async () => {
		const { body } = await test.upload({ purpose: 'garment' }, [
			{ name: 'shirt.png', bytes: await cutOut([60, 10, 10]) },
		]);
		const response = await test.app.inject({
			url: `/api/photos/${body.items[0].photoId}/original`,
			headers: { host: 'localhost' },
		});
		expect(response.headers['content-disposition']).toBe('attachment');
		expect(response.headers['content-type']).toBe('image/png');
	});
});

describe('uploads', () => {
	it.each([
		['without a boundary', 'multipart/form-data', 'x'],
		['that is none', 'multipart/form-data; boundary=a', 'x'],
		[
			'that breaks off in a photo',
			'multipart/form-data; boundary=a',
			'--a\r\nContent-Disposition: form-data; name="purpose"\r\n\r\ngarment\r\n--a\r\nContent-Disposition: form-data; name="file"; filename="x"\r\n\r\nabc',
		],
	])('in a form %s are refused with a sentence', async (_, type, payload) => {
		const headers = { host: 'localhost', 'content-type': type };
		const response = await test.app.inject({ method: 'POST', url: '/api/photos', headers, payload });
		expect(response.statusCode).toBe(400);
		expect(response.json().error.message).toMatch(/^Expected a whole form with photos/);
	});

	it.each([
		'../../../etc/passwd',
		'..\\..\\windows\\system.ini',
		'<img src=x onerror=alert(1)>.png',
		'\u202Egnp.exe.png',
		'שמלה 👗.png',
		'a'.repeat(400),
	])('named %s are text only, never a path or markup', async (name) => {
		const { body } = await test.upload({ purpose: 'garment' }, [
			{ name, bytes: await cutOut([30 + (name.length % 60), 10, 10]) },
		]);
		expect(body.items[0].ok).toBe(true);
		const photo = (await test.get(`/api/photos/${body.items[0].photoId}`)).body;
		expect(photo.id).toMatch(/^[0-9a-f]{64}$/);
		expect(photo.originalName.length).toBeLessThanOrEqual(200);
	});

	it('of SVG are refused', async () => {
		const svg = new TextEncoder().encode('<svg xmlns="http://www.w3.org/2000/svg"><script>alert(1)</script></svg>');
		const { body } = await test.upload({ purpose: 'garment' }, [{ name: 'photo.jpg', bytes: svg }]);
		expect(body.items[0]).toMatchObject({ ok: false, reason: 'unsupported' });
	});

	it('without saying what they are for are refused', async () => {
		const { payload, headers } = multipartBody({}, [{ name: 'x.png', bytes: await cutOut([50, 0, 0]) }]);
		const response = await test.app.inject({
			method: 'POST',
			url: '/api/photos',
			headers: { host: 'localhost', ...headers },
			payload,
		});
		expect(response.statusCode).toBe(400);
	});

	it.each([
		'/api/photos/..%2f..%2fetc%2fpasswd/thumb',
		'/api/photos/abc/thumb',
		`/api/photos/${'0'.repeat(64)}/secrets`,
		'/..%2f..%2fpackage.json',
		'/%2e%2e/%2e%2e/package.json',
	])('do not open a way to files: %s', async (url) => {
		const response = await test.app.inject({ url, headers: { host: 'localhost' } });
		expect(response.statusCode === 200 ? response.payload : '').not.toContain('"dependencies"');
		if (url.startsWith('/api/')) expect(response.statusCode).toBeGreaterThanOrEqual(400);
	});
});

describe('sharing on the local network', () => {
	it('is off unless asked for: other devices’ names are foreign', async () => {
		expect((await test.app.inject({ url: '/api/garments', headers: { host: '192.168.1.5:4810' } })).statusCode).toBe(
			403,
		);
	});
});
