import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from 'playwright-core';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type DemoScenario, demoScenario } from '../../src/app/demo-scenario.ts';
import type { GarmentReport } from '../../src/wardrobe/season/garment-report.ts';
import type { Garment } from '../../src/wardrobe/words/garment.ts';
import type { Kind } from '../../src/wardrobe/words/kind.ts';
import { sortGroups } from '../../web/src/pages/sort/sort-order.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const folder = fileURLToPath(new URL('../../demo-images/', import.meta.url));
const bytesOf = (file: string) => readFileSync(`${folder}${file}`);
const PHOTOS = 38;
/** What a person may be asked to do for a wardrobe of 38 photos; before kinds and places were confirmed in groups it was about 240. */
const MOST_ACTIONS = 60;

type File = { readonly name: string; readonly mimeType: string; readonly buffer: Buffer };

/** As many photos as a wardrobe has, named as a phone names them, each with what it shows in truth: the demo's, and some of them once more in a mirror. */
async function wardrobePhotos({ garments }: DemoScenario): Promise<{ files: File[]; truth: Map<string, Kind> }> {
	const files: File[] = [];
	const truth = new Map<string, Kind>();
	for (let number = 0; number < PHOTOS; number++) {
		const { file, kind } = garments[number % garments.length]!;
		const buffer =
			number < garments.length ? bytesOf(file) : await sharp(bytesOf(file)).flop().jpeg({ quality: 90 }).toBuffer();
		const name = `IMG_${4100 + number}.jpg`;
		files.push({ name, mimeType: 'image/jpeg', buffer });
		truth.set(name, kind);
	}
	return { files, truth };
}

/** The page as a person uses it: every press, choice and drop counts. */
class Hands {
	actions = 0;
	readonly page: Page;
	constructor(page: Page) {
		this.page = page;
	}
	async press(target: Locator): Promise<void> {
		this.actions++;
		await target.click();
	}
	/** Opening the list and choosing in it. */
	async choose(target: Locator, value: string): Promise<void> {
		this.actions += 2;
		await target.selectOption(value);
	}
	async drop(input: Locator, files: File[]): Promise<void> {
		this.actions++;
		await input.setInputFiles(files);
	}
}

describe.skipIf(!hasBrowser())('from 38 photos to a confirmed, named, sorted wardrobe', () => {
	let site: Site;
	let opened: OpenedPage;
	let hands: Hands;
	let seasonId: string;
	let photos: Awaited<ReturnType<typeof wardrobePhotos>>;
	const garments = () => site.services.store.garments.list();

	beforeAll(async () => {
		site = await openSite();
		const scenario = await demoScenario();
		photos = await wardrobePhotos(scenario);
		const send = async (path: string, body: FormData | object) => {
			const isForm = body instanceof FormData;
			const headers = isForm ? {} : { 'content-type': 'application/json' };
			const sent = isForm ? body : JSON.stringify(body);
			return (await fetch(`${site.address}${path}`, { method: 'POST', headers, body: sent })).json();
		};
		// The season has its pictures and palette: this walk is about the clothes.
		const dates = { startsOn: '2026-03-01', endsOn: '2026-05-31' };
		seasonId = ((await send('/api/seasons', { name: 'Thaw', ...dates })) as { id: string }).id;
		for (const file of readdirSync(folder).filter((name) => /^i0[1-6].*\.jpg$/.test(name))) {
			const form = new FormData();
			form.set('purpose', 'inspiration');
			form.set('seasonId', seasonId);
			form.set('file', new Blob([new Uint8Array(bytesOf(file))], { type: 'image/jpeg' }), file);
			await send('/api/photos', form);
		}
		await site.services.jobs.settled();
		await send(`/api/seasons/${seasonId}/palette/derive`, { from: 'inspirations' });
		opened = await site.open({ viewport: { width: 1280, height: 800 } });
		hands = new Hands(opened.page);
		await opened.page.goto(`${site.address}/season/${seasonId}/garments`);
	});
	afterAll(() => site?.close());

	it('all photos are dropped at once; the strip that tells of them covers nothing and goes', async () => {
		const { page } = opened;
		const input = page.getByLabel('Add garments', { exact: true }).locator('input[type=file]').first();
		await hands.drop(input, photos.files);
		const dock = page.getByRole('complementary', { name: 'Photos on their way' });
		await dock.waitFor();
		const [pageEnd, dockTop] = await page.evaluate(() => {
			scrollTo(0, document.body.scrollHeight);
			const last = document.querySelector('.foot, .next-step') as HTMLElement;
			return [last.getBoundingClientRect().bottom, document.querySelector('.dock')!.getBoundingClientRect().top];
		});
		expect(pageEnd).toBeLessThanOrEqual(dockTop!);
		await expect.poll(async () => (await garments()).length, { timeout: 800_000 }).toBe(PHOTOS);
		await site.services.jobs.settled();
		await dock.waitFor({ state: 'detached' });
	});

	it('what is wrong among the kinds is put right piece by piece, the rest is confirmed at one press', async () => {
		const { page } = opened;
		await page.reload();
		await page.getByRole('heading', { name: /What are they/ }).waitFor();
		for (const { id, kind, photoIds } of await garments()) {
			const { originalName } = (await site.services.store.photos.get(photoIds[0]!))!;
			const truth = photos.truth.get(originalName)!;
			if (kind === truth) continue;
			await hands.choose(page.locator(`[data-piece="${id}"] select`), truth);
			await expect.poll(async () => (await site.services.store.garments.get(id))?.kindFrom).toBe('user');
		}
		const { violations } = await new AxeBuilder({ page })
			.withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
			.analyze();
		expect(violations.map(({ id, nodes }) => [id, nodes[0]?.html])).toEqual([]);
		await hands.press(page.getByRole('button', { name: /^All \d+ left are right$/ }));
		await expect.poll(async () => (await garments()).every(({ kindFrom }) => kindFrom === 'user')).toBe(true);
		await page.getByRole('heading', { name: /What are they/ }).waitFor({ state: 'detached' });
	});

	it('every garment has a name of its own by its looks, and none is called by its file', async () => {
		const listed = (await (await fetch(`${site.address}/api/garments`)).json()) as { name: string }[];
		const names = listed.map(({ name }) => name);
		expect(new Set(names).size).toBe(PHOTOS);
		expect(names.filter((name) => /IMG|\d{4}/.test(name))).toEqual([]);
	});

	it('the suggestions of Sort are taken in groups, what the user sees otherwise is unticked and decided apart', async () => {
		const { page } = opened;
		await hands.press(page.getByRole('link', { name: 'Next: Sort' }));
		await page.getByRole('heading', { name: 'Sort', level: 1 }).waitFor();
		const decided = async () => (await garments()).filter(({ sortedFor }) => sortedFor?.includes(seasonId)).length;
		/** Waits until the page shows the groups that the report now gives: it follows a moment after each decision. */
		const shown = async () => {
			const report = (await (await fetch(`${site.address}/api/seasons/${seasonId}/report`)).json()) as {
				garments: GarmentReport[];
			};
			const said = new Map(report.garments.map((one) => [one.garmentId, one]));
			const listed = (await (await fetch(`${site.address}/api/garments`)).json()) as Garment[];
			const left = listed.filter(({ sortedFor }) => !sortedFor?.includes(seasonId));
			const groups = sortGroups(left.map((garment) => ({ garment, said: said.get(garment.id)! })));
			const headings = page.locator('section:has(> .group-pieces) h2 .small');
			await expect.poll(() => headings.allTextContents()).toEqual(groups.map(({ items }) => `${items.length}`));
		};
		// Three pieces that the user sees otherwise than the program.
		await shown();
		const ticked = page.locator('.pick input:checked');
		const differs = Math.min(3, await ticked.count());
		for (let piece = 0; piece < differs; piece++) await hands.press(ticked.first());
		for (let round = 0; round < 12 && (await decided()) < PHOTOS; round++) {
			const group = page.locator('section:has(> .group-pieces)').first();
			const before = await decided();
			const none = (await group.locator('.pick input:checked').count()) === 0;
			if (none) await hands.press(group.getByRole('button', { name: 'Tick all' }));
			const suggested = group.locator('.group-decision .button-main');
			const own = group.getByRole('button', { name: /^Store \d+$/ });
			await hands.press((await suggested.count()) > 0 && !none ? suggested : own);
			await expect.poll(decided).toBeGreaterThan(before);
			await shown();
		}
		expect(await decided()).toBe(PHOTOS);
		await page.getByRole('heading', { name: 'All sorted' }).waitFor();
		await page.locator('.station[data-state="done"]').filter({ hasText: 'Sort' }).waitFor();
	});

	it(`takes at most ${MOST_ACTIONS} actions in all`, () => {
		process.stderr.write(`38 photos to a confirmed, named, sorted wardrobe: ${hands.actions} actions\n`);
		expect(hands.actions).toBeGreaterThan(4);
		expect(hands.actions).toBeLessThanOrEqual(MOST_ACTIONS);
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
