import { mkdir, writeFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/wardrobe/season/report.ts';
import { colourWord } from '../../src/wardrobe/words/palette-colour.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

/** Points of 1/72 inch: ISO 216 (A4 is 210 mm by 297 mm) and ANSI/ASME Y14.1 (size A, Letter, is 8.5 by 11 inches). */
const PAPERS = [
	{ format: 'A4', width: (210 / 25.4) * 72, height: (297 / 25.4) * 72 },
	{ format: 'Letter', width: 8.5 * 72, height: 11 * 72 },
] as const;

/** The size of each page, from the MediaBox entries (ISO 32000-1, 7.7.3.3). */
const pageSizes = (pdf: Buffer) =>
	[...pdf.toString('latin1').matchAll(/\/MediaBox\s*\[\s*0 0 ([\d.]+) ([\d.]+)\s*\]/g)].map(([, width, height]) => ({
		width: Number(width),
		height: Number(height),
	}));

describe.skipIf(!hasBrowser())('the season sheet for paper', () => {
	let site: Site;
	let opened: OpenedPage;
	let page: Page;
	let report: Report;

	beforeAll(async () => {
		site = await openSite({ demo: true });
		const { id } = (await site.services.store.seasons.list())[0]!;
		await fetch(`${site.address}/api/seasons/${id}/wishes/from-gap`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({
				gapId: ((await (await fetch(`${site.address}/api/seasons/${id}/report`)).json()) as Report).gaps[0]!.id,
			}),
		});
		report = (await (await fetch(`${site.address}/api/seasons/${id}/report`)).json()) as Report;
		opened = await site.open();
		page = opened.page;
		await page.goto(`${site.address}/season/${id}/direction`);
	});
	afterAll(() => site?.close());

	it('is one link away from every station', async () => {
		await page.getByRole('link', { name: 'Season sheet' }).click();
		await page.getByRole('heading', { name: report.season.name, level: 1 }).waitFor();
		await page.getByRole('button', { name: 'Print it' }).waitFor();
	});

	it('lists every palette colour in words, three pictures to wear, every piece held, and the wishes with room to write', async () => {
		await page.locator('.paper-pieces img').first().waitFor();
		const rows = page.locator('.paper-palette li');
		expect(await rows.count()).toBe(report.palette.colours.length);
		for (const [index, colour] of report.palette.colours.entries()) {
			const words = await rows.nth(index).textContent();
			expect(words).toContain(colourWord(colour));
			// A hint asks for nothing.
			expect(words!.includes('you have')).toBe(colour.role !== 'hint');
		}
		const worn = report.pictures.pictures.filter(({ away }) => away === 0);
		expect(worn.length).toBeGreaterThanOrEqual(3);
		expect(await page.locator('.paper-pictures li').count()).toBe(3);
		const names = new Map(report.garments.map(({ garmentId, name }) => [garmentId, name]));
		const [first] = worn[0]!.answers.filter(({ answer }) => answer.degree !== 'missing');
		expect(await page.locator('.paper-pictures li').first().textContent()).toContain(names.get(first!.garmentId!));
		expect(await page.locator('.paper-pieces li').count()).toBe(report.held.garments);
		// Two of the demo's own and the one made here.
		expect(await page.locator('.paper-wishes li').count()).toBe(3);
		for (const line of ['Shop', 'Price', 'Note'])
			expect(await page.locator('.paper-wishes').getByText(line, { exact: true }).count()).toBe(3);
		// Words, not figures: counts of pieces and places in the palette are the only numbers.
		expect(await page.locator('.paper').textContent()).not.toMatch(/\d %|L\*|CIEDE/);
	});

	for (const { format, width, height } of PAPERS) {
		it(`prints on ${format}: the demo's 19 pieces on one page, nothing cut off, without the page's own navigation`, async () => {
			const pdf = await page.pdf({ format, printBackground: false });
			if (process.env.DYELOT_KEEP_PDF) {
				await mkdir(process.env.DYELOT_KEEP_PDF, { recursive: true });
				await writeFile(`${process.env.DYELOT_KEEP_PDF}/sheet-${format}.pdf`, pdf);
			}
			const sizes = pageSizes(pdf);
			expect(sizes.length).toBe(1);
			for (const size of sizes) {
				expect(Math.abs(size.width - width)).toBeLessThan(1);
				expect(Math.abs(size.height - height)).toBeLessThan(1);
			}
			await page.emulateMedia({ media: 'print' });
			// As wide as the paper less its margins, in CSS pixels of 1/96 inch.
			await page.setViewportSize({ width: Math.round((width / 72) * 96 - (24 / 25.4) * 96), height: 900 });
			const cut = await page
				.locator('.paper :is(b, span, p, h1, h2, h3, li)')
				.evaluateAll((all) =>
					all
						.filter(({ scrollWidth, clientWidth }) => clientWidth > 0 && scrollWidth > clientWidth + 1)
						.map((one) => one.outerHTML.slice(0, 120)),
				);
			expect(cut).toEqual([]);
			expect(await page.evaluate(() => document.documentElement.scrollWidth <= innerWidth)).toBe(true);
			expect(await page.getByRole('navigation').count()).toBe(0);
			await page.setViewportSize({ width: 1280, height: 900 });
			await page.emulateMedia({ media: null });
		});
	}

	it('reads in black and white: all its text is black or nearly so on white, whatever the screen shows', async () => {
		await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
		const { violations } = await new AxeBuilder({ page }).include('.paper').withRules(['color-contrast']).analyze();
		expect(violations).toEqual([]);
		const inks = await page
			.locator('.paper :is(td, th, li, p, h1, h2, h3, b, span)')
			.evaluateAll((elements) =>
				elements
					.filter(({ textContent }) => textContent?.trim())
					.map((element) => Math.max(...(getComputedStyle(element).color.match(/\d+/g) ?? []).slice(0, 3).map(Number))),
			);
		expect(inks.length).toBeGreaterThan(50);
		expect(Math.max(...inks)).toBeLessThanOrEqual(0x33);
		await page.emulateMedia({ media: null, colorScheme: 'light' });
	});

	for (const colorScheme of ['light', 'dark'] as const) {
		// WCAG 2.2, levels A and AA: https://www.w3.org/TR/WCAG22/ as axe-core checks them.
		it(`passes WCAG 2.2 A and AA on the screen in ${colorScheme}`, async () => {
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			const { violations } = await new AxeBuilder({ page })
				.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
				.analyze();
			expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
		});
	}

	it('speaks German where that is chosen', async () => {
		const { page: german, complaints } = await site.open();
		await german.addInitScript(() => localStorage.setItem('dyelot-language', 'de'));
		await german.goto(page.url());
		await german.getByRole('button', { name: 'Drucken' }).waitFor();
		await german.getByRole('heading', { name: 'Wonach du suchst' }).waitFor();
		expect(await german.locator('.paper-slot h3').first().textContent()).toMatch(
			/^Oberteile: \d+ von \d+ gewünschten$/,
		);
		expect(complaints).toEqual([]);
		await german.context().close();
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
