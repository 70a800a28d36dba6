// Pictures of every page over the demo, in light, dark and at phone width: `node scripts/screenshots.mjs FOLDER`.
// The folder lies outside the repository, so that no picture is committed by mistake.
import { mkdirSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, relative, resolve } from 'node:path';
import { fileURLToPath } from 'node:url';
import { register } from 'tsx/esm/api';

register();
const { findBrowser, launch } = await import('../tests/support/launch-browser.ts');
const { serve } = await import('../src/server/serve.ts');

const root = fileURLToPath(new URL('..', import.meta.url));
const folder = process.argv[2] && resolve(process.argv[2]);
if (!folder || !relative(root, folder).startsWith('..')) {
	console.error(
		`Expected a folder outside the repository for the pictures; came "${process.argv[2] ?? ''}". Usage: node scripts/screenshots.mjs FOLDER`,
	);
	process.exit(2);
}
mkdirSync(folder, { recursive: true });

const LOOKS = [
	{ name: 'light', colorScheme: 'light', viewport: { width: 1280, height: 900 } },
	{ name: 'dark', colorScheme: 'dark', viewport: { width: 1280, height: 900 } },
	{ name: 'phone', colorScheme: 'light', viewport: { width: 360, height: 780 }, hasTouch: true, isMobile: true },
];
const PLACES = ['look-back', 'direction', 'sort', 'line-up', 'wish-list', 'shop', 'garments', 'season', 'sheet'];

const homePath = mkdtempSync(join(tmpdir(), 'dyelot-screenshots-'));
const server = await serve({ homePath, port: 0, share: false, log: () => {} });
const browser = await launch(await findBrowser());
const address = server.address.replace(/\/$/, '');

/** The answer to a request; a refusal ends the run with the program's own words. */
async function send(method, path, body) {
	const answer = await fetch(`${address}${path}`, {
		method,
		...(body ? { headers: { 'content-type': 'application/json' }, body: JSON.stringify(body) } : {}),
	});
	if (!answer.ok) throw new Error(`${method} ${path}: ${answer.status} ${await answer.text()}`);
	return answer.json();
}

async function take(page, name) {
	// The page keeps one request open for news, so that "no request" never comes: half a second stands for it.
	await page.getByRole('heading', { level: 1 }).first().waitFor();
	await page.evaluate(async () => {
		scrollTo(0, document.body.scrollHeight);
		await new Promise((done) => setTimeout(done, 500));
		scrollTo(0, 0);
		await new Promise((done) => setTimeout(done, 500));
	});
	await page.screenshot({ path: join(folder, `${name}.png`), fullPage: true });
	console.log(`${name}.png`);
}

/** One page in every look. */
async function everyLook(pages) {
	for (const { name, ...look } of LOOKS) {
		const context = await browser.newContext({ locale: 'en-GB', ...look });
		const page = await context.newPage();
		for (const [title, at] of pages) {
			await page.goto(at);
			await take(page, `${title}-${name}`);
		}
		await context.close();
	}
}

try {
	await everyLook([['start', address]]);
	const season = await send('POST', '/api/demo');
	await server.services.jobs.settled();
	const choice = { mustKeep: [], neverUse: [] };
	const { garmentIds } = await send('POST', `/api/seasons/${season.id}/line-up/build`, { ...choice, prove: false });
	await send('PATCH', `/api/seasons/${season.id}/line-up`, { garmentIds });
	await everyLook(PLACES.map((place) => [place, `${address}/season/${season.id}/${place}`]));
	await everyLook([['seasons', `${address}/seasons`]]);

	const pocket = await (await fetch(`${address}/api/seasons/${season.id}/pocket`)).text();
	for (const { name, ...look } of LOOKS) {
		const context = await browser.newContext(look);
		const page = await context.newPage();
		await page.setContent(pocket);
		await page.locator('#file').setInputFiles(join(root, 'demo-images', 'c1-river-green-jumper.jpg'));
		await page.getByRole('button', { name: 'the piece', exact: true }).click();
		await page.locator('#photo').click();
		await take(page, `pocket-${name}`);
		await context.close();
	}

	const page = await browser.newPage();
	await page.goto(`${address}/season/${season.id}/sheet`);
	await page.locator('.paper').waitFor();
	for (const format of ['A4', 'Letter'])
		await page.pdf({ format, printBackground: false, path: join(folder, `sheet-${format}.pdf`) });
} finally {
	await browser.close();
	await server.close();
	rmSync(homePath, { recursive: true, force: true });
}
