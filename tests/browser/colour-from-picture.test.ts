import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import { labFromHex } from '../../src/colour/lab65.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';
import { plainPng } from '../support/pictures.ts';

/** Left and right half of the picture.  */
const LEFT = '#2f6f5e';
const RIGHT = '#8c1c3b';

describe.skipIf(!hasBrowser())('a colour added from a picture', () => {
	let site: Site;
	let opened: OpenedPage;
	let seasonId: string;
	/** Whether the palette holds the colour, to a tenth of what eyes tell apart: pixels are kept in single precision. */
	const holds = (hex: string) => async () =>
		(await site.services.store.palette(seasonId))!.colours.some(({ lab }) => deltaE2000(lab, labFromHex(hex)!) < 0.1);

	beforeAll(async () => {
		site = await openSite({ demo: true });
		seasonId = (await site.services.store.seasons.list())[0]!.id;
		opened = await site.open();
		const { page } = opened;
		await page.goto(`${site.address}/season/${seasonId}/direction`);
		await page.getByText('Add a colour', { exact: true }).click();
		await page.getByText('Take it from a picture').click();
		const buffer = await sharp(await plainPng(400, 300, LEFT))
			.composite([{ input: await plainPng(200, 300, RIGHT), left: 200, top: 0 }])
			.png()
			.toBuffer();
		await page.getByLabel('A picture on this device').setInputFiles({ name: 'two.png', mimeType: 'image/png', buffer });
	});
	afterAll(() => site?.close());

	it('by mouse: the point that is clicked gives its colour', async () => {
		const { page } = opened;
		const picture = page.locator('.pointer-picture');
		await picture.waitFor();
		const box = (await picture.boundingBox())!;
		await picture.click({ position: { x: box.width / 4, y: box.height / 2 } });
		await page.getByRole('button', { name: 'Add it to the palette' }).click();
		await expect.poll(holds(LEFT)).toBe(true);
	});

	it('by keyboard: arrows move the cross from where it was last, Enter takes the colour, Enter adds it', async () => {
		const { page } = opened;
		await page.getByRole('application').focus();
		for (let step = 0; step < 8; step++) await page.keyboard.press('Shift+ArrowRight');
		await page.keyboard.press('Enter');
		await page.getByRole('button', { name: 'Add it to the palette' }).press('Enter');
		await expect.poll(holds(RIGHT)).toBe(true);
	});

	it('what is no picture is refused with a reason', async () => {
		const { page } = opened;
		const buffer = Buffer.from('no picture');
		await page
			.locator('input[type=file][accept="image/*"]')
			.last()
			.setInputFiles({ name: 'a.png', mimeType: 'image/png', buffer });
		await page.getByText(/^Expected a picture/).waitFor();
		expect(opened.complaints.filter((one) => !one.includes('blob:'))).toEqual([]);
	});
});
