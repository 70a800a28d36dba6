import { join } from 'node:path';
import { endOf, startServer } from '../../bench/server-process.ts';
import { formsOf } from '../support/address-forms.ts';
import { strangerTo } from '../support/stranger.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figure, type Figures, noneOf } from './figure.ts';
import { stallWatch } from './stall-watch.ts';

const MOST_STALL_MS = 50;
/** Far more than a device needs. */
const LINES = 300;
const MEGABYTE = 1024 * 1024;
const JSON_TYPE = { 'content-type': 'application/json' };

/** Bodies that cost a server much for little: many faults, deep nesting, sheer size. */
const HEAVY: readonly string[] = [
	JSON.stringify({ code: 'x'.repeat(8 * MEGABYTE) }),
	`{"code":${'['.repeat(2 * MEGABYTE)}${']'.repeat(2 * MEGABYTE)}}`,
	`{${Array.from({ length: 400_000 }, (_, n) => `"k${n}":1`).join(',')}}`,
	JSON.stringify({ code: '1'.repeat(900) }),
];

type Route = readonly [method: string, path: string];

async function routesOf(address: string): Promise<Route[]> {
	const answer = await fetch(new URL('/api/openapi.json', address));
	const { paths } = (await answer.json()) as { paths: Record<string, Record<string, unknown>> };
	const told = Object.entries(paths).flatMap(([path, ways]) =>
		Object.keys(ways).map((method): Route => [method.toUpperCase(), path.replace(/\{[^}]+\}/g, 'x')]),
	);
	return [...told, ['GET', '/api/events'], ['GET', '/api/openapi.json']].filter(
		([method, path]) => !(method === 'POST' && path === '/api/pair') && path.startsWith('/api/'),
	) as Route[];
}

/**
 * A device of the network that was not paired: every route in every spelling of its address, then bodies that would cost much, each so many `rounds`.
 * How long the server stalls is judged only where `isJudged`: a machine that is busy with other things stalls by itself.
 */
export async function strangers(rounds: number, isJudged: boolean): Promise<Figures> {
	const watch = stallWatch();
	const server = await startServer(join(temporaryFolder(), 'home'), { ...watch.start, words: ['--share'] });
	const stranger = strangerTo(Number(new URL(server.address).port));
	const letIn: string[] = [];
	const wrong: string[] = [];
	let tried = 0;
	try {
		const routes = await routesOf(server.address);
		for (const [method, path] of routes)
			for (const form of formsOf(path, stranger.host)) {
				const status = await stranger.statusOf(method, form);
				tried++;
				if (status !== 401 && status !== 404) letIn.push(`${method} ${form}: ${status}`);
			}
		const kept = await stranger.linesKept(LINES);
		await watch.longestStallMs(server.process.pid!);
		const middles: number[] = [];
		for (const path of ['/api/pair', '/api/garments', '/nothing'])
			for (const body of HEAVY) {
				const stallsMs: number[] = [];
				for (let n = 0; n < rounds; n++) {
					const status = await stranger.statusOf('POST', path, JSON_TYPE, body);
					if (![0, 400, 401, 403, 404, 413, 429].includes(status)) wrong.push(`POST ${path}: ${status}`);
					stallsMs.push(await watch.longestStallMs(server.process.pid!));
				}
				// What a post causes is there each time; what else the machine is busy with, only sometimes.
				middles.push(stallsMs.sort((one, other) => one - other)[Math.floor(rounds / 2)]!);
			}
		const stallMs = Math.max(...middles);
		const stall: Figure = {
			what: `stall by the worst of ${middles.length} hostile posts of a device that was not paired, middle of ${rounds} times each`,
			found: `${Math.round(stallMs)} ms`,
			asked: `under ${MOST_STALL_MS} ms`,
			met: stallMs < MOST_STALL_MS,
		};
		return {
			figures: [
				noneOf(`of ${tried} spellings of ${routes.length} routes, let in without a code`, letIn),
				atLeast('spellings tried', tried, 5_000),
				{
					what: `of ${LINES} lines opened at once by one device, kept`,
					found: String(kept),
					asked: 'some, and at most 64',
					met: kept > 0 && kept <= 64,
				},
				noneOf('hostile posts not refused', wrong),
				noneOf('that brought the server down', endOf(server)),
				...(isJudged ? [stall] : []),
			],
		};
	} finally {
		stranger.close();
		await server.stop();
	}
}
