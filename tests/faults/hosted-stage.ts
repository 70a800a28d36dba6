import { mkdirSync } from 'node:fs';
import { request as ask, createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { freePort } from '../support/free-port.ts';
import { PASSWORD, tokenOf } from '../support/hosted-app.ts';
import { startObjectStore } from '../support/object-store.ts';
import { startPostgres, type TestPostgres } from '../support/postgres.ts';
import { type Program, saying, startScript } from '../support/program.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { multipartBody } from '../support/test-app.ts';
import type { Answer } from './http-client.ts';

const CHILD = fileURLToPath(new URL('hosted-child.ts', import.meta.url));

/** How the object store behaves: well, answering 500, or slower than it is waited for. */
export type Mood = 'well' | 'failing' | 'slow';

/** Longer than one try may take in a drill. */
const SLOW_MS = 4000;
const TRY_MS = 2000;

/** Passes requests on to the object store, in the mood that it is told. */
async function moodyStore(folder: string) {
	mkdirSync(folder, { recursive: true });
	const { settings, stop } = await startObjectStore(folder);
	let mood: Mood = 'well';
	const target = new URL(settings.endpoint);
	const proxy = createServer((request, response) => {
		const pass = () => {
			const onward = ask({
				...{ host: target.hostname, port: target.port },
				method: request.method,
				path: request.url,
				headers: request.headers,
			});
			onward.once('response', (answer) => {
				response.writeHead(answer.statusCode ?? 500, answer.headers);
				answer.pipe(response);
			});
			onward.once('error', () => response.destroy());
			request.pipe(onward);
		};
		if (mood === 'failing') {
			request.resume();
			response.writeHead(500).end();
		} else if (mood === 'slow') setTimeout(pass, SLOW_MS);
		else pass();
	});
	await new Promise<void>((resolve) => proxy.listen(0, '127.0.0.1', resolve));
	const { port } = proxy.address() as AddressInfo;
	return {
		settings: { ...settings, endpoint: `http://127.0.0.1:${port}`, timeoutMs: TRY_MS },
		be: (next: Mood) => {
			mood = next;
		},
		async stop() {
			proxy.closeAllConnections();
			proxy.close();
			await stop();
		},
	};
}

/** Somebody signed in, in their home, at one server of several. */
export type HomeClient = {
	get(path: string): Promise<Answer>;
	send(method: 'POST' | 'PATCH', path: string, body: unknown, key?: string): Promise<Answer>;
	upload(name: string, bytes: Uint8Array, key: string): Promise<Answer>;
};

async function answerOf(response: Response): Promise<Answer> {
	const text = await response.text();
	return { status: response.status, body: text.startsWith('{') || text.startsWith('[') ? JSON.parse(text) : text };
}

function clientAt(address: string, cookie: string): HomeClient {
	const call = async (method: string, path: string, init: RequestInit = {}) =>
		answerOf(await fetch(`${address}${path}`, { method, ...init, headers: { ...init.headers, cookie } }));
	const keyed = (key?: string) => (key === undefined ? {} : { 'idempotency-key': key });
	return {
		get: (path) => call('GET', path),
		send: (method, path, body, key) =>
			call(method, path, {
				body: JSON.stringify(body),
				headers: { 'content-type': 'application/json', ...keyed(key) },
			}),
		upload: (name, bytes, key) => {
			const { payload, headers } = multipartBody({ purpose: 'garment' }, [{ name, bytes }]);
			return call('POST', '/api/photos', { body: new Uint8Array(payload), headers: { ...headers, ...keyed(key) } });
		},
	};
}

/** A host in processes of their own, which a drill kills, stops and starts as it likes. */
export type HostedStage = {
	readonly postgres: Extract<TestPostgres, { ok: true }>;
	readonly objects: Awaited<ReturnType<typeof moodyStore>>;
	/** Starts a server at a port of its own, or at the one given; ready when it resolves. */
	server(port?: number): Promise<Program & { readonly port: number }>;
	reader(): Promise<Program>;
	/** The first person in their home, at the server of this port. */
	clientAt(port: number): HomeClient;
	close(): Promise<void>;
};

/** Starts one, with one person in a home; or says why there is none. */
export async function openHostedStage(): Promise<HostedStage | { readonly skipped: string }> {
	const postgres = await startPostgres();
	if (!postgres.ok) return { skipped: postgres.reason };
	const folder = temporaryFolder();
	const objects = await moodyStore(join(folder, 'objects'));
	const started: Program[] = [];
	const { connectionString } = postgres;
	async function start(kind: 'host' | 'work', port: number): Promise<Program> {
		const told = { kind, connectionString, objects: objects.settings, workFolder: join(folder, 'work'), port };
		const program = startScript(CHILD, [JSON.stringify(told)]);
		started.push(program);
		await program.line(saying(/^ready$/));
		return program;
	}
	const server = async (given?: number) => {
		const port = given ?? (await freePort());
		return { ...(await start('host', port)), port };
	};
	const first = await server();
	const { link } = await first.line((line) => typeof line.link === 'string');
	const joined = await fetch(`http://localhost:${first.port}/api/host/join`, {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ token: tokenOf(String(link)), name: 'Ada', password: PASSWORD }),
	});
	const cookie = joined.headers.getSetCookie()[0]!.split(';')[0]!;
	const [home] = (await clientAt(`http://localhost:${first.port}`, cookie).get('/api/host/homes')).body;
	await first.stop();
	return {
		postgres,
		objects,
		server,
		reader: () => start('work', 0),
		clientAt: (port) => clientAt(`http://localhost:${port}/homes/${home.id}`, cookie),
		async close() {
			for (const program of started) await program.stop('SIGKILL');
			await objects.stop();
			postgres.stop();
		},
	};
}
