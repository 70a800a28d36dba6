import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { tabTo } from '../support/keyboard.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));
const INSPIRATIONS = ['i01-quay-river-jumper', 'i02-oat-coat', 'i06-rust-dress'].map(demo);

describe.skipIf(!hasBrowser())('the same way by keyboard alone', () => {
	let site: Site;
	let opened: OpenedPage;
	let page: Page;

	beforeAll(async () => {
		site = await openSite();
		opened = await site.open();
		page = opened.page;
		// Asked for from the start: the browser offers a chooser only to those who asked before the key is pressed.
		page.on('filechooser', (chooser) => void chooser.setFiles(INSPIRATIONS));
	});
	afterAll(() => site?.close());

	async function press(target: Locator): Promise<void> {
		await tabTo(page, target);
		await page.keyboard.press('Enter');
	}

	it('a season is named and started', async () => {
		await page.goto(site.address);
		await tabTo(page, page.getByLabel('Name', { exact: true }));
		await page.keyboard.type('By keyboard');
		await press(page.getByRole('button', { name: 'Start the season' }));
		await page.getByRole('heading', { name: 'Direction', level: 1 }).waitFor();
	});

	it('pictures are picked, read, and give the palette', async () => {
		await tabTo(page, page.getByLabel('Add pictures', { exact: true }).locator('input[type=file]').first());
		await page.keyboard.press('Enter');
		await page.getByText(`${INSPIRATIONS.length} of ${INSPIRATIONS.length} photos read`).waitFor();
		await site.services.jobs.settled();
		await press(page.getByRole('button', { name: 'Take the colours of the pictures' }));
		await page.locator('.palette-card').first().waitFor();
	});

	it('a gap becomes a wish', async () => {
		await press(page.getByRole('link', { name: /Wish list/ }));
		await page.getByRole('heading', { name: 'Wish list', level: 1 }).waitFor();
		await press(page.getByRole('button', { name: /^Wish for / }).first());
		await page.locator('article.wish').waitFor();
		expect(await site.services.store.wishes.list()).toHaveLength(1);
	});

	it('the focus can be seen wherever it stands', async () => {
		await page.keyboard.press('Tab');
		const outline = await page.evaluate(() => {
			const { outlineStyle, outlineWidth, boxShadow } = getComputedStyle(document.activeElement!);
			return { shown: outlineStyle !== 'none' && Number.parseFloat(outlineWidth) > 0, boxShadow };
		});
		expect(outline.shown || outline.boxShadow !== 'none').toBe(true);
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
