import { fileURLToPath } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { networkAddresses } from '../../src/app/sharing.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const picture = fileURLToPath(new URL('../../demo-images/g03-moss-jumper.jpg', import.meta.url));
const PHONE = {
	viewport: { width: 360, height: 780 },
	hasTouch: true,
	isMobile: true,
	userAgent:
		'Mozilla/5.0 (Linux; Android 15; Pixel 9) AppleWebKit/537.36 (KHTML, like Gecko) Chrome/143.0.0.0 Mobile Safari/537.36',
} as const;

/** Set where this machine is on a network: the phone comes in over that address, and what is sent stays on this machine. */
const network = networkAddresses()[0];

describe.skipIf(!hasBrowser() || network === undefined)('a phone over the local network', () => {
	let site: Site;
	let computer: OpenedPage;
	let phone: OpenedPage;
	let fromPhone = '';
	const garments = () => site.services.store.garments.list();

	beforeAll(async () => {
		site = await openSite({ share: true });
		fromPhone = `http://${network}:${new URL(site.address).port}`;
		computer = await site.open();
		phone = await site.open(PHONE, fromPhone);
	});
	afterAll(() => site?.close());

	it('shows one field and nothing of the wardrobe', async () => {
		const { page } = phone;
		await page.goto(`${fromPhone}/seasons`);
		await page.getByRole('heading', { name: 'Let this device in' }).waitFor();
		expect(await page.locator('input').count()).toBe(1);
		expect(await page.getByText('The bin').count()).toBe(0);
		const { violations } = await new AxeBuilder({ page }).analyze();
		expect(violations.map(({ id }) => id)).toEqual([]);
		expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
	});

	it('is told when the code is wrong', async () => {
		const { page } = phone;
		await page.getByLabel('Code').fill('1');
		await page.getByRole('button', { name: 'Let it in' }).click();
		await page.getByRole('alert').waitFor();
	});

	it('comes in with the code that the computer shows beside the picture of its address', async () => {
		await computer.page.goto(`${site.address}/devices`);
		await computer.page.getByRole('img', { name: `QR picture of the address ${fromPhone}/` }).waitFor();
		const code = await computer.page.locator('.door-code').textContent();
		const { violations } = await new AxeBuilder({ page: computer.page }).analyze();
		expect(violations.map(({ id }) => id)).toEqual([]);
		await phone.page.getByLabel('Code').fill(code ?? '');
		await phone.page.getByRole('button', { name: 'Let it in' }).click();
		await phone.page.getByRole('heading', { name: 'All seasons' }).waitFor();
		await computer.page.getByRole('row', { name: /^Android phone/ }).waitFor();
	});

	it('takes photos of garments with its camera, and sees them read', async () => {
		const { page } = phone;
		await page.getByRole('link', { name: 'Dyelot' }).click();
		await page.getByRole('button', { name: 'Start the season' }).click();
		await page.getByRole('heading', { name: 'Direction', level: 1 }).waitFor();
		await page.getByRole('link', { name: 'Garments' }).click();
		const camera = page.getByLabel('Add garments', { exact: true }).locator('input[capture="environment"]');
		await camera.setInputFiles(picture);
		await page.getByText('1 of 1 photo read').waitFor();
		const [garment] = await garments();
		expect(garment).toMatchObject({ photoIds: [expect.stringMatching(/^[0-9a-f]{64}$/)] });
		await page.locator(`img[src*="${garment!.photoIds[0]}"]`).first().waitFor();
		const shown = page.locator(`img[src*="${garment!.photoIds[0]}"]`).first();
		await page.waitForFunction((img) => (img as HTMLImageElement).naturalWidth > 0, await shown.elementHandle());
	});

	it('sees no devices, and is out again once the computer sends it away', async () => {
		await phone.page.goto(`${fromPhone}/devices`);
		await phone.page.getByText(/on the computer that runs Dyelot/).waitFor();
		// Nothing went wrong: it is told so.
		expect(await phone.page.getByRole('alert').count()).toBe(0);
		await computer.page.getByRole('button', { name: /^Send away the Android phone/ }).click();
		await computer.page.getByText('None yet.').waitFor();
		await phone.page.goto(`${fromPhone}/seasons`);
		await phone.page.getByRole('heading', { name: 'Let this device in' }).waitFor();
	});

	it('asked nobody else for anything', () => {
		expect([...phone.foreign, ...computer.foreign]).toEqual([]);
		expect(computer.complaints).toEqual([]);
	});
});
