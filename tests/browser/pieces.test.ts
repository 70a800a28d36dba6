import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/wardrobe/season/report.ts';
import type { Season } from '../../src/wardrobe/words/season.ts';
import { collage } from '../support/collage.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}.jpg`, import.meta.url));

/** A page of a shop as a browser shows it: its name, a picture, a price, what is said of the piece. */
const shopPage = (
	picture: string,
) => `<body style="margin:0;font:16px sans-serif;width:400px;background:#fff;color:#222">
	<h1 style="font-size:20px;margin:12px">River green jumper, lambswool</h1>
	<img id="piece" src="data:image/jpeg;base64,${picture}" style="display:block;width:340px;height:420px;object-fit:cover;margin:20px 30px">
	<p style="margin:12px">38.00, used, size M. Worn for one winter, no holes, from a house without smoke.</p>
	<p style="margin:12px">Sent within two days. Questions are answered in the evening, and more pictures on request.</p>
	<p style="margin:12px;padding:14px;background:#222;color:#fff;text-align:center">Ask the seller</p></body>`;

describe.skipIf(!hasBrowser())('pieces of pictures', () => {
	let site: Site;
	let season: Season;
	let opened: OpenedPage;
	const report = async () => (await (await fetch(`${site.address}/api/seasons/${season.id}/report`)).json()) as Report;
	const go = (place: string) => opened.page.goto(`${site.address}/season/${season.id}/${place}`);

	beforeAll(async () => {
		site = await openSite({ demo: true });
		[season] = (await site.services.store.seasons.list()) as [Season];
		opened = await site.open();
	});
	afterAll(() => site?.close());

	it('what a piece is, is said by one tap, shown as said, and taken back', async () => {
		const { page } = opened;
		await go('direction');
		const tap = page.getByRole('button', { name: /^Say what .+ is: / }).first();
		await tap.waitFor();
		const told = async () =>
			(await site.services.store.inspirations.list()).flatMap(({ pieceKinds = [] }) => pieceKinds);
		const before = await told();
		await tap.click();
		await expect.poll(async () => (await told()).length).toBe(before.length + 1);
		await page.locator('.wear-piece').getByText('as you said').first().waitFor();
		await page.getByRole('button', { name: 'Undo', exact: true }).click();
		await expect.poll(told).toEqual(before);
	});

	it('a wish made from a picture’s piece shows that piece by itself', async () => {
		const { page } = opened;
		await go('wish-list');
		const [piece] = (await report()).pictures.wishedPieces;
		expect(piece).toBeDefined();
		await page.getByRole('button', { name: `Wish for: ${piece!.name}` }).click();
		const picture = page
			.getByRole('article', { name: piece!.name })
			.getByRole('img', { name: /as a picture shows it$/ });
		await picture.waitFor();
		const wish = (await site.services.store.wishes.list()).find(({ name }) => name === piece!.name);
		expect(wish?.seenIn).toBe(piece!.exampleIn);
		// Some of it is cloth, some of it the ground that shows through.
		const opaque = await picture.evaluate((canvas: HTMLCanvasElement) => {
			const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
			return data.filter((_, at) => at % 4 === 3 && data[at] === 255).length / (data.length / 4);
		});
		expect(opaque).toBeGreaterThan(0.05);
		expect(opaque).toBeLessThan(1);
	});

	it('two pieces in one photo are asked about, with a box round each, and become two garments', async () => {
		const { page } = opened;
		await go('garments');
		const count = (await site.services.store.garments.list()).length;
		const buffer = await collage('g01-cream-linen-shirt', 'g15-ink-trousers');
		await page
			.getByLabel('Add garments', { exact: true })
			.locator('input[type=file]')
			.first()
			.setInputFiles({ name: 'two.png', mimeType: 'image/png', buffer });
		await page.getByRole('button', { name: /^Two pieces in the photo of / }).click();
		const dialog = page.getByRole('dialog', { name: 'One photo, two garments' });
		await dialog.getByText(/^Two pieces were seen here/).waitFor();
		// Collage of two halves: the boxes lie in theirs.
		const edges = async (name: RegExp) =>
			(await dialog.getByLabel(name).all()).map((slider) => slider.inputValue().then(Number));
		const lefts = await Promise.all(await edges(/^Left edge/));
		const rights = await Promise.all(await edges(/^Right edge/));
		expect(rights[0]).toBeLessThan(60);
		expect(lefts[1]).toBeGreaterThan(40);
		await dialog.getByRole('button', { name: 'Make two garments of it' }).click();
		await dialog.waitFor({ state: 'detached' });
		await expect.poll(async () => (await site.services.store.garments.list()).length).toBe(count + 2);
	});

	it('a screenshot of an offer is cropped to its picture by proposal; a photo is not', async () => {
		const { page } = opened;
		const shop = await site.open({ viewport: { width: 400, height: 800 } });
		await shop.page.setContent(
			shopPage((await sharp(demo('c1-river-green-jumper')).jpeg().toBuffer()).toString('base64')),
		);
		const piece = (await shop.page.locator('#piece').boundingBox())!;
		const buffer = await shop.page.screenshot();
		await shop.page.context().close();
		await go('shop');
		const input = page.getByLabel('Add a candidate', { exact: true }).locator('input[type=file]').first();
		await input.setInputFiles({ name: 'screen.png', mimeType: 'image/png', buffer });
		const dialog = page.getByRole('dialog', { name: 'Crop it to the piece' });
		await dialog.getByText(/^The picture was found on the screenshot/).waitFor();
		const edge = async (name: RegExp) => Number(await dialog.getByLabel(name).inputValue());
		// In hundredths of the screen; one square of the picture looked at is 6 of 320 pixels.
		expect(Math.abs((await edge(/^Left edge/)) - piece.x / 4)).toBeLessThan(5);
		expect(Math.abs((await edge(/^Right edge/)) - (piece.x + piece.width) / 4)).toBeLessThan(5);
		expect(Math.abs((await edge(/^Upper edge/)) - piece.y / 8)).toBeLessThan(4);
		expect(Math.abs((await edge(/^Lower edge/)) - (piece.y + piece.height) / 8)).toBeLessThan(4);
		await dialog.getByRole('button', { name: 'Check this piece' }).click();
		await dialog.waitFor({ state: 'detached' });
		await input.setInputFiles(demo('c1-river-green-jumper'));
		await dialog.getByText('Draw a box round the piece, or take the whole picture.').waitFor();
		await page.keyboard.press('Escape');
	});

	it('an outfit laid flat shows each piece once, whole, in a place of its own', async () => {
		const { page } = opened;
		await go('line-up');
		await page.locator('.flat-lay').first().waitFor();
		await page.evaluate(() => {
			for (const picture of document.querySelectorAll<HTMLImageElement>('.flat-lay img')) picture.loading = 'eager';
		});
		await page.waitForFunction(() =>
			[...document.querySelectorAll<HTMLImageElement>('.flat-lay img')].every(
				(one) => one.complete && one.naturalWidth > 0,
			),
		);
		const lays = await page.locator('.flat-lay').evaluateAll((all) =>
			all.map((lay) =>
				[...lay.querySelectorAll('img')].map((picture) => {
					const { left, top, right, bottom } = picture.getBoundingClientRect();
					return { src: picture.currentSrc, left, top, right, bottom, fit: getComputedStyle(picture).objectFit };
				}),
			),
		);
		expect(lays.length).toBeGreaterThan(5);
		for (const pieces of lays) {
			expect(new Set(pieces.map(({ src }) => src)).size).toBe(pieces.length);
			expect(new Set(pieces.map(({ fit }) => fit))).toEqual(new Set(['contain']));
			for (const [index, one] of pieces.entries())
				for (const other of pieces.slice(index + 1)) {
					const across = Math.min(one.right, other.right) - Math.max(one.left, other.left);
					const along = Math.min(one.bottom, other.bottom) - Math.max(one.top, other.top);
					expect(across > 0.5 && along > 0.5).toBe(false);
				}
		}
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
