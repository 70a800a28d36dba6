import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import type { FastifyInstance } from 'fastify';
import { createEventHub } from '../../src/app/events.ts';
import type { Services } from '../../src/app/services.ts';
import { buildApp } from '../../src/server/app.ts';
import { ownEntrance } from '../../src/server/entrance.ts';
import { directoryPhotoFiles } from '../../src/store/directory-photo-files.ts';
import { receiveFile } from '../../src/store/incoming-file.ts';
import { migrateToNewest } from '../../src/store/migrations/all.ts';
import { sqlStore } from '../../src/store/sql-store.ts';
import { closeSqlite, openSqlite, type SqliteDatabase } from '../../src/store/sqlite/sqlite-database.ts';
import type { Store } from '../../src/store/store.ts';
import {
	type DecisionRequest,
	decisionRequests,
	type Furnished,
	furnish,
	NO_DECISION,
} from '../support/decision-requests.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { atLeast, type Figures, noneOf } from './figure.ts';
import { watchStatements } from './statement-kills.ts';

const NOW = new Date('2026-03-01T09:00:00.000Z');
const WRITING: ReadonlySet<string> = new Set(['POST', 'PUT', 'PATCH', 'DELETE']);

/** The whole application over a database file that is put back as it was before each request. */
async function openStage() {
	const folder = temporaryFolder();
	const [template, path] = [join(folder, 'template.sqlite'), join(folder, 'now.sqlite')];
	const files = directoryPhotoFiles(folder);
	let database: SqliteDatabase | null = null;
	let store: Store | null = null;
	let ids = 0;
	const open = (at: string) => {
		database = openSqlite(at);
		store = sqlStore(database.db, files, () => NOW);
		ids = 0;
	};
	const close = () => {
		if (!database) return;
		// What a killed program had not committed is gone; a connection that is only closed would go on holding it.
		if (database.connection.isTransaction) database.connection.exec('ROLLBACK');
		closeSqlite(database.connection);
		database = null;
	};
	open(template);
	await migrateToNewest(database!.db);
	const furnished = await furnish(store!);
	close();
	const current = new Proxy({} as Store, { get: (_, name) => store![name as keyof Store] });
	const routes: string[] = [];
	const services = {
		store: current,
		jobs: { enqueue: async () => {}, cancelWaiting: async () => [], settled: async () => {}, close: async () => {} },
		events: createEventHub(),
		sharing: null,
		beside: null,
		backup: null,
		receive: (from) => receiveFile(from, join(folder, 'incoming')),
		findings: [],
		now: () => NOW,
		newId: () => `new-${++ids}`,
		sharedLight: async () => null,
		followLight: async () => {},
	} as Partial<Services> as Services;
	const app = await buildApp(ownEntrance(services), {
		onRoute: ({ method, url }) => {
			for (const one of [method].flat()) if (WRITING.has(one)) routes.push(`${one} ${url}`);
		},
	});
	return {
		app,
		routes,
		furnished,
		/** Puts the home back as it was furnished. */
		putBack() {
			close();
			copyFileSync(template, path);
			open(path);
		},
		/** Ends as a kill does and starts again, on what is on disk. */
		startAgain() {
			close();
			open(path);
		},
		dump: () => dumpOf(database!),
		close: async () => {
			await app.close();
			close();
		},
	};
}

type Stage = Awaited<ReturnType<typeof openStage>>;

/** All that was decided. What the program reads and notes by itself is no part of it. */
type Dump = { readonly rows: string; readonly wardrobe: string };

function dumpOf({ connection }: SqliteDatabase): Dump {
	const all = (sql: string) => connection.prepare(sql).all();
	const wardrobe = [
		all('select kind, id, body, binned_at from things order by kind, id').map(sameWhateverTheOrder),
		// A photo that came in stays when what showed it is taken back; nothing was decided about it.
		all("select id, correction, mask from photos where correction <> '{}' or mask is not null order by id"),
	];
	const rows = [
		wardrobe,
		all('select kind, id, version from things order by kind, id'),
		all('select * from decisions order by id'),
		all('select key, request, answer from answers order by key'),
		all('select * from shown_photos order by photo_id, kind, thing_id'),
		all('select id from photos order by id'),
	];
	return { rows: JSON.stringify(rows), wardrobe: JSON.stringify(wardrobe) };
}

/** A row whose JSON has its fields in order. */
const sameWhateverTheOrder = (row: unknown): unknown =>
	Object.fromEntries(
		Object.entries(row as Record<string, unknown>).map(([name, value]) => [
			name,
			name === 'body'
				? Object.entries(JSON.parse(String(value)) as object).sort(([a], [b]) => (a < b ? -1 : 1))
				: value,
		]),
	);

async function send(app: FastifyInstance, method: string, { url, body, headers }: DecisionRequest, key: string) {
	const payload = body === undefined ? {} : { payload: body as object };
	const answer = await app.inject({
		method: method as 'POST',
		url,
		headers: { host: 'localhost:4810', 'idempotency-key': key, ...headers },
		...payload,
	});
	return { status: answer.statusCode, text: answer.payload };
}

const post = (app: FastifyInstance, url: string) => send(app, 'POST', { url }, `setting-up-${url}`);

/** At most `most` places among `count`, the first and the last among them. */
const spread = (count: number, most: number): number[] =>
	count <= most
		? Array.from({ length: count }, (_, index) => index + 1)
		: Array.from({ length: most }, (_, index) => 1 + Math.round((index * (count - 1)) / (most - 1)));

/** What went wrong with one route, a sentence each. */
type Found = {
	readonly half: string[];
	readonly unfinished: string[];
	readonly twice: string[];
	readonly notUndone: string[];
};

async function tryRoute(
	stage: Stage,
	kills: ReturnType<typeof watchStatements>,
	route: string,
	request: DecisionRequest,
	mostKills: number,
	found: Found,
): Promise<number> {
	const method = route.split(' ')[0]!;
	const prepare = async () => {
		stage.putBack();
		for (const url of request.before ?? []) await post(stage.app, url);
	};
	await prepare();
	const before = stage.dump();
	stage.startAgain();
	kills.arm(0);
	const answer = await send(stage.app, method, request, 'one-and-the-same');
	const statements = kills.count();
	if (answer.status >= 300) throw new Error(`${route} was answered ${answer.status}: ${answer.text.slice(0, 300)}`);
	const after = stage.dump();
	if (after.rows === before.rows) throw new Error(`${route} decided nothing`);
	await send(stage.app, method, request, 'one-and-the-same');
	if (stage.dump().rows !== after.rows) found.twice.push(route);
	if (!request.moves) {
		await post(stage.app, '/api/undo');
		if (stage.dump().wardrobe !== before.wardrobe) found.notUndone.push(route);
	}
	let killed = 0;
	for (const at of spread(statements, mostKills)) {
		await prepare();
		stage.startAgain();
		kills.arm(at);
		await send(stage.app, method, request, 'one-and-the-same');
		if (kills.isDead()) killed++;
		kills.arm(0);
		stage.startAgain();
		const { rows } = stage.dump();
		if (rows !== before.rows && rows !== after.rows) found.half.push(`${route} at statement ${at} of ${statements}`);
		await send(stage.app, method, request, 'one-and-the-same');
		if (stage.dump().rows !== after.rows) found.unfinished.push(`${route} after statement ${at} of ${statements}`);
	}
	return killed;
}

/** Ids that are worked out, asked of the home itself. */
async function seenIn(stage: Stage) {
	stage.putBack();
	const get = async (url: string) =>
		JSON.parse((await stage.app.inject({ url, headers: { host: 'localhost:4810' } })).payload);
	const report = await get('/api/seasons/s1/report');
	const { palette } = await get('/api/seasons/s1/palette');
	return { gapId: report.gaps[0]?.id as string, colourId: palette.colours[0].id as string };
}

const requestsOn = async (stage: Stage): Promise<Readonly<Record<string, DecisionRequest>>> =>
	decisionRequests(stage.furnished satisfies Furnished, await seenIn(stage));

/**
 * Every route of the running application that decides is killed before its statements, all of them or `mostKills` spread over them: the home then holds all of the decision or
 * nothing, and the same request sent again finishes it once. Sent twice it is done once, and one undo takes all of it back.
 */
export async function halfDecisions(mostKills: number): Promise<Figures> {
	const kills = watchStatements();
	const stage = await openStage();
	try {
		const requests = await requestsOn(stage);
		const untold = stage.routes.filter((route) => !requests[route] && !NO_DECISION[route]);
		const found: Found = { half: [], unfinished: [], twice: [], notUndone: [] };
		let killed = 0;
		let tried = 0;
		for (const [route, request] of Object.entries(requests)) {
			if (!stage.routes.includes(route)) throw new Error(`${route} is no route of the application`);
			killed += await tryRoute(stage, kills, route, request, mostKills, found);
			tried++;
		}
		return {
			figures: [
				noneOf('routes that write and that this does not try', untold),
				noneOf(`of ${killed} kills between statements in ${tried} routes, decisions half done`, found.half),
				noneOf('of these, not finished once by the same request sent again', found.unfinished),
				noneOf('decisions made twice by a request sent twice', found.twice),
				noneOf('decisions that one undo does not take back whole', found.notUndone),
				atLeast('kills a route', Math.floor(killed / tried), Math.min(3, mostKills - 1)),
			],
		};
	} finally {
		kills.remove();
		await stage.close();
	}
}
