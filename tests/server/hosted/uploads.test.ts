import { readdirSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { connect, type Socket } from 'node:net';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type Browser, type HostedTest, hostedTestApp } from '../../support/hosted-app.ts';
import { cutOut } from '../../support/pictures.ts';
import { startPostgres } from '../../support/postgres.ts';
import { multipartBody } from '../../support/test-app.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of uploads to a host skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

const PROXY = '127.0.0.1';

describe.skipIf(!postgres.ok)('photos on their way to a host', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let port: number;
	beforeAll(async () => {
		test = await hostedTestApp({ connectionString: await postgres.newDatabase(), proxies: [PROXY] });
		await test.app.listen({ port: 0, host: '127.0.0.1' });
		port = (test.app.server.address() as AddressInfo).port;
	});
	afterAll(() => test?.close());

	/** Sends the first half of an upload from somewhere, and stays on the line. */
	function halfUpload(who: Browser & { readonly home: string }, from: string): Socket {
		const { payload, headers } = multipartBody({ purpose: 'garment' }, [
			{ name: 'half.jpg', bytes: new Uint8Array(400_000) },
		]);
		const socket = connect(port, '127.0.0.1');
		socket.on('error', () => {});
		const lines = [
			`POST /homes/${who.home}/api/photos HTTP/1.1`,
			`Host: ${test.origin.host}`,
			`Cookie: ${who.cookie()}`,
			`X-Forwarded-For: ${from}`,
			`Content-Length: ${payload.length}`,
			`Content-Type: ${headers['content-type']}`,
		];
		socket.write(`${lines.join('\r\n')}\r\n\r\n`);
		socket.write(payload.subarray(0, 200_000));
		return socket;
	}
	const incoming = () => {
		try {
			return readdirSync(join(test.host.workFolder, 'incoming')).length;
		} catch {
			// Made with the first photo.
			return 0;
		}
	};

	it('are four of a person at once, from wherever they come, and keep nobody else waiting', async () => {
		const [ada, bo] = [await test.newcomer('Ada'), await test.newcomer('Bo')];
		const sockets = Array.from({ length: 12 }, (_, n) => halfUpload(ada, `192.0.2.${n}`));
		while (incoming() < 4) await new Promise(setImmediate);
		const { payload, headers } = multipartBody({ purpose: 'garment' }, [
			{ name: 'whole.png', bytes: await cutOut([40, 20, 10]) },
		]);
		const sent = await bo.ask('POST', `/homes/${bo.home}/api/photos`, payload, headers);
		expect(sent.status).toBe(202);
		expect(incoming()).toBe(4);
		for (const socket of sockets) socket.destroy();
		while (incoming() > 0) await new Promise(setImmediate);
	});
});
