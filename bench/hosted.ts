import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import pg from 'pg';
import { openHost } from '../src/app/hosting/host.ts';
import { beginSession } from '../src/app/hosting/sessions.ts';
import { hostedApp } from '../src/server/hosted/serve-hosted.ts';
import { directoryPhotoFiles } from '../src/store/directory-photo-files.ts';
import { addPerson } from '../src/store/postgres/accounts/people.ts';
import { UNASKED } from '../src/store/store.ts';
import { defaultSeason } from '../src/wardrobe/days/season-defaults.ts';
import { newGarment } from '../src/wardrobe/words/new-garment.ts';
import { seededRandom } from '../src/wardrobe/words/seeded-random.ts';
import { freePort } from '../tests/support/free-port.ts';
import { startPostgres } from '../tests/support/postgres.ts';
import { generatedBoard } from './generated-wardrobe.ts';
import type { Table } from './table.ts';

const HOMES = 1000;
const GARMENTS = 40;
const LISTS = 4000;
const AT = '2026-03-01T08:00:00.000Z';
/** Stands in what the template holds, and is each home's own id in its copy: an answer that shows another is seen. */
const MARK = 'whose-home-it-is';

const nth = <T>(sorted: readonly T[], share: number): T =>
	sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))]!;

type Host = Awaited<ReturnType<typeof openHost>>;

/** One home with a season and garments, each with a read photo. */
async function makeTemplate(host: Host): Promise<string> {
	await host.accounts.insertInto('home').values({ id: 'template', name: 'T', created_at: AT }).execute();
	const { store } = await host.homeServices('template');
	const readings = generatedBoard(GARMENTS, 'hosted bench');
	const season = defaultSeason({
		id: 'season',
		name: 'Spring',
		yearPart: 'spring',
		startsOn: '2026-03-01',
		endsOn: '2026-05-31',
		addedAt: AT,
	});
	const garments = readings.map((_, index) =>
		newGarment(`garment-${index}`, `${MARK} ${index}`, AT, {
			photoIds: [String(index).padStart(64, '0')],
			nameFrom: 'user',
			kind: 'shirt',
			kindFrom: 'user',
		}),
	);
	await store.decide(UNASKED, async () => ({
		does: {
			seasons: { put: [season] },
			garments: { put: garments },
			photos: readings.map((_, index) => ({
				id: String(index).padStart(64, '0'),
				originalName: 'a',
				mediaType: 'image/png',
				sizeBytes: 1,
				addedAt: AT,
			})),
		},
		sentence: 'made',
		answer: async () => null,
	}));
	for (const [index, reading] of readings.entries())
		await store.photos.saveReading(String(index).padStart(64, '0'), reading, {});
	return season.id;
}

/** Copies the template into all homes, which one person may plan with. */
async function copyTemplate(client: pg.Client, person: string): Promise<void> {
	const homes = `generate_series(1, ${HOMES}) n`;
	await client.query(`insert into dyelot.home select 'home-' || n, 'H', '${AT}' from ${homes}`);
	await client.query(
		`insert into dyelot.membership (home, person, role, since) select 'home-' || n, $1, 'plan', '${AT}' from ${homes}`,
		[person],
	);
	await client.query(`insert into dyelot.entries (home, kind, id, body, version, field_versions)
		select 'home-' || n, kind, id, replace(body, '${MARK}', 'home-' || n || '.'), version, field_versions
		from dyelot.entries, ${homes} where home = 'template'`);
	await client.query(`insert into dyelot.photos (home, id, original_name, media_type, size_bytes, added_at, status, correction, version, reading)
		select 'home-' || n, id, original_name, media_type, size_bytes, added_at, status, correction, version, reading
		from dyelot.photos, ${homes} where home = 'template'`);
	await client.query('analyze');
}

/** Clients side by side, each asking one thing after another until there is none left. */
async function askAll(
	clients: number,
	count: number,
	ask: (index: number) => Promise<void>,
): Promise<{ ms: number[]; wholeMs: number }> {
	const ms: number[] = [];
	let next = 0;
	const begun = performance.now();
	await Promise.all(
		Array.from({ length: clients }, async () => {
			for (let index = next++; index < count; index = next++) {
				const from = performance.now();
				await ask(index);
				ms.push(performance.now() - from);
			}
		}),
	);
	return { ms: ms.sort((a, b) => a - b), wholeMs: performance.now() - begun };
}

/** How often connections are told another home while some work is done. */
async function timesTold(work: () => Promise<void>): Promise<number> {
	const { query } = pg.Client.prototype;
	let told = 0;
	pg.Client.prototype.query = function (this: pg.Client, ...words: unknown[]) {
		if (typeof words[0] === 'string' && words[0].startsWith('SET ')) told++;
		return Reflect.apply(query, this, words);
	} as typeof query;
	try {
		await work();
	} finally {
		pg.Client.prototype.query = query;
	}
	return told;
}

/** What keeping homes apart in the database costs a read: with policies, and without them but with a condition; in turns. */
async function costOfPolicies(host: Host, client: pg.Client): Promise<[number, number]> {
	const bound: number[] = [];
	const free: number[] = [];
	const random = seededRandom('policies');
	for (let round = 0; round < 1500; round++) {
		const home = `home-${1 + Math.floor(random() * 20)}`;
		const table = host.database.homeTables(home);
		const from = performance.now();
		await table.selectFrom('entries').select(['body', 'version']).where('kind', '=', 'garment').orderBy('id').execute();
		const between = performance.now();
		await client.query("select body, version from dyelot.entries where home = $1 and kind = 'garment' order by id", [
			home,
		]);
		bound.push(between - from);
		free.push(performance.now() - between);
	}
	return [
		nth(
			bound.sort((a, b) => a - b),
			0.5,
		),
		nth(
			free.sort((a, b) => a - b),
			0.5,
		),
	];
}

export async function run(): Promise<readonly Table[]> {
	const postgres = await startPostgres();
	if (!postgres.ok) return [{ title: 'host', columns: ['left out'], rows: [[postgres.reason]] }];
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const port = await freePort();
	const origin = new URL(`http://localhost:${port}`);
	const { connectionString } = postgres;
	const host = await openHost({
		connectionString,
		filesOf: (home) => directoryPhotoFiles(join(folder, home)),
		workFolder: join(folder, 'work'),
		threads: 1,
		queuesWaiting: false,
		report: (error) => console.error(error),
	});
	const client = new pg.Client({ connectionString });
	await client.connect();
	const { app } = await hostedApp(host, { origin, proxies: [], photosReady: async () => {} }, { silent: true });
	try {
		await addPerson(host.accounts, { id: 'p', name: 'P', isHost: true, createdAt: AT, password: null });
		const season = await makeTemplate(host);
		await copyTemplate(client, 'p');
		await app.listen({ port, host: '127.0.0.1' });
		const { token } = await beginSession(host, 'p', undefined);
		const headers = { cookie: `dyelot-session=${token}` };
		let foreign = 0;
		const get = async (home: string, path: string) => {
			const response = await fetch(`${origin.origin}/homes/${home}/api/${path}`, { headers });
			const text = await response.text();
			if (response.status !== 200) throw new Error(`${path} was answered ${response.status}: ${text}`);
			for (const [whose] of text.matchAll(/home-\d+(?=\.)/g)) if (whose !== home) foreign++;
		};
		const first = await askAll(50, HOMES, async (index) => {
			const home = `home-${index + 1}`;
			await Promise.all([get(home, 'seasons'), get(home, 'garments'), get(home, `seasons/${season}/report`)]);
		});
		await pause(500);
		const lists: number[] = [];
		let listsMs = 0;
		const told = await timesTold(async () => {
			const busy = await askAll(200, LISTS, (index) => get(`home-${1 + (index % HOMES)}`, 'garments'));
			lists.push(...busy.ms);
			listsMs = busy.wholeMs;
		});
		const [bound, free] = await costOfPolicies(host, client);
		return [
			{
				title: `a host of ${HOMES} homes of ${GARMENTS} garments, one server, clients in the same process`,
				columns: ['', 'median', '95th percentile', 'a second'],
				rows: [
					[
						'first view of a home (3 requests), 50 clients, ms',
						nth(first.ms, 0.5),
						nth(first.ms, 0.95),
						(HOMES * 1000) / first.wholeMs,
					],
					['list of garments, 200 clients, ms', nth(lists, 0.5), nth(lists, 0.95), (LISTS * 1000) / listsMs],
				],
				notes: [`Entries of another home in any answer: ${foreign}.`],
			},
			{
				title: 'homes kept apart by the database: a list of 40 garments, ms',
				columns: [
					'with policies',
					'with a condition alone',
					'ratio',
					'times asked for a list',
					"share of a list's answer %",
				],
				rows: [
					[
						bound.toFixed(3),
						free,
						bound / free,
						told / LISTS,
						(100 * (told / LISTS) * (bound - free)) / (listsMs / LISTS),
					],
				],
				notes: [
					'What they cost is the question by which a connection is told another home; the share is of all that the server, its clients and the database do for one list.',
				],
			},
		];
	} finally {
		await app.close();
		await client.end();
		await host.close();
		postgres.stop();
		rmSync(folder, { recursive: true, force: true });
	}
}
