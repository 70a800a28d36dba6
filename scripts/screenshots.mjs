// Pictures of every page in light, dark and at phone width, over the demo or over photos of one's own:
//   npm run screenshots -- --out FOLDER [--photos FOLDER [--board FOLDER]] [--places garments,sort]
// With --photos, each photo of the folder is a garment, and those of --board (else the demo's) are the season's pictures. The folder for the pictures lies
// outside the repository, so that no picture is committed by mistake.
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { register } from 'tsx/esm/api';

register();
const { findBrowser, launch } = await import('../tests/support/launch-browser.ts');
const { serve } = await import('../src/server/serve.ts');

const root = fileURLToPath(new URL('..', import.meta.url));
const text = { type: 'string' };
const { values: asked } = parseArgs({ options: { out: text, photos: text, board: text, places: text } });
const folder = asked.out && resolve(asked.out);
if (!folder || !relative(root, folder).startsWith('..')) {
	console.error(
		`Expected with --out a folder outside the repository, for the pictures; came "${asked.out ?? ''}". Usage: npm run screenshots -- --out FOLDER`,
	);
	process.exit(2);
}
mkdirSync(folder, { recursive: true });

const LOOKS = [
	{ name: 'light', colorScheme: 'light', viewport: { width: 1280, height: 800 } },
	{ name: 'dark', colorScheme: 'dark', viewport: { width: 1280, height: 800 } },
	{ name: 'phone', colorScheme: 'light', viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true },
];
const PLACES = ['look-back', 'direction', 'sort', 'line-up', 'wish-list', 'shop', 'garments', 'season', 'sheet'];
const places = asked.places?.split(',') ?? PLACES;

const homePath = mkdtempSync(join(tmpdir(), 'dyelot-screenshots-'));
const server = await serve({ homePath, port: 0, share: false, log: () => {} });
const browser = await launch(await findBrowser());
const address = server.address.replace(/\/$/, '');

/** The answer to a request; a refusal ends the run with the program's own words. */
async function send(method, path, body) {
	const isForm = body instanceof FormData;
	const answer = await fetch(`${address}${path}`, {
		method,
		...(isForm
			? { body }
			: body
				? { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) }
				: {}),
	});
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
	return answer.json();
}

/** Sends every photo of a folder, one by one as the page does. */
async function addPhotos(from, purpose, seasonId) {
	for (const name of readdirSync(from).filter((one) => /\.(jpe?g|png|webp|avif|heic)$/i.test(one))) {
		const form = new FormData();
		form.append('purpose', purpose);
		form.append('seasonId', seasonId);
		form.append('photo', new Blob([readFileSync(join(from, name))]), name);
		await send('POST', '/api/photos', form);
	}
	await server.services.jobs.settled();
}

/** A season over the user's own photos; its pictures are theirs, or the demo's. */
async function ownSeason() {
	const dates = { startsOn: '2026-09-01', endsOn: '2026-11-30' };
	const season = await send('POST', '/api/seasons', { name: 'Autumn', ...dates });
	if (asked.board) await addPhotos(resolve(asked.board), 'inspiration', season.id);
	else {
		const board = mkdtempSync(join(tmpdir(), 'dyelot-board-'));
		const demo = join(root, 'demo-images');
		for (const name of readdirSync(demo).filter((one) => /^i\d+.*\.jpg$/.test(one)))
			cpSync(join(demo, name), join(board, name));
		await addPhotos(board, 'inspiration', season.id);
		rmSync(board, { recursive: true });
	}
	await addPhotos(resolve(asked.photos), 'garment', season.id);
	await send('POST', `/api/seasons/${season.id}/palette/derive`, { from: 'inspirations' });
	return season;
}

async function demoSeason() {
	const season = await send('POST', '/api/demo');
	await server.services.jobs.settled();
	return season;
}

async function take(page, name, whole = true) {
	// The page keeps one request open for news, so that "no request" never comes: half a second stands for it.
	await page.getByRole('heading', { level: 1 }).first().waitFor();
	// Photos far below are fetched when they come near: every screenful is passed by once.
	await page.evaluate(async () => {
		const rest = (ms) => new Promise((done) => setTimeout(done, ms));
		for (let at = 0; at < document.body.scrollHeight; at += innerHeight) {
			scrollTo(0, at);
			await rest(100);
		}
		const pictures = [...document.images].filter(({ complete, offsetParent }) => !complete && offsetParent);
		await Promise.race([Promise.all(pictures.map((one) => one.decode().catch(() => {}))), rest(10_000)]);
		scrollTo(0, 0);
		await rest(500);
	});
	await page.screenshot({ path: join(folder, `${name}.png`), fullPage: whole });
	console.log(`${name}.png`);
}

/** One page in every look: as it opens, and whole. */
async function everyLook(pages) {
	for (const { name, ...look } of LOOKS) {
		const context = await browser.newContext({ locale: 'en-GB', ...look });
		const page = await context.newPage();
		for (const [title, at] of pages) {
			await page.goto(at);
			await take(page, `${title}-${name}`);
			await take(page, `${title}-${name}-first`, false);
		}
		await context.close();
	}
}

async function pocketPages(seasonId) {
	const pocket = await (await fetch(`${address}/api/seasons/${seasonId}/pocket`)).text();
	for (const { name, ...look } of LOOKS) {
		const context = await browser.newContext(look);
		const page = await context.newPage();
		await page.setContent(pocket);
		await page.locator('#kind').selectOption('jumper');
		await page.locator('#file').setInputFiles(join(root, 'demo-images', 'c1-river-green-jumper.jpg'));
		await page.getByRole('button', { name: 'the piece', exact: true }).click();
		await page.locator('#photo').click();
		await take(page, `pocket-${name}`);
		await context.close();
	}
}

async function sheets(seasonId) {
	const page = await browser.newPage();
	await page.goto(`${address}/season/${seasonId}/sheet`);
	await page.locator('.paper').waitFor();
	for (const format of ['A4', 'Letter'])
		await page.pdf({ format, printBackground: false, path: join(folder, `sheet-${format}.pdf`) });
}

try {
	if (!asked.places) await everyLook([['start', address]]);
	const season = await (asked.photos ? ownSeason() : demoSeason());
	const at = (place) => `${address}/season/${season.id}/${place}`;
	if (!asked.places) await everyLook([['line-up-before', at('line-up')]]);
	const choice = { mustKeep: [], neverUse: [] };
	const { garmentIds } = await send('POST', `/api/seasons/${season.id}/line-up/build`, { ...choice, prove: false });
	await send('PATCH', `/api/seasons/${season.id}/line-up`, { garmentIds });
	await everyLook(places.map((place) => [place, at(place)]));
	if (!asked.places) {
		await everyLook([
			['seasons', `${address}/seasons`],
			['devices', `${address}/devices`],
		]);
		await pocketPages(season.id);
		await sheets(season.id);
	}
} finally {
	await browser.close();
	await server.close();
	rmSync(homePath, { recursive: true, force: true });
}
