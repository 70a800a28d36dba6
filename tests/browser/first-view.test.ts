import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, openSite, type Site } from '../support/open-page.ts';

describe.skipIf(!hasBrowser())('while the judgement of the season is on its way', () => {
	let site: Site;
	let seasonId: string;
	beforeAll(async () => {
		site = await openSite({ demo: true });
		seasonId = (await site.services.store.seasons.list())[0]!.id;
	});
	afterAll(() => site?.close());

	/** A page whose report is held back until `let it come`. */
	async function withReportHeld(place: string): Promise<{ page: Page; letItCome: () => void }> {
		const { page } = await site.open();
		let letItCome = () => {};
		const held = new Promise<void>((done) => {
			letItCome = done;
		});
		await page.route('**/report', async (route) => {
			await held;
			await route.continue();
		});
		await page.goto(`${site.address}/season/${seasonId}/${place}`);
		return { page, letItCome };
	}
	const topOf = async (page: Page, selector: string) => (await page.locator(selector).first().boundingBox())!.y;

	it('the garments stand there with names, pictures and places, and nothing moves when it comes', async () => {
		const { page, letItCome } = await withReportHeld('garments');
		const row = page.locator('article.garment-row').first();
		await row.waitFor();
		await row.getByText('being compared').waitFor();
		await row.locator('img').waitFor();
		const names = () => page.locator('article.garment-row .tile-name').allTextContents();
		const before = { names: await names(), top: await topOf(page, 'article.garment-row') };
		letItCome();
		await row.locator('.verdict').waitFor();
		expect({ names: await names(), top: await topOf(page, 'article.garment-row') }).toEqual(before);
		await page.context().close();
	});

	it('a garment can be opened and changed, and its judgement fills in', async () => {
		const { page, letItCome } = await withReportHeld('garments');
		await page.getByLabel('Search').fill('ink trousers');
		await page.getByRole('button', { name: 'Ink trousers', exact: true }).click();
		const dialog = page.getByRole('dialog', { name: 'Ink trousers' });
		await dialog.getByLabel('Price').fill('61');
		await page.keyboard.press('Tab');
		await expect
			.poll(async () => (await site.services.store.garments.list()).find(({ name }) => name === 'Ink trousers')?.price)
			.toBe(61);
		letItCome();
		await dialog.getByText(/^Goes with/).waitFor();
		await page.context().close();
	});

	it('every other station says what it is for, in its place', async () => {
		const { page, letItCome } = await withReportHeld('wish-list');
		await page.getByRole('heading', { name: 'Wish list', level: 1 }).waitFor();
		await page.getByRole('link', { name: 'Line-up' }).waitFor();
		const before = await topOf(page, 'h1');
		letItCome();
		await page.locator('.bands').waitFor();
		expect(await topOf(page, 'h1')).toBe(before);
		await page.context().close();
	});

	it('a page whose code does not come says so, and the way elsewhere stays', async () => {
		const { page } = await site.open();
		await page.goto(`${site.address}/season/${seasonId}/direction`);
		await page.locator('.foot').waitFor();
		await page.route('**/assets/*.js', (route) => route.abort());
		await page.getByRole('link', { name: /^Shop/ }).click();
		await page.getByRole('alert').getByText('This page could not be shown.').waitFor();
		await page.getByRole('link', { name: /^Direction/ }).click();
		await page.getByRole('heading', { name: 'The palette' }).waitFor();
		await page.context().close();
	});
});
