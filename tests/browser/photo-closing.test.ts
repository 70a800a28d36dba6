import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, openSite, type Site } from '../support/open-page.ts';

const WIDTHS = [
	['on a computer', { viewport: { width: 1280, height: 800 } }],
	['on a phone', { viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true }],
] as const;

describe.skipIf(!hasBrowser()).each(WIDTHS)('closing a photo with an outline drawn, %s', (_where, options) => {
	let site: Site;
	let page: Page;
	let photoId: string;
	let title: string;
	const isKept = async () => (await site.services.store.photos.get(photoId))?.correction.mask === true;
	const question = () => page.getByRole('alert').filter({ hasText: 'The outline you drew is not kept yet.' });
	const dialog = () => page.getByRole('dialog', { name: title });

	beforeAll(async () => {
		site = await openSite({ demo: true });
		const season = (await site.services.store.seasons.list())[0]!;
		const first = (await site.services.store.inspirations.list()).find(({ seasonId }) => seasonId === season.id)!;
		({ photoId, title } = first);
		({ page } = await site.open(options));
		await page.goto(`${site.address}/season/${season.id}/direction`);
	});
	afterAll(() => site?.close());

	async function openAndDraw(): Promise<void> {
		await page.getByRole('button', { name: title, exact: true }).click();
		const picture = page.getByRole('application');
		await picture.locator('canvas').waitFor();
		await page.getByRole('button', { name: 'Drop a region' }).click();
		await picture.locator('canvas').click();
		await expect.poll(() => page.getByRole('button', { name: 'Keep this outline' }).isEnabled()).toBe(true);
	}
	/** Whether the element lies in the part of the screen that is seen. */
	async function isInView(name: string): Promise<boolean> {
		const box = await page.getByRole('button', { name, exact: true }).boundingBox();
		return box !== null && box.y >= 0 && box.y + box.height <= options.viewport.height;
	}

	it('"keep" is in view wherever the rest is scrolled to', async () => {
		await openAndDraw();
		for (const share of [0, 0.3, 0.6]) {
			await dialog().evaluate((box, at) => box.scrollTo(0, at * (box.scrollHeight - box.clientHeight)), share);
			expect([share, await isInView('Keep this outline')]).toEqual([share, true]);
		}
	});

	it('asks, in view, and goes on drawing with what was drawn', async () => {
		await page.keyboard.press('Escape');
		await question().waitFor();
		expect(await isInView('Keep it and close')).toBe(true);
		await page.getByRole('button', { name: 'Go on drawing' }).click();
		await question().waitFor({ state: 'detached' });
		expect(await page.getByRole('button', { name: 'Keep this outline' }).isEnabled()).toBe(true);
		expect(await isKept()).toBe(false);
	});

	it('closes without it when told so, and keeps nothing', async () => {
		await page.keyboard.press('Escape');
		await page.getByRole('button', { name: 'Close without it' }).click();
		await dialog().waitFor({ state: 'detached' });
		expect(await isKept()).toBe(false);
	});

	it('keeps it and closes when told so', async () => {
		await openAndDraw();
		await page.keyboard.press('Escape');
		await page.getByRole('button', { name: 'Keep it and close' }).click();
		await dialog().waitFor({ state: 'detached' });
		await expect.poll(isKept).toBe(true);
	});

	it('asks nothing where nothing was drawn', async () => {
		await site.services.jobs.settled();
		await page.getByRole('button', { name: title, exact: true }).click();
		await page.getByRole('application').locator('canvas').waitFor();
		await page.keyboard.press('Escape');
		await dialog().waitFor({ state: 'detached' });
	});
});
