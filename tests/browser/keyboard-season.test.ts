import { fileURLToPath } from 'node:url';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Season } from '../../src/wardrobe/words/season.ts';
import { tabTo } from '../support/keyboard.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const CANDIDATE = fileURLToPath(new URL('../../demo-images/c1-river-green-jumper.jpg', import.meta.url));

describe.skipIf(!hasBrowser())('a whole season by keyboard alone', () => {
	let site: Site;
	let season: Season;
	let opened: OpenedPage;
	let page: Page;
	const store = () => site.services.store;
	/** Reached by Tab, done by Enter. */
	async function press(target: Locator): Promise<void> {
		await tabTo(page, target);
		await page.keyboard.press('Enter');
	}
	async function goTo(station: string): Promise<void> {
		await press(page.getByRole('link', { name: new RegExp(`^${station}`) }).first());
		await page.getByRole('heading', { name: station, level: 1 }).waitFor();
	}
	const button = (name: string | RegExp) => page.getByRole('button', { name, exact: true }).first();

	beforeAll(async () => {
		site = await openSite({ demo: true });
		[season] = (await store().seasons.list()) as [Season];
		opened = await site.open();
		({ page } = opened);
		page.on('filechooser', (chooser) => void chooser.setFiles(CANDIDATE));
		await page.addInitScript(() => {
			window.print = () => document.documentElement.setAttribute('data-printed', '');
		});
		await page.goto(`${site.address}/season/${season.id}/direction`);
		await page.getByRole('heading', { name: 'Direction', level: 1 }).waitFor();
	});
	afterAll(() => site?.close());

	it('Look back: what was worn is noted, and a sentence on what was missed', async () => {
		await goTo('Look back');
		const wears = async () => (await store().wears({ from: '1900-01-01', to: '2999-12-31' })).length;
		const before = await wears();
		await press(page.locator('.wear-tile[aria-pressed="false"]').first());
		await expect.poll(wears).toBe(before + 1);
		await tabTo(page, page.getByLabel('I missed …'));
		await page.keyboard.type('a cap that the wind leaves alone');
		await page.keyboard.press('Enter');
		await expect
			.poll(async () => (await store().seasons.get(season.id))?.feltGaps)
			.toContain('a cap that the wind leaves alone');
	});

	it('Direction: a colour is locked, one is added by its word', async () => {
		await goTo('Direction');
		await press(button(/^Lock /));
		await expect.poll(async () => (await store().palette(season.id))?.colours.some(({ locked }) => locked)).toBe(true);
		await press(page.locator('summary').filter({ hasText: 'Add a colour' }));
		await tabTo(page, page.getByLabel('Colour', { exact: true }));
		await page.keyboard.type('dark green');
		await press(page.getByRole('button', { name: 'Add it to the palette' }));
		await expect
			.poll(async () => (await store().palette(season.id))?.colours.some(({ origin }) => origin === 'by-hand'))
			.toBe(true);
	});

	it('Direction: a picture is opened, its outline drawn and kept, and the focus comes back to the picture', async () => {
		const { title, photoId } = (await store().inspirations.list()).find(({ seasonId }) => seasonId === season.id)!;
		const picture = button(title);
		await press(picture);
		await page.getByRole('application').locator('canvas').waitFor();
		await press(button('Drop a region'));
		await tabTo(page, page.getByRole('application'));
		await page.keyboard.press('Shift+ArrowUp');
		await page.keyboard.press('Enter');
		await press(button('Keep this outline'));
		await expect.poll(async () => (await store().photos.get(photoId))?.correction.mask).toBe(true);
		await site.services.jobs.settled();
		await page.keyboard.press('Escape');
		await page.getByRole('dialog').waitFor({ state: 'detached' });
		expect(await picture.evaluate((element) => element === document.activeElement)).toBe(true);
	});

	it('Garments: one is searched, opened and told of', async () => {
		await press(page.getByRole('link', { name: 'Garments', exact: true }));
		await page.getByRole('heading', { name: 'Garments', level: 1 }).waitFor();
		await tabTo(page, page.getByLabel('Search'));
		await page.keyboard.type('ink trousers');
		await page.getByText('1 garment shown.').waitFor();
		const row = button('Ink trousers');
		await press(row);
		await tabTo(page, page.getByRole('dialog').getByLabel('Price'));
		await page.keyboard.press('Control+a');
		await page.keyboard.type('61');
		await page.keyboard.press('Enter');
		await expect
			.poll(async () => (await store().garments.list()).find(({ name }) => name === 'Ink trousers')?.price)
			.toBe(61);
		await page.keyboard.press('Escape');
		await page.getByRole('dialog').waitFor({ state: 'detached' });
		expect(await row.evaluate((element) => element === document.activeElement)).toBe(true);
	});

	it('Sort: a piece is decided by a digit and taken back by U, a group by Enter', async () => {
		await goTo('Sort');
		await press(button('One by one'));
		await page.locator('.sort-one h2').waitFor();
		const decided = (count: number) => page.locator('.sort-page').getByText(new RegExp(`^${count} of \\d+ decided$`));
		await page.keyboard.press('2');
		await decided(1).waitFor();
		await page.keyboard.press('u');
		await decided(0).waitFor();
		await press(button('In groups'));
		const tick = page.locator('.pick input').first();
		const was = await tick.isChecked();
		await tabTo(page, tick);
		await page.keyboard.press('Space');
		expect(await tick.isChecked()).toBe(!was);
		await press(page.locator('.group-decision .button:not([data-disabled])').first());
		await expect
			.poll(async () => (await store().garments.list()).some(({ sortedFor }) => sortedFor?.includes(season.id)))
			.toBe(true);
	});

	it('Line-up: what is wanted is typed, a set built, a piece pinned and swapped, a pairing approved', async () => {
		await goTo('Line-up');
		await tabTo(page, page.getByLabel('tops wanted'));
		await page.keyboard.press('Control+a');
		await page.keyboard.type('6');
		await page.keyboard.press('Tab');
		await expect.poll(async () => (await store().seasons.get(season.id))?.quotas.top).toBe(6);
		await press(button(/^Build /));
		await page.getByRole('region', { name: 'What the set is worth' }).waitFor();
		await press(button(/ must stay$/));
		await expect.poll(async () => (await store().lineUp(season.id))?.mustKeep.length).toBeGreaterThan(0);
		const inside = (await store().lineUp(season.id))!.garmentIds;
		await press(button(/^Swap /));
		await press(
			page
				.getByRole('dialog')
				.getByRole('button', { name: /^Swap in / })
				.first(),
		);
		await expect.poll(async () => (await store().lineUp(season.id))?.garmentIds).not.toEqual(inside);
		await press(page.locator('.outfits button').first());
		await press(
			page
				.getByRole('dialog')
				.getByRole('button', { name: /^Approve / })
				.first(),
		);
		await expect.poll(async () => (await store().pairWords()).some(({ word }) => word === 'approved')).toBe(true);
		await page.keyboard.press('Escape');
	});

	it('Wish list: the bands are read by arrows, a wish is made', async () => {
		await goTo('Wish list');
		const told = page.locator('.bands-told');
		await tabTo(page, page.locator('.bands [role=button][tabindex="0"]'));
		const first = await told.textContent();
		await page.keyboard.press('ArrowRight');
		await expect.poll(() => told.textContent()).not.toBe(first);
		const wishes = async () => (await store().wishes.list()).length;
		const before = await wishes();
		await press(button(/^Wish for /));
		await expect.poll(wishes).toBe(before + 1);
	});

	it('Shop: a picture is cropped by the sliders, checked, and bought', async () => {
		await goTo('Shop');
		const candidates = async () => (await store().candidates.list()).length;
		const before = await candidates();
		await tabTo(page, page.getByLabel('Add a candidate', { exact: true }).locator('input[type=file]').first());
		await page.keyboard.press('Enter');
		await tabTo(page, page.getByRole('dialog').getByLabel(/^Upper edge/));
		await page.keyboard.press('ArrowRight');
		await press(page.getByRole('button', { name: 'Check this piece' }));
		await expect.poll(candidates).toBe(before + 1);
		await site.services.jobs.settled();
		await press(button(/^Bought /));
		await expect.poll(async () => (await store().candidates.list()).some(({ state }) => state === 'bought')).toBe(true);
	});

	it('Season, sheet and all seasons: a weight is moved, the sheet printed, a season archived', async () => {
		await press(page.getByRole('link', { name: 'Season', exact: true }));
		await tabTo(page, page.getByLabel(/^Palette covered/));
		const weight = async () => (await store().seasons.get(season.id))?.weights?.palette;
		const before = await weight();
		await page.keyboard.press('ArrowRight');
		await expect.poll(weight).not.toBe(before);
		await press(page.getByRole('link', { name: 'Season sheet' }));
		await press(page.getByRole('button', { name: 'Print it' }));
		await page.locator('html[data-printed]').waitFor();
		await press(page.getByRole('link', { name: 'All seasons' }));
		await press(button(/^Archive /));
		await expect.poll(async () => (await store().seasons.get(season.id))?.archived).toBe(true);
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
