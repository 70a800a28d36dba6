import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { type IncomingMessage, request } from 'node:http';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { freePort } from '../support/free-port.ts';
import { PASSWORD, tokenOf } from '../support/hosted-app.ts';
import { startPostgres } from '../support/postgres.ts';
import { type Program, saying, startProgram } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`Tests of the hosted processes skipped: ${postgres.reason}.`);

describe.skipIf(!postgres.ok)('a host, started as its operator does', async () => {
	if (!postgres.ok) return;
	const folder = temporaryFolder();
	const photos = join(folder, 'photos');
	const environment = { DYELOT_DATABASE: await postgres.newDatabase(), DYELOT_WORK_FOLDER: join(folder, 'work') };
	const started: Program[] = [];
	afterAll(async () => {
		for (const program of started) await program.stop('SIGKILL');
		postgres.stop();
	});
	const start = (...words: string[]) => {
		const program = startProgram([...words, '--photos', photos], environment);
		started.push(program);
		return program;
	};
	const port = await freePort();
	const at = `http://localhost:${port}`;

	it('goes from an empty database to a read photo in two commands, logs no word of anybody, and stops cleanly', async () => {
		const server = start('host', '--port', String(port));
		const reader = start('work', '--at-once', '1');
		const { link } = await server.line((line) => typeof line.link === 'string');
		await reader.line(saying(/^ready$/));
		expect((await fetch(`${at}/health`)).status).toBe(200);
		expect((await fetch(`${at}/ready`)).status).toBe(200);
		// Whatever name a balancer asks by.
		expect((await fetch(`http://127.0.0.1:${port}/ready`)).status).toBe(200);

		const joined = await fetch(`${at}/api/host/join`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ token: tokenOf(String(link)), name: 'Wilhelmina', password: PASSWORD }),
		});
		expect(joined.status).toBe(200);
		const cookie = joined.headers.getSetCookie()[0]!.split(';')[0]!;
		expect(joined.headers.getSetCookie()[0]).toMatch(/HttpOnly; SameSite=Strict/);
		const [home] = (await (await fetch(`${at}/api/host/homes`, { headers: { cookie } })).json()) as { id: string }[];
		const own = `${at}/homes/${home!.id}`;

		const news = await fetch(`${own}/api/events`, { headers: { cookie, accept: 'text/event-stream' } });
		const form = new FormData();
		form.append('purpose', 'garment');
		form.append('file', new Blob([readFileSync('demo-images/g03-moss-jumper.jpg')]), 'grandmothers-jumper.jpg');
		const sent = await fetch(`${own}/api/photos`, { method: 'POST', headers: { cookie }, body: form });
		expect(sent.status).toBe(202);
		// The reader is another process: that it is done is heard through the database.
		const heard = news.body!.pipeThrough(new TextDecoderStream()).getReader();
		for (let text = ''; !/"status":"read"/.test(text); ) {
			const { done, value } = await heard.read();
			if (done) throw new Error('the line of news ended before the photo was read');
			text += value;
		}
		await heard.cancel();
		const [garment] = (await (await fetch(`${own}/api/garments`, { headers: { cookie } })).json()) as {
			id: string;
			swatches: unknown[];
		}[];
		expect(garment!.swatches.length).toBeGreaterThan(0);

		expect(await server.stop()).toBe(0);
		expect(await reader.stop()).toBe(0);
		const written = server.output() + reader.output();
		for (const line of written.trim().split('\n')) expect(() => JSON.parse(line)).not.toThrow();
		const told = written.replace(String(link), '');
		for (const secret of [PASSWORD, cookie.split('=')[1]!, tokenOf(String(link)), home!.id, garment!.id])
			expect(told).not.toContain(secret);
		expect(told).not.toMatch(/Wilhelmina|jumper|remote|postgres:/i);
		expect(server.lines().some((line) => line.route === '/api/garments' && line.status === 200)).toBe(true);
	});

	it('answers what is on its way before it stops, and takes nothing new', async () => {
		const server = start('host', '--port', String(port));
		await server.line(saying(/^ready$/));
		const body = JSON.stringify({ name: 'Wilhelmina', password: PASSWORD });
		const headers = { 'content-type': 'application/json', 'content-length': body.length, expect: '100-continue' };
		const onItsWay = request(`${at}/api/host/sign-in`, { method: 'POST', headers });
		const answered = once(onItsWay, 'response') as Promise<[IncomingMessage]>;
		onItsWay.flushHeaders();
		// The server has it, and waits for its body.
		await once(onItsWay, 'continue');
		const stopped = server.stop();
		await server.line(saying(/^stopping$/));
		expect((await fetch(`${at}/ready`)).status).toBe(503);
		onItsWay.end(body);
		const [answer] = await answered;
		expect(answer.statusCode).toBe(200);
		answer.resume();
		expect(await stopped).toBe(0);
	});

	it('begins several servers at once on an empty database', async () => {
		const fresh = { ...environment, DYELOT_DATABASE: await postgres.newDatabase(), DYELOT_PHOTOS: photos };
		const ports = [await freePort(), await freePort(), await freePort()];
		const servers = ports.map((one) => startProgram(['host', '--port', String(one)], fresh));
		started.push(...servers);
		await Promise.all(servers.map((server) => server.line(saying(/^first-link$/))));
		for (const server of servers) expect(await server.stop()).toBe(0);
	});
});
