import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/wardrobe/season/report.ts';
import type { Season } from '../../src/wardrobe/words/season.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const PLACES = [
	'look-back',
	'direction',
	'sort',
	'line-up',
	'wish-list',
	'shop',
	'garments',
	'season',
	'sheet',
] as const;

describe.skipIf(!hasBrowser())('the stations, over the demo', () => {
	let site: Site;
	let season: Season;
	let opened: OpenedPage;
	const report = async (): Promise<Report> =>
		(await (await fetch(`${site.address}/api/seasons/${season.id}/report`)).json()) as Report;
	const go = async (page: Page, place: string) => {
		await page.goto(`${site.address}/season/${season.id}/${place}`);
		await page.getByRole('heading', { level: 1 }).waitFor();
	};

	beforeAll(async () => {
		site = await openSite({ demo: true });
		[season] = (await site.services.store.seasons.list()) as [Season];
		opened = await site.open();
	});
	afterAll(() => site?.close());

	it('Direction: a colour is renamed by mouse, and the name stands in the report', async () => {
		const { page } = opened;
		await go(page, 'direction');
		const card = page.locator('.palette-card').first();
		await card.getByText(/^Change /).click();
		await card.getByLabel('Your own word for it').fill('quay stone');
		await page.keyboard.press('Tab');
		await page.getByRole('heading', { name: 'quay stone' }).waitFor();
		expect((await report()).palette.colours.some(({ label, locked }) => label === 'quay stone' && locked)).toBe(true);
	});

	it('Direction: a tap drops a whole region from the outline, keeping it has the photo read again, and it can be taken back', async () => {
		const { page } = opened;
		const [first] = (await site.services.store.inspirations.list()).filter(({ seasonId }) => seasonId === season.id);
		await page.getByRole('button', { name: first!.title, exact: true }).click();
		const picture = page.getByRole('application');
		await picture.locator('canvas').waitFor();
		await page.getByRole('button', { name: 'Drop a region' }).click();
		await picture.focus();
		await page.keyboard.press('Enter');
		await page.getByRole('button', { name: 'Keep this outline' }).click();
		await expect.poll(async () => (await site.services.store.photos.get(first!.photoId))?.correction.mask).toBe(true);
		await site.services.jobs.settled();
		await page.getByRole('button', { name: 'Back to the outline found by itself' }).click();
		await expect.poll(async () => (await site.services.store.photos.get(first!.photoId))?.correction.mask).toBeFalsy();
		await page.keyboard.press('Escape');
		await page.getByRole('dialog').waitFor({ state: 'detached' });
	});

	it('Garments: search finds by colour and kind, and a kind is corrected by keyboard', async () => {
		const { page } = opened;
		await go(page, 'garments');
		await page.getByLabel('Search').fill('fuchsia');
		await page.getByText('1 garment shown.').waitFor();
		const kind = page.getByLabel('Kind of Fuchsia blouse');
		await kind.focus();
		await kind.selectOption('cardigan');
		await expect
			.poll(async () => (await site.services.store.garments.list()).find(({ name }) => name === 'Fuchsia blouse')?.kind)
			.toBe('cardigan');
	});

	it('Sort: three keys decide, U takes the last decision back', async () => {
		const { page } = opened;
		await go(page, 'sort');
		await page.getByRole('button', { name: 'One by one' }).click();
		const title = page.locator('.sort-one h2');
		const name = await title.textContent();
		const placeOf = async () => (await site.services.store.garments.list()).find((one) => one.name === name)?.place;
		const before = await placeOf();
		await page.keyboard.press('2');
		await page
			.locator('.sort-page')
			.getByText(/^1 of \d+ decided$/)
			.waitFor();
		await expect.poll(placeOf).toBe('stored');
		await page.keyboard.press('u');
		await page
			.locator('.sort-page')
			.getByText(/^0 of \d+ decided$/)
			.waitFor();
		await expect.poll(placeOf).toBe(before);
		expect(await title.textContent()).toBe(name);
	});

	it('Line-up: built by one press, a garment pinned, a pairing refused', async () => {
		const { page } = opened;
		await go(page, 'line-up');
		await page.getByRole('button', { name: /^Build / }).click();
		await page.getByRole('region', { name: 'What the set is worth' }).waitFor();
		const choice = async () => site.services.store.lineUp(season.id);
		expect((await choice())?.garmentIds.length).toBeGreaterThan(5);
		await page
			.getByRole('button', { name: / must stay$/ })
			.first()
			.click();
		await expect.poll(async () => (await choice())?.mustKeep.length).toBe(1);
		await page.locator('.outfits button').first().click();
		await page
			.getByRole('button', { name: /^Refuse / })
			.first()
			.click();
		await expect
			.poll(async () => (await site.services.store.pairWords()).filter(({ word }) => word === 'refused').length)
			.toBe(1);
		await page.keyboard.press('Escape');
		await page.getByText((await report()).held.sentence).waitFor();
	});

	it('Wish list: the threads are reached by arrow keys and each says what it is', async () => {
		const { page } = opened;
		await go(page, 'wish-list');
		const told = page.locator('.bands-told');
		await page.locator('.bands [role=button][tabindex="0"]').focus();
		const first = await told.textContent();
		expect(first).toContain('Asked for:');
		await page.keyboard.press('ArrowRight');
		await expect.poll(() => told.textContent()).not.toBe(first);
	});

	it('Shop: a candidate shows its reasons; bought, it becomes a garment', async () => {
		const { page } = opened;
		await go(page, 'shop');
		const card = page.locator('article.candidate').first();
		await card.locator('.reasons li').first().waitFor();
		const name = (await card.getByRole('heading').textContent())!;
		await card.getByRole('button', { name: `Bought ${name}` }).click();
		await expect
			.poll(async () => (await site.services.store.garments.list()).some((one) => one.name === name))
			.toBe(true);
	});

	it('Look back: a tap notes a wear of today, another takes it back', async () => {
		const { page } = opened;
		await go(page, 'look-back');
		const tile = page.locator('.wear-tile[aria-pressed="false"]').first();
		const name = (await tile.locator('.tile-name').textContent())!;
		const { madeOn } = await report();
		const garment = (await site.services.store.garments.list()).find((one) => one.name === name)!;
		const worn = async () =>
			(await site.services.store.wears({ from: madeOn, to: madeOn })).some(({ garmentId }) => garmentId === garment.id);
		await tile.click();
		await expect.poll(worn).toBe(true);
		await page.getByRole('button', { name, exact: true, pressed: true }).click();
		await expect.poll(worn).toBe(false);
	});

	for (const colorScheme of ['light', 'dark'] as const) {
		// WCAG 2.2, levels A and AA: https://www.w3.org/TR/WCAG22/ as axe-core checks them.
		it(`every station passes WCAG 2.2 A and AA in ${colorScheme}`, async () => {
			const { page } = await site.open({ colorScheme });
			const found: string[] = [];
			const beside = ['seasons', 'devices'].map((place) => [place, `${site.address}/${place}`] as const);
			const stations = PLACES.map((place) => [place, `${site.address}/season/${season.id}/${place}`] as const);
			for (const [place, address] of [...stations, ...beside]) {
				await page.goto(address);
				await page.getByRole('heading', { level: 1 }).waitFor();
				await page.waitForLoadState('networkidle').catch(() => undefined);
				const { violations } = await new AxeBuilder({ page })
					.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
					.analyze();
				for (const { id, nodes } of violations) found.push(`${place}: ${id}: ${nodes[0]?.html.slice(0, 160)}`);
			}
			await page.context().close();
			expect(found).toEqual([]);
		});
	}

	for (const locale of ['en-GB', 'de-DE']) {
		it(`nothing is wider than a phone of 360 pixels (${locale})`, async () => {
			const { page } = await site.open({ locale, viewport: { width: 360, height: 780 } });
			for (const place of PLACES) {
				await go(page, place);
				const beyond = await page.evaluate(
					() => document.documentElement.scrollWidth - document.documentElement.clientWidth,
				);
				expect({ place, beyond }).toEqual({ place, beyond: 0 });
				// A table that scrolls within hides its last column from whoever does not know.
				const cut = await page
					.locator('.table-scroll')
					.evaluateAll((all) =>
						all.filter((one) => one.checkVisibility()).map((one) => one.scrollWidth - one.clientWidth),
					);
				expect({ place, cut: cut.filter((more) => more > 0) }).toEqual({ place, cut: [] });
			}
			await page.context().close();
		});
	}

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
