import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

describe.skipIf(!hasBrowser())('what is done to several garments, or to a photo that shows two', () => {
	let site: Site;
	let seasonId: string;
	let opened: OpenedPage;
	const garments = () => site.services.store.garments.list();
	/** Taking back makes things what they were, as a newer version of them. */
	const withoutVersions = (things: readonly { version: number }[]) => things.map(({ version: _, ...thing }) => thing);
	const go = async (page: Page, place: string) => {
		await page.goto(`${site.address}/season/${seasonId}/${place}`);
		await page.locator('.foot').waitFor();
	};

	beforeAll(async () => {
		site = await openSite({ demo: true });
		seasonId = (await site.services.store.seasons.list())[0]!.id;
		opened = await site.open();
	});
	afterAll(() => site?.close());

	it('goes to the bin in one request and comes back by one undo, which says what it took back and keeps the focus', async () => {
		const { page } = opened;
		const before = await garments();
		const requests: string[] = [];
		page.on('request', (request) => {
			if (request.method() !== 'GET') requests.push(`${request.method()} ${new URL(request.url()).pathname}`);
		});
		await go(page, 'garments');
		await page.getByLabel('Search').fill('moss');
		await page.getByText('4 garments shown.').waitFor();
		await page.getByRole('button', { name: 'Choose all 4 shown' }).click();
		await page.getByRole('button', { name: 'To the bin' }).click();
		await expect.poll(async () => (await garments()).length).toBe(before.length - 4);
		const undo = page.getByRole('button', { name: 'Undo' });
		await undo.focus();
		await page.keyboard.press('Enter');
		await page
			.getByRole('status')
			.getByText(/^Taken back: Put .*Moss.* in the bin\.$/)
			.waitFor();
		expect(requests).toEqual(['DELETE /api/garments', 'POST /api/undo']);
		expect(withoutVersions(await garments())).toEqual(withoutVersions(before));
		expect(await undo.evaluate((button) => button === document.activeElement)).toBe(true);
	});

	it('a photo that shows two is cut in two by keyboard, and the entry keeps what was told of it', async () => {
		const { page } = opened;
		const before = await garments();
		const entry = before.find(({ name }) => name === 'Ink trousers')!;
		await page.getByLabel('Search').fill('ink trousers');
		await page.getByRole('button', { name: entry.name, exact: true }).press('Enter');
		await page.getByRole('button', { name: 'It shows two garments' }).press('Enter');
		const dialog = page.getByRole('dialog', { name: 'One photo, two garments' });
		await dialog
			.getByLabel(/^Right edge/)
			.first()
			.press('ArrowLeft');
		await dialog.getByRole('button', { name: 'Make two garments of it' }).press('Enter');
		await expect.poll(async () => (await garments()).length).toBe(before.length + 1);
		const { photoIds, changedAt: _when, ...told } = (await garments()).find(({ id }) => id === entry.id)!;
		expect(told).toEqual({ ...told, price: entry.price, notes: entry.notes, place: entry.place, kind: entry.kind });
		expect(photoIds).not.toEqual(entry.photoIds);
		await dialog.waitFor({ state: 'detached' });
		await site.services.jobs.settled();
	});

	it('a candidate’s photo fills its place on a phone, uncut', async () => {
		const { page } = await site.open({ viewport: { width: 360, height: 780 } });
		await go(page, 'shop');
		const picture = page.locator('.candidate img').first();
		await picture.waitFor();
		await expect.poll(() => picture.evaluate((img) => (img as HTMLImageElement).naturalWidth)).toBeGreaterThan(0);
		const { box, shown, natural } = await picture.evaluate((img) => {
			const { width, height } = img.getBoundingClientRect();
			const { naturalWidth, naturalHeight } = img as HTMLImageElement;
			return {
				box: img.closest('li')!.clientWidth,
				shown: { width, ratio: width / height },
				natural: naturalWidth / naturalHeight,
			};
		});
		expect(shown.width).toBeCloseTo(box, 0);
		expect(shown.ratio).toBeCloseTo(natural, 1);
		await page.context().close();
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
