import { readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadSeasonInput } from '../../src/app/load-season.ts';
import { deltaE2000 } from '../../src/colour/delta-e.ts';
import type { Lab65 } from '../../src/colour/lab65.ts';
import { soughtPieces } from '../../src/wardrobe/pictures/sought-pieces.ts';
import { wearableBoard } from '../../src/wardrobe/pictures/wearable-pictures.ts';
import type { Palette } from '../../src/wardrobe/words/palette-colour.ts';
import type { SeasonInput } from '../../src/wardrobe/words/season-input.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

const demo = (name: string) => fileURLToPath(new URL(`../../demo-images/${name}`, import.meta.url));
const { planted } = JSON.parse(readFileSync(demo('scenario.json'), 'utf8')) as {
	planted: { gap: { lab: Lab65; answeredBy: string }; loner: string; offCandidate: string };
};

/** `L* 50  C* 26  h 200°` back to Lab. */
function labInWords(words: string): Lab65 {
	const [, lightness, chroma, hue] = /L\* (\d+) +C\* (\d+) +h (\d+)/.exec(words)!.map(Number);
	const angle = (hue! * Math.PI) / 180;
	return [lightness!, chroma! * Math.cos(angle), chroma! * Math.sin(angle)];
}

describe.skipIf(!hasBrowser())('the pocket page, as a file on a phone without a network', () => {
	let site: Site;
	let folder: string;
	let opened: OpenedPage;
	let page: Page;
	let palette: Palette;
	let file: string;
	let input: SeasonInput;

	beforeAll(async () => {
		site = await openSite({ demo: true });
		const season = (await site.services.store.seasons.list())[0]!;
		const { id } = season;
		input = await loadSeasonInput(site.services, season);
		({ palette } = (await (await fetch(`${site.address}/api/seasons/${id}/palette`)).json()) as { palette: Palette });
		const answer = await fetch(`${site.address}/api/seasons/${id}/pocket`);
		expect(answer.status).toBe(200);
		file = await answer.text();
		folder = await mkdtemp(join(tmpdir(), 'dyelot-pocket-'));
		await writeFile(join(folder, 'pocket.html'), file);
		opened = await site.open({ offline: true, viewport: { width: 360, height: 740 }, hasTouch: true, isMobile: true });
		page = opened.page;
		await page.goto(pathToFileURL(join(folder, 'pocket.html')).href);
	});
	afterAll(async () => {
		await site?.close();
		if (folder) await rm(folder, { recursive: true });
	});

	/** Says what it is, chooses its photo, and taps its middle. */
	async function tapPiece(name: string, kind: string): Promise<void> {
		await page.getByLabel('1. What is it?').selectOption(kind);
		await page.locator('#file').setInputFiles(demo(name));
		await page.locator('#work').waitFor();
		await page.getByRole('button', { name: 'the piece', exact: true }).tap();
		await page.locator('#photo').tap();
		await page.locator('#answer h2').waitFor();
	}

	it('is one file of 2 MB at most that shows the palette and every picture from within itself', async () => {
		expect(Buffer.byteLength(file)).toBeLessThanOrEqual(2 * 1024 * 1024);
		expect(await page.locator('#palette li').count()).toBe(palette.colours.length);
		const pictures = page.locator('#garments img');
		expect(await pictures.count()).toBeGreaterThan(20);
		await pictures.first().scrollIntoViewIfNeeded();
		await expect
			.poll(() => pictures.first().evaluate((picture) => (picture as HTMLImageElement).naturalWidth))
			.toBeGreaterThan(0);
	});

	it('asks what the piece is before it takes a photo; a kind that is looked for is one tap away', async () => {
		expect(await page.locator('#photo-choice').isVisible()).toBe(false);
		const looked = page.locator('#quick button');
		const kind = (await looked.first().textContent())!;
		await looked.first().tap();
		expect(
			await page.getByLabel('1. What is it?').evaluate((one) => (one as HTMLSelectElement).selectedOptions[0]!.text),
		).toBe(kind);
		expect(await page.locator('#photo-choice').isVisible()).toBe(true);
	});

	it('says what to look for as pieces with their word: wishes first, then what pictures ask for', async () => {
		const rows = await page.locator('#wishes li').allTextContents();
		const wishes = (await site.services.store.wishes.list()).filter(({ state }) => state === 'open');
		expect(wishes.length).toBeGreaterThan(0);
		for (const { name } of wishes)
			expect(rows.some((row) => row.startsWith(name) && row.includes('a wish'))).toBe(true);
		const sought = soughtPieces(
			wearableBoard(input),
			input.garments.filter(({ place }) => place !== 'gone'),
		);
		expect(sought.length).toBeGreaterThan(0);
		const asked = rows.find((row) => row.startsWith(sought[0]!.name));
		expect(asked).toMatch(/asked for by (one|\d+) of your pictures/);
	});

	it('a photo chosen and its piece tapped give a verdict, how sure it is, and what goes with it', async () => {
		await tapPiece(planted.gap.answeredBy, 'jumper');
		const answer = page.locator('#answer');
		expect(await answer.locator('h2').textContent()).toMatch(/^(Take it|Think about it|Ask the seller)/);
		expect(await answer.locator('.verdict').textContent()).toMatch(/^. (unsure, likely )?(fits|near)$/);
		expect(await answer.textContent()).toMatch(/It goes with \d+ garments of yours/);
		expect(await page.locator('#status').textContent()).toMatch(/off by \d+ or less.+From about 3 on/);
	});

	it('the colour it reads is as near to the true cloth as it says it can be', async () => {
		// The picture's true colour stands in the scenario it was rendered from.
		const error = Number(/off by (\d+) or less/.exec((await page.locator('#status').textContent())!)![1]);
		const read = labInWords((await page.locator('#answer details p').first().textContent())!);
		expect(deltaE2000(read, planted.gap.lab)).toBeLessThanOrEqual(error);
	});

	it('a piece far from the palette is not said to fit, and one like it in the wardrobe is named', async () => {
		await tapPiece(planted.loner, 'shirt');
		expect(await page.locator('#answer .verdict').textContent()).toMatch(/^. (unsure, likely )?off$/);
		expect(await page.locator('#answer .reasons').textContent()).toContain('Fuchsia blouse');
	});

	it('a piece between two palette colours, in a colour that no picture wears, is not said to fit', async () => {
		await tapPiece(planted.offCandidate, 'raincoat');
		expect(await page.locator('#answer .verdict').textContent()).not.toMatch(/ fits$/);
	});

	it('the keyboard can tap, too', async () => {
		await page.getByRole('button', { name: 'Start the piece again' }).click();
		expect(await page.locator('#answer h2').count()).toBe(0);
		await page.getByRole('application').focus();
		await page.keyboard.press('ArrowDown');
		await page.keyboard.press('Enter');
		await page.locator('#answer h2').waitFor();
	});

	it('takes a price into account, as the page at home does', async () => {
		await tapPiece(planted.gap.answeredBy, 'jumper');
		await page.getByLabel('Its price, if you like').fill('30');
		await page.getByLabel('Its price, if you like').blur();
		await page.getByText(/It would cost about .* a wear/).waitFor();
		expect(await page.locator('#answer h2').textContent()).toMatch(/^(Take it|Think about it|Ask the seller)/);
	});

	it('speaks German where it was made in German, with colours and pieces in German words', async () => {
		const german = await (await fetch(`${site.address}/api/seasons/${input.season.id}/pocket?language=de`)).text();
		await writeFile(join(folder, 'tasche.html'), german);
		const { page: other, complaints } = await site.open({ offline: true, viewport: { width: 360, height: 740 } });
		await other.goto(pathToFileURL(join(folder, 'tasche.html')).href);
		await other.getByRole('heading', { name: 'Ein Stück prüfen' }).waitFor();
		expect(await other.locator('html').getAttribute('lang')).toBe('de');
		await other.getByLabel('1. Was ist es?').selectOption({ label: 'Pullover' });
		await other.locator('#file').setInputFiles(demo(planted.gap.answeredBy));
		await other.getByRole('button', { name: 'das Stück', exact: true }).click();
		await other.locator('#photo').click();
		await other.locator('#answer h2').waitFor();
		expect(await other.locator('#answer .verdict').textContent()).toMatch(
			/^. (unsicher, )?(wohl )?(passt|nahe dran)( wohl)?$/,
		);
		expect(await other.locator('main').textContent()).not.toMatch(
			/asked for|a wish|of the palette|It (answers|goes)|garments of yours/,
		);
		expect(await other.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
		expect(complaints).toEqual([]);
		await other.context().close();
	});

	it('a file that is no photo is refused in plain words', async () => {
		await page
			.locator('#file')
			.setInputFiles({ name: 'notes.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('no photo') });
		await page.getByText('Expected a photo that this browser can show; “notes.jpg” is none.').waitFor();
	});

	for (const colorScheme of ['light', 'dark'] as const) {
		// WCAG 2.2, levels A and AA: https://www.w3.org/TR/WCAG22/ as axe-core checks them.
		it(`passes WCAG 2.2 A and AA in ${colorScheme}, and nothing is wider than the phone`, async () => {
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			const { violations } = await new AxeBuilder({ page })
				.withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
				.analyze();
			expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html.slice(0, 160)}`)).toEqual([]);
			expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(360);
		});
	}

	it('asked nothing of anyone, and the browser had nothing to complain of', () => {
		expect(opened.foreign.filter((address) => !address.startsWith('file:'))).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
