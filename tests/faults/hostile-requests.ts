import { join } from 'node:path';
import { endOf, startServer } from '../../bench/server-process.ts';
import { seededRandom } from '../../src/wardrobe/words/seeded-random.ts';
import { cutOut } from '../support/pictures.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { clientOf } from './http-client.ts';
import { rawRequest } from './raw-request.ts';

/** Names and texts that have broken programs: paths, markup, formats, other scripts, sizes. */
const TEXTS = [
	'../../../etc/passwd',
	'..%2f..%2f..%2fetc%2fpasswd',
	'%00',
	'\u0000',
	'__proto__',
	'constructor',
	"'; DROP TABLE entries; --",
	'<script>alert(1)</script>',
	'{{7*7}}',
	'%s%n%d',
	'\u202Eright to left',
	'👩🏽‍🌾',
	'\uFFFD',
	'',
	' ',
	'a'.repeat(70_000),
	'{"$ne":null}',
	'https://example.com/',
	'file:///etc/passwd',
] as const;

/** Values where another kind of value is expected. */
const VALUES: readonly unknown[] = [
	null,
	true,
	-1,
	0,
	1e308,
	-1e308,
	Number.MAX_SAFE_INTEGER + 2,
	0.1,
	[],
	[[[[[[[]]]]]]],
	{},
	{ __proto__: { polluted: true } },
	JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}'),
	...TEXTS,
];

type Schema = { properties?: Record<string, unknown>; type?: string };
type Operation = {
	readonly parameters?: readonly { readonly in: string; readonly name: string }[];
	readonly requestBody?: { readonly content?: Readonly<Record<string, { readonly schema?: Schema }>> };
};
type Route = { readonly method: string; readonly path: string; readonly operation: Operation };

/** Every route that the running server describes. */
async function routesOf(address: string): Promise<Route[]> {
	const { paths } = (await (await fetch(new URL('/api/openapi.json', address))).json()) as {
		paths: Record<string, Record<string, Operation>>;
	};
	return Object.entries(paths).flatMap(([path, ways]) =>
		Object.entries(ways).map(([method, operation]) => ({ method: method.toUpperCase(), path, operation })),
	);
}

/** Answers that give away how the program is built or where it lives, or that admit to no reason. */
function givenAway(text: string, homePath: string): string | null {
	if (text.includes(homePath)) return 'the path of the home';
	if (/\n\s+at .+:\d+:\d+|node_modules|\/dist\/|\/src\//.test(text)) return 'its own code';
	if (/SQLITE|kysely|syntax error/i.test(text)) return 'its database';
	return null;
}

/** Requests that no browser would send, half of them broken before they are HTTP. */
const RAW: readonly (readonly [string, string])[] = [
	['no HTTP', 'hello\r\n\r\n'],
	['no host', 'GET /api/garments HTTP/1.1\r\n\r\n'],
	['two hosts', 'GET /api/garments HTTP/1.1\r\nHost: localhost\r\nHost: evil.example\r\n\r\n'],
	['a foreign host in the line', 'GET http://evil.example/api/garments HTTP/1.1\r\nHost: evil.example\r\n\r\n'],
	['headers without end', `GET / HTTP/1.1\r\nHost: localhost\r\nX: ${'x'.repeat(200_000)}\r\n\r\n`],
	['a line without end', `GET /${'a'.repeat(200_000)} HTTP/1.1\r\nHost: localhost\r\n\r\n`],
	['a way up', 'GET /../../../../etc/passwd HTTP/1.1\r\nHost: localhost\r\n\r\n'],
	['a way up in disguise', 'GET /%2e%2e/%2e%2e/%2e%2e/etc/passwd HTTP/1.1\r\nHost: localhost\r\n\r\n'],
	[
		'a length that lies',
		'POST /api/wears HTTP/1.1\r\nHost: localhost\r\nContent-Type: application/json\r\nContent-Length: 900\r\n\r\n{}',
	],
	['two lengths', 'POST /api/undo HTTP/1.1\r\nHost: localhost\r\nContent-Length: 0\r\nContent-Length: 10\r\n\r\n'],
	['chunks that are none', 'POST /api/undo HTTP/1.1\r\nHost: localhost\r\nTransfer-Encoding: chunked\r\n\r\nzz\r\n'],
	[
		'another protocol',
		'GET /api/events HTTP/1.1\r\nHost: localhost\r\nConnection: Upgrade\r\nUpgrade: websocket\r\n\r\n',
	],
	['a tunnel', 'CONNECT evil.example:443 HTTP/1.1\r\nHost: evil.example:443\r\n\r\n'],
];

/** Every route, with every part of it replaced by what does not belong there. `perRoute` = requests to each. */
export async function hostileRequests(perRoute: number): Promise<Figures> {
	const homePath = join(temporaryFolder(), 'home');
	const server = await startServer(homePath);
	const client = clientOf(server.address);
	const random = seededRandom('hostile requests');
	const any = <T>(values: readonly T[]): T => values[Math.floor(random() * values.length)]!;
	const [failed, leaked, answeredForeign]: string[][] = [[], [], []];
	let requests = 0;
	try {
		const { body } = await client.upload('coat.png', await cutOut([40, 20, 10]));
		await client.settled(900);
		const season = await client.startSeason('Spring');
		const ids = [body.items[0].photoId, body.items[0].entryId, season.body.id];
		// The demo takes nothing from the request, and half a minute to load; the line of events never ends by itself.
		const leftOut = ['/api/demo', '/api/events'];
		const routes = (await routesOf(server.address)).filter(({ path }) => !leftOut.includes(path));

		/** A value that may even be right, so that requests get past the first check. */
		const word = (): string => (random() < 0.5 ? any(ids) : any(TEXTS));
		const bodyFor = (schema: Schema | undefined): unknown => {
			const names = Object.keys(schema?.properties ?? {});
			if (names.length === 0 || random() < 0.2) return any(VALUES);
			return Object.fromEntries(
				names.filter(() => random() < 0.8).map((name) => [name, random() < 0.3 ? word() : any(VALUES)]),
			);
		};
		for (const { method, path, operation } of routes) {
			for (let i = 0; i < perRoute; i++) {
				const filled = path.replace(/\{[^}]+\}/g, () => encodeURIComponent(word().slice(0, 300)));
				const url = new URL(filled, server.address);
				for (const { in: where, name } of operation.parameters ?? [])
					if (where === 'query') url.searchParams.set(name, String(any(VALUES)).slice(0, 2000));
				const type = any([
					'application/json',
					'application/json',
					'application/json',
					'text/plain',
					'multipart/form-data',
					'image/png',
					'',
				]);
				const content = operation.requestBody?.content?.['application/json']?.schema;
				const text = random() < 0.1 ? '{"half":' : (JSON.stringify(bodyFor(content)) ?? 'null');
				const what = `${method} ${url.pathname.slice(0, 80)} ${type} ${text.slice(0, 120)}`;
				const response = await fetch(url, {
					method,
					...(method === 'GET' ? {} : { body: text, headers: type ? { 'content-type': type } : {} }),
					signal: AbortSignal.timeout(600_000),
				});
				requests++;
				const answer = url.pathname.endsWith('/backup') ? '' : await response.text();
				if (url.pathname.endsWith('/backup')) await response.arrayBuffer();
				if (response.status >= 500 && response.status !== 503) failed!.push(`${what}: ${response.status}`);
				const given = response.status >= 400 ? givenAway(answer, homePath) : null;
				if (given) leaked!.push(`${what}: ${given}`);
			}
		}
		const port = Number(new URL(server.address).port);
		for (const [what, bytes] of RAW) {
			const line = await rawRequest(port, bytes);
			requests++;
			if (/ 200 /.test(line) && !what.startsWith('another')) answeredForeign!.push(`${what}: ${line}`);
			if (/ 5\d\d /.test(line)) failed!.push(`${what}: ${line}`);
		}
		const well = (await client.get('/api/garments')).status === 200;
		return {
			figures: [
				noneOf(`of ${requests} hostile requests, that brought the server down`, [
					...endOf(server),
					...(well ? [] : ['no answer']),
				]),
				noneOf('answered as a fault of the program', failed!),
				noneOf('answers that give away paths, code or the database', leaked!),
				noneOf('broken or foreign requests that were served', answeredForeign!),
				atLeast('routes tried', routes.length, 60),
			],
		};
	} finally {
		await server.stop();
	}
}
