import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, openSite, type Site } from '../support/open-page.ts';

describe.skipIf(!hasBrowser())('the first page', () => {
	let site: Site;
	beforeAll(async () => {
		site = await openSite();
	});
	afterAll(() => site?.close());

	it.each([
		[1280, 800],
		[360, 740],
	])('shows its start without scrolling at %i x %i, and is no wider', async (width, height) => {
		const { page } = await site.open({ viewport: { width, height } });
		await page.goto(site.address);
		const start = page.getByRole('button', { name: 'Start the season' });
		await start.waitFor();
		const box = (await start.boundingBox())!;
		expect(box.y + box.height).toBeLessThanOrEqual(height);
		const beyond = await page.evaluate(
			() => document.documentElement.scrollWidth - document.documentElement.clientWidth,
		);
		expect(beyond).toBe(0);
		await page.context().close();
	});
});
