import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const PHOTO = fileURLToPath(new URL('../../demo-images/g03-moss-jumper.jpg', import.meta.url));

describe.skipIf(!hasBrowser())('a photo on its way', () => {
	let site: Site;
	let opened: OpenedPage;

	beforeAll(async () => {
		site = await openSite();
		opened = await site.open();
	});
	afterAll(() => site?.close());

	it('is told as read where that was said before an older answer came', async () => {
		const { page } = opened;
		await page.goto(site.address);
		await page.getByLabel('Name', { exact: true }).fill('A trial season');
		await page.getByRole('button', { name: 'Start the season' }).click();
		await page.getByRole('link', { name: 'Garments', exact: true }).click();
		// The page's own line of news hears what this one hears, at the same time.
		await page.evaluate(() => {
			new EventSource('/api/events').addEventListener('photo', ({ data }) => {
				if (JSON.parse(data).status === 'read') document.documentElement.dataset.heard = 'yes';
			});
		});
		const told: string[] = [];
		await page.route(/\/api\/photos\/[0-9a-f]{64}$/, async (route) => {
			const answer = await route.fetch();
			told.push(((await answer.json()) as { status: string }).status);
			await page.locator('html[data-heard]').waitFor({ state: 'attached' });
			await route.fulfill({ response: answer });
		});
		await page.getByLabel('Add garments', { exact: true }).locator('input[type=file]').first().setInputFiles(PHOTO);
		await page.getByText('1 of 1 photo read').waitFor();
		expect(told[0]).toBe('waiting');
		// The page may still ask: no answer may come once it is closed.
		await page.unrouteAll({ behavior: 'wait' });
	});
});
