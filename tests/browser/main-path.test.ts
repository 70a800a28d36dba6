import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/wardrobe/season/report.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

const INSPIRATIONS = [
	'i01-quay-river-jumper',
	'i02-oat-coat',
	'i03-moss-and-oat-skirt',
	'i06-rust-dress',
	'i12-river-morning',
].map(demo);
const GARMENTS = [
	'g01-cream-linen-shirt',
	'g03-moss-jumper',
	'g08-fuchsia-blouse',
	'g15-ink-trousers',
	'g27-brown-ankle-boots',
].map(demo);

describe.skipIf(!hasBrowser())('from an empty home to a wish made from a gap', () => {
	let site: Site;
	let opened: OpenedPage;
	const report = async (): Promise<Report> => {
		const [season] = await site.services.store.seasons.list();
		return (await (await fetch(`${site.address}/api/seasons/${season!.id}/report`)).json()) as Report;
	};

	beforeAll(async () => {
		site = await openSite();
		opened = await site.open();
	});
	afterAll(() => site?.close());

	it('the first page explains itself and starts a season', async () => {
		const { page } = opened;
		await page.goto(site.address);
		await page.getByRole('heading', { name: /Plan one season/ }).waitFor();
		await page.getByRole('button', { name: 'Open the demo' }).waitFor();
		await page.getByLabel('Name', { exact: true }).fill('A trial season');
		await page.getByRole('button', { name: 'Start the season' }).click();
		await page.getByRole('heading', { name: 'Direction', level: 1 }).waitFor();
		// Nothing to merge nor to take along yet.
		expect(await page.getByRole('link', { name: 'PNG card' }).isVisible()).toBe(false);
		expect((await site.services.store.seasons.list()).map(({ name }) => name)).toEqual(['A trial season']);
	});

	it('pictures picked together are read one by one and give the palette', async () => {
		const { page } = opened;
		await page
			.getByLabel('Add pictures', { exact: true })
			.locator('input[type=file]')
			.first()
			.setInputFiles(INSPIRATIONS);
		await page.getByText(`${INSPIRATIONS.length} of ${INSPIRATIONS.length} photos read`).waitFor();
		await page.getByRole('button', { name: 'Take the colours of the pictures' }).click();
		await page.locator('.palette-card').first().waitFor();
		const { palette } = await report();
		expect(palette.colours.length).toBeGreaterThan(3);
		expect(await page.locator('.palette-card').count()).toBe(palette.colours.length);
	});

	it('a text file that calls itself a photo is refused with a reason, and the others go on', async () => {
		const { page } = opened;
		await page.getByRole('link', { name: 'Garments', exact: true }).click();
		await page.getByRole('heading', { name: 'Garments', level: 1 }).waitFor();
		const notes = { name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no photo at all') };
		const input = page.getByLabel('Add garments', { exact: true }).locator('input[type=file]').first();
		await input.setInputFiles(GARMENTS);
		await input.setInputFiles([notes]);
		await page.getByText(`${GARMENTS.length} of ${GARMENTS.length + 1} photos read, 1 not`).waitFor();
		const dock = page.getByRole('complementary', { name: 'Photos on their way' });
		expect(await dock.getByText(/^Expected/).textContent()).toContain('photo');
		await dock.getByRole('button', { name: 'Close' }).click();
		await page.getByText(`${GARMENTS.length} garments shown.`).waitFor();
		expect((await report()).garments).toHaveLength(GARMENTS.length);
	});

	it('the woven bands tell the same numbers as the report', async () => {
		const { page } = opened;
		// Photos taken in one light may be read a second time, together.
		await site.services.jobs.settled();
		await page.getByRole('link', { name: /Wish list/ }).click();
		await page.reload();
		await page.getByText('The same as a table').click();
		const { bands } = await report();
		expect(bands.asked.length).toBeGreaterThan(0);
		const percent = (share: number) => (share > 0 && share < 0.005 ? 'under 1 %' : `${Math.round(share * 100)} %`);
		for (const { paletteColourId, amount, covered, missing } of bands.asked) {
			const figures = await page.locator(`[data-asked="${paletteColourId}"] td.figure`).allTextContents();
			expect(figures).toEqual([amount, covered, missing].map(percent));
		}
		for (const { id, amount, surplus } of bands.held) {
			const figures = await page.locator(`[data-held="${id}"] td.figure`).allTextContents();
			expect(figures).toEqual([amount, surplus].map(percent));
		}
	});

	it('one press makes a gap a wish', async () => {
		const { page } = opened;
		// Pieces of the pictures have a list and a button of their own.
		const gap = (await report()).gaps.find(({ kind }) => kind !== 'piece');
		expect(gap).toBeDefined();
		await page
			.getByRole('button', { name: /^Wish for / })
			.first()
			.click();
		await page.locator('article.wish').waitFor();
		const wishes = await site.services.store.wishes.list();
		expect(wishes).toHaveLength(1);
		expect(wishes[0]).toMatchObject({ slot: gap!.slot, paletteColourId: gap!.paletteColourId, state: 'open' });
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
