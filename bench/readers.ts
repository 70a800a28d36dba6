import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import sharp from 'sharp';
import { PASSWORD, tokenOf } from '../tests/support/hosted-app.ts';
import { startPostgres } from '../tests/support/postgres.ts';
import { type Program, saying } from '../tests/support/program.ts';
import { type HostEnvironment, startHost, startReader } from './hosted-process.ts';
import { type HomeAddress, photosWaiting, sendPhoto } from './photos-by-http.ts';
import { demoPhotos } from './sample-photos.ts';
import { cpuSeconds, startServer } from './server-process.ts';
import type { Row, Table } from './table.ts';

const PHOTOS = 60;
const READERS = [1, 2, 4] as const;

/** Photos of about 8 megapixels, each with bytes of its own. */
const phonePhotos = (): Promise<Buffer[]> => {
	const paths = demoPhotos();
	return Promise.all(
		Array.from({ length: PHOTOS }, (_, index) =>
			sharp(readFileSync(paths[index % paths.length]!))
				.resize(2400 + index)
				.jpeg({ quality: 85 })
				.toBuffer(),
		),
	);
};

async function send(home: HomeAddress, photos: readonly Buffer[]): Promise<void> {
	for (const bytes of photos) await sendPhoto(home, bytes);
}

async function untilRead(home: HomeAddress): Promise<void> {
	while ((await photosWaiting(home)) > 0) await pause(100);
}

/** The first person of a new host, and the home that begins with them. */
async function joinFirst(origin: string, link: string): Promise<HomeAddress> {
	const joined = await fetch(`${origin}/api/host/join`, {
		method: 'POST',
		headers: { 'content-type': 'application/json' },
		body: JSON.stringify({ token: tokenOf(link), name: 'Bench', password: PASSWORD }),
	});
	const headers = { cookie: joined.headers.getSetCookie()[0]!.split(';')[0]! };
	const [home] = (await (await fetch(`${origin}/api/host/homes`, { headers })).json()) as { id: string }[];
	return { api: `${origin}/homes/${home!.id}/api/`, headers };
}

type Measured = {
	readonly photosASecond: number;
	readonly cpuMsAPhoto: number;
	/** Cores kept at work by server and readers, without the database. */
	readonly cores: number;
};

const isRead = saying(/^photo-read$/);

/**
 * All photos wait before the first reader starts, and what is measured begins once each reader has read one: how they start is no part of it. CPU:
 * server and readers, without the database.
 */
async function withReaders(
	environment: HostEnvironment,
	readers: number,
	photos: readonly Buffer[],
): Promise<Measured> {
	const host = await startHost(environment);
	const started: Program[] = [host.program];
	try {
		const { link } = await host.program.line((line) => typeof line.link === 'string');
		const home = await joinFirst(host.origin, String(link));
		const warm = await startReader(environment);
		await send(home, photos.slice(0, 1));
		await untilRead(home);
		await warm.stop();
		await send(home, photos.slice(1));
		const reading = await Promise.all(Array.from({ length: readers }, () => startReader(environment)));
		started.push(...reading);
		await Promise.all(reading.map((reader) => reader.line(isRead)));
		const look = () => ({
			at: performance.now() / 1000,
			cpu: started.reduce((sum, { child }) => sum + cpuSeconds(child.pid!), 0),
			count: reading.reduce((sum, reader) => sum + reader.lines().filter(isRead).length, 0),
		});
		const before = look();
		await untilRead(home);
		const after = look();
		const [seconds, cpu, count] = [after.at - before.at, after.cpu - before.cpu, after.count - before.count];
		return { photosASecond: count / seconds, cpuMsAPhoto: (1000 * cpu) / count, cores: cpu / seconds };
	} finally {
		for (const program of started.toReversed()) await program.stop();
	}
}

/** The same photos through the form for one home. */
async function inOneHome(folder: string, photos: readonly Buffer[]): Promise<Measured> {
	const server = await startServer(folder);
	try {
		const pid = server.process.pid!;
		const home = { api: `${server.address}api/`, headers: {} };
		await send(home, photos.slice(0, 1));
		await untilRead(home);
		const before = cpuSeconds(pid);
		const begun = performance.now();
		await send(home, photos.slice(1));
		await untilRead(home);
		const seconds = (performance.now() - begun) / 1000;
		const count = photos.length - 1;
		const cpu = cpuSeconds(pid) - before;
		return { photosASecond: count / seconds, cpuMsAPhoto: (1000 * cpu) / count, cores: cpu / seconds };
	} finally {
		await server.stop();
	}
}

/** Readers of a host: how much more two and four read, and what a photo costs against the form for one home. */
export async function run(): Promise<readonly Table[]> {
	const postgres = await startPostgres();
	if (!postgres.ok) return [{ title: 'readers', columns: ['left out'], rows: [[postgres.reason]] }];
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	try {
		const photos = await phonePhotos();
		const single = await inOneHome(join(folder, 'single'), photos);
		const rows: Row[] = [];
		const measured: Measured[] = [];
		for (const readers of READERS) {
			const environment = {
				DYELOT_DATABASE: await postgres.newDatabase(),
				DYELOT_PHOTOS: join(folder, `photos-${readers}`),
				DYELOT_WORK_FOLDER: join(folder, 'work'),
			};
			const one = await withReaders(environment, readers, photos);
			measured.push(one);
			rows.push([
				`${readers} ${readers === 1 ? 'reader' : 'readers'}`,
				one.photosASecond,
				one.photosASecond / measured[0]!.photosASecond,
				one.cores,
				one.cpuMsAPhoto,
				one.cpuMsAPhoto / single.cpuMsAPhoto,
			]);
		}
		return [
			{
				title: `Readers of a host: ${PHOTOS - 1} photos of about 8 megapixels that wait`,
				columns: ['', 'photos/s', 'times one reader', 'cores', 'CPU ms a photo', 'times one home'],
				rows: [['one home, its own reader', single.photosASecond, '', single.cores, single.cpuMsAPhoto, 1], ...rows],
				notes: [
					`Each reader takes one photo at a time, and the database is in neither cores nor CPU. This machine has ${availableParallelism()} cores: where nothing else runs, two readers can read at most ${availableParallelism()} divided by the cores of one reader times what one does.`,
				],
				ratios: {
					'a photo of a host / of one home, CPU': measured[0]!.cpuMsAPhoto / single.cpuMsAPhoto,
					'time of two readers / of one': measured[0]!.photosASecond / measured[1]!.photosASecond,
				},
			},
		];
	} finally {
		postgres.stop();
		rmSync(folder, { recursive: true, force: true });
	}
}
