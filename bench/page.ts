import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Browser, Page } from 'playwright-core';
import sharp from 'sharp';
import { medianOf } from '../src/colour/median.ts';
import { type RunningServer, serve } from '../src/server/serve.ts';
import { defaultSeason } from '../src/wardrobe/days/season-defaults.ts';
import { STATIONS } from '../src/wardrobe/season/stations.ts';
import { addedPhoto, decided, putGarments } from '../tests/support/decided.ts';
import { findBrowser, launch } from '../tests/support/launch-browser.ts';
import { generatedBoard, generatedWardrobe } from './generated-wardrobe.ts';
import { demoPhotos } from './sample-photos.ts';
import type { Row, Table } from './table.ts';

const PHOTOS = 40;
/** Times that each station is opened. */
const TIMES = 5;
const PLACES = [...STATIONS, 'garments'] as const;

/** A home with so many garments, each with one of forty photos that were read; the id of its season comes back. */
async function fill({ services: { store } }: RunningServer, garments: number): Promise<string> {
	const at = '2026-01-01T00:00:00Z';
	const season = defaultSeason({ id: 's', name: 'spring', startsOn: '2026-03-01', endsOn: '2026-05-31', addedAt: at });
	await decided(store, { seasons: { put: [season] } }, 'bench');
	const paths = demoPhotos();
	const photoIds: string[] = [];
	for (const [index, reading] of generatedBoard(PHOTOS, 'bench page').entries()) {
		const picture = sharp(readFileSync(paths[index % paths.length]!)).resize(320 - index);
		const thumb = await picture.webp().toBuffer();
		const about = { originalName: `${index}.webp`, mediaType: 'image/webp', addedAt: at };
		const { id } = await addedPhoto(store, thumb, about);
		await store.photos.saveReading(id, reading, { thumb, display: thumb });
		photoIds.push(id);
	}
	for (const [index, garment] of generatedWardrobe(garments, 'bench page').entries()) {
		const { swatches: _colours, pattern: _pattern, trust: _trust, ...details } = garment;
		await putGarments(store, { ...details, photoIds: [photoIds[index % PHOTOS]!] }, 'bench');
	}
	return season.id;
}

type TraceEvent = {
	readonly name: string;
	readonly pid: number;
	readonly tid: number;
	readonly dur?: number;
	readonly args?: { readonly name?: string };
};

/** Longest time, in ms, for which the page's main thread was busy without a break while `work` ran: no frame can be drawn meanwhile. */
async function longestTaskMs(browser: Browser, page: Page, work: () => Promise<void>): Promise<number> {
	await browser.startTracing(page, { categories: ['toplevel', 'disabled-by-default-devtools.timeline'] });
	await work();
	const trace = JSON.parse((await browser.stopTracing()).toString()) as { traceEvents: readonly TraceEvent[] };
	const mains = new Set(
		trace.traceEvents
			.filter(({ name, args }) => name === 'thread_name' && args?.name === 'CrRendererMain')
			.map(({ pid, tid }) => `${pid} ${tid}`),
	);
	const tasks = trace.traceEvents.filter(
		({ name, pid, tid }) => name.endsWith('RunTask') && mains.has(`${pid} ${tid}`),
	);
	if (tasks.length === 0) throw new Error('expected tasks of the page in the trace, found none');
	return tasks.reduce((most, { dur = 0 }) => Math.max(most, dur), 0) / 1000;
}

type FirstView = { kilobytes: number; files: number; usableMs: number; wholeMs: number };

/** What a station shows as soon as it can be used: the garments' rows, or its own content below the title. */
const usablePart = (station: (typeof PLACES)[number]): string =>
	station === 'garments' ? 'article.garment-row' : '.page-body > :not(.title):not(.loading)';

/**
 * A script for the page: notes, frame by frame and by the page's own clock, when the part can be seen and when the report is in. Asking from outside would
 * round up to the half second that the driver waits between two looks.
 */
const watchFirstView = (usable: string): string => `
	requestAnimationFrame(function look() {
		const noted = document.documentElement.dataset;
		if (!noted.usableMs && document.querySelector(${JSON.stringify(usable)})) noted.usableMs = performance.now();
		if (!noted.wholeMs && document.querySelector('.foot')) noted.wholeMs = performance.now();
		if (!noted.usableMs || !noted.wholeMs) requestAnimationFrame(look);
	});`;

/** A station as the first page opened: gzipped size of the code and styles it fetches, and from asking for the address until it can be used, and until all is there. */
async function firstView(browser: Browser, address: string, station: (typeof PLACES)[number]): Promise<FirstView> {
	const context = await browser.newContext({ viewport: { width: 1280, height: 900 } });
	const page = await context.newPage();
	const files: Promise<Buffer>[] = [];
	page.on('response', (response) => {
		if (/\/assets\/.*\.(js|css)$/.test(response.url())) files.push(response.body());
	});
	await page.addInitScript(watchFirstView(usablePart(station)));
	await page.goto(address + station, { waitUntil: 'commit' });
	const times = await page.waitForFunction(() => {
		const { usableMs, wholeMs } = document.documentElement.dataset;
		return usableMs && wholeMs ? { usableMs: Number(usableMs), wholeMs: Number(wholeMs) } : null;
	});
	const { usableMs, wholeMs } = (await times.jsonValue())!;
	const bytes = (await Promise.all(files)).reduce((sum, body) => sum + gzipSync(body).length, 0);
	await context.close();
	return { kilobytes: bytes / 1024, files: files.length, usableMs, wholeMs };
}

/** The station opened five times, each in a browser context that has kept nothing. */
async function firstViewRow(browser: Browser, address: string, station: (typeof PLACES)[number]): Promise<Row> {
	const views: FirstView[] = [];
	for (let time = 0; time < TIMES; time++) views.push(await firstView(browser, address, station));
	const { kilobytes, files } = views[0]!;
	return [
		station,
		kilobytes,
		files,
		medianOf(views.map(({ usableMs }) => usableMs)),
		medianOf(views.map(({ wholeMs }) => wholeMs)),
	];
}

async function withGarments<T>(count: number, look: (address: string) => Promise<T>): Promise<T> {
	const home = mkdtempSync(join(tmpdir(), 'dyelot-bench-'));
	const server = await serve({ homePath: home, port: 0, share: false, log: () => {} });
	try {
		const seasonId = await fill(server, count);
		return await look(`${server.address}season/${seasonId}/`);
	} finally {
		await server.close();
		rmSync(home, { recursive: true, force: true });
	}
}

/** Longest tasks while looking through the list of garments, by wheel and by search. */
async function listRow(browser: Browser, address: string, count: number): Promise<Row> {
	const page = await (await browser.newContext({ viewport: { width: 1280, height: 900 } })).newPage();
	await page.goto(`${address}garments`);
	await page.getByText('garment 1', { exact: false }).first().waitFor();
	const scrolling = await longestTaskMs(browser, page, async () => {
		for (let step = 0; step < 30; step++) {
			await page.mouse.wheel(0, 600);
			await page.waitForTimeout(30);
		}
	});
	const searching = await longestTaskMs(browser, page, async () => {
		await page.getByLabel('Search').pressSequentially('garment 19', { delay: 60 });
		await page.waitForTimeout(500);
	});
	await page.context().close();
	return [`${count} garments`, scrolling, searching];
}

/** The page in a real browser: how much code a station takes, how soon it is there, and how it behaves with many garments. */
export async function run(): Promise<readonly Table[]> {
	const place = await findBrowser();
	if (!place.ok) return [{ title: 'Page', columns: ['', 'result'], rows: [['no browser', place.message]] }];
	const browser = await launch(place);
	try {
		const stations = await withGarments(200, async (address) => {
			const rows: Row[] = [];
			for (const station of PLACES) rows.push(await firstViewRow(browser, address, station));
			return rows;
		});
		const garmentsRow = stations.at(-1)!;
		const [many, view] = await withGarments(2000, async (address) => [
			await listRow(browser, address, 2000),
			await firstViewRow(browser, address, 'garments'),
		]);
		return [
			{
				title: 'Page: each station opened first, with 200 garments',
				columns: ['station', 'code KB (gzip)', 'files', 'first view ms', 'all there ms'],
				rows: stations,
				notes: [
					'From asking for the address; median of five, nothing kept from before. First view: the garments, or the content below the title. All there: the report of the season too.',
				],
			},
			{
				title: 'Page: the list of garments (longest task of the page, ms: a frame has 16.7)',
				columns: ['', 'scrolling', 'searching'],
				rows: [many!],
			},
			{
				title: 'Page: Garments opened first, with 2,000',
				columns: ['station', 'code KB (gzip)', 'files', 'first view ms', 'all there ms'],
				rows: [view!],
				ratios: { 'first view of 2,000 garments / of 200': Number(view![3]) / Number(garmentsRow[3]) },
			},
		];
	} finally {
		await browser.close();
	}
}
