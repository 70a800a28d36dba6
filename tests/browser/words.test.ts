import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { labFromHex } from '../../src/colour/lab65.ts';
import { hasBrowser, openSite, type Site } from '../support/open-page.ts';

describe.skipIf(!hasBrowser())('colours and words of the page', () => {
	let site: Site;
	let seasonId: string;
	beforeAll(async () => {
		site = await openSite({ demo: true });
		seasonId = (await site.services.store.seasons.list())[0]!.id;
	});
	afterAll(() => site?.close());

	it('a colour is added by its word, and another from the grid, by keyboard', async () => {
		const { page, complaints } = await site.open();
		await page.goto(`${site.address}/season/${seasonId}/direction`);
		const summary = page.getByText('Add a colour', { exact: true });
		await summary.focus();
		await page.keyboard.press('Enter');
		await page.getByLabel('Colour', { exact: true }).fill('dark green');
		await page.getByRole('group', { name: 'Colours of that name' }).getByRole('button').first().waitFor();
		await page.getByLabel('Your own word for it').last().fill('hedge');
		await page.getByRole('button', { name: 'Add it to the palette' }).press('Enter');
		await expect
			.poll(
				async () => (await site.services.store.palette(seasonId))?.colours.find(({ label }) => label === 'hedge')?.lab,
			)
			// The survey's dark green (CC0; fixtures/colour-words/english.csv).
			.toEqual(labFromHex('#316632'));
		await page.getByText('Choose from a grid').press('Enter');
		const axe = await new AxeBuilder({ page }).include('#main').analyze();
		expect(axe.violations.map(({ id }) => id)).toEqual([]);
		// Once chosen, its word stands among the colours of that name, too: the last one is the grid's.
		const periwinkle = page.getByRole('button', { name: 'periwinkle', exact: true }).last();
		await periwinkle.press('Enter');
		expect(await periwinkle.getAttribute('aria-pressed')).toBe('true');
		expect(complaints).toEqual([]);
		await page.context().close();
	});

	it('speaks German where that is chosen, and keeps the choice', async () => {
		const { page } = await site.open();
		await page.goto(`${site.address}/seasons`);
		await page.getByLabel('Language').selectOption('de');
		await page.getByText('Die Seite öffnet sich darin neu.').waitFor();
		await page.goto(`${site.address}/season/${seasonId}/garments`);
		await page.getByRole('heading', { name: 'Kleidung', level: 1 }).waitFor();
		await page.getByLabel('Suchen').waitFor();
		expect(await page.locator('html').getAttribute('lang')).toBe('de');
		await page.context().close();
	});
});
