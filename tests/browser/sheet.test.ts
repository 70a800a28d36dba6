import { mkdir, writeFile } from 'node:fs/promises';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Report } from '../../src/wardrobe/season/report.ts';
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

	it('lists every palette colour in words and figures, every piece held, and the wishes with a box to tick', async () => {
		const rows = page.locator('.paper-table tbody tr');
		expect(await rows.count()).toBe(report.palette.colours.length);
		for (const [index, colour] of report.palette.colours.entries()) {
			const asked = report.bands.asked.find(({ paletteColourId }) => paletteColourId === colour.id);
			// A hint asks for nothing, and says so.
			expect(asked === undefined).toBe(colour.role === 'hint');
			const words = await rows.nth(index).textContent();
			expect(words).toContain(colour.name);
			expect(words).toContain(`L* ${Math.round(colour.lab[0])}`);
			expect(words).toContain(`${Math.round((asked?.amount ?? 0) * 100)} %`);
		}
		expect(await page.locator('.paper-pieces li').count()).toBe(report.held.garments);
		expect(await page.locator('.paper-wishes li').allTextContents()).toHaveLength(report.wishes.length);
		// Two of the demo's own and the one made here.
		expect(report.wishes.length).toBe(3);
	});

	for (const { format, width, height } of PAPERS) {
		it(`prints on ${format}, on few pages, without the page's own navigation`, async () => {
			const pdf = await page.pdf({ format, printBackground: false });
			if (process.env.DYELOT_KEEP_PDF) {
				await mkdir(process.env.DYELOT_KEEP_PDF, { recursive: true });
				await writeFile(`${process.env.DYELOT_KEEP_PDF}/sheet-${format}.pdf`, pdf);
			}
			const sizes = pageSizes(pdf);
			expect(sizes.length).toBeGreaterThan(0);
			expect(sizes.length).toBeLessThanOrEqual(4);
			for (const size of sizes) {
				expect(Math.abs(size.width - width)).toBeLessThan(1);
				expect(Math.abs(size.height - height)).toBeLessThan(1);
			}
			await page.emulateMedia({ media: 'print' });
			expect(await page.getByRole('navigation').count()).toBe(0);
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
			await page.emulateMedia({ colorScheme });
			const { violations } = await new AxeBuilder({ page })
				.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
				.analyze();
			expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
		});
	}

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
