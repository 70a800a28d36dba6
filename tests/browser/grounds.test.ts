import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { groundSets } from '../../src/app/grounds.ts';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

/** Photos rendered on two grounds (fixtures/grounds/README.md). */
const GARMENTS = ['g01', 'g03', 'g09', 'g16'];
const GROUNDS = ['grey-screed', 'oak-planks'];
const fileOf = (ground: string, garment: string) => `${ground}-${garment}-1.jpg`;

describe.skipIf(!hasBrowser())('photos that share a ground', () => {
	let site: Site;
	let opened: OpenedPage;
	/** Ids of the photos by their files. */
	const photoOf = new Map<string, string>();
	const sets = async () => (await groundSets(site.services.store)).map(({ photoIds, told }) => ({ photoIds, told }));
	const onGround = (ground: string) => GARMENTS.map((garment) => photoOf.get(fileOf(ground, garment))!).sort();
	const section = () =>
		opened.page.locator('details', { has: opened.page.getByText('Photos of one bed, floor or wall') });

	beforeAll(async () => {
		site = await openSite();
		const dates = { startsOn: '2026-03-01', endsOn: '2026-05-31' };
		const season = await fetch(`${site.address}/api/seasons`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ name: 'Thaw', ...dates }),
		});
		const { id: seasonId } = (await season.json()) as { id: string };
		for (const file of GROUNDS.flatMap((ground) => GARMENTS.map((garment) => fileOf(ground, garment)))) {
			const bytes = readFileSync(new URL(`../../fixtures/grounds/${file}`, import.meta.url));
			const form = new FormData();
			form.set('purpose', 'garment');
			form.set('seasonId', seasonId);
			form.set('file', new Blob([new Uint8Array(bytes)], { type: 'image/jpeg' }), file);
			const answer = await fetch(`${site.address}/api/photos`, { method: 'POST', body: form });
			photoOf.set(file, ((await answer.json()) as { items: { photoId: string }[] }).items[0]!.photoId);
		}
		await site.services.jobs.settled();
		opened = await site.open();
		await opened.page.goto(`${site.address}/season/${seasonId}/garments`);
		await section().getByText('Photos of one bed, floor or wall').click();
		await section().locator('.ground-photo').first().waitFor();
	});
	afterAll(() => site?.close());

	it('stand there in sets, as the program tells them apart', async () => {
		const found = await sets();
		expect(found.map(({ photoIds }) => photoIds.length).reduce((sum, one) => sum + one, 0)).toBeGreaterThan(3);
		for (const { photoIds } of found)
			expect(GROUNDS.some((ground) => photoIds.every((id) => onGround(ground).includes(id)))).toBe(true);
		expect(await section().locator('.ground-photo').count()).toBe(found.flatMap(({ photoIds }) => photoIds).length);
		const { violations } = await new AxeBuilder({ page: opened.page }).analyze();
		expect(violations.map(({ id }) => id)).toEqual([]);
	});

	it('are confirmed at one press, and said to be told', async () => {
		const [first] = await sets();
		await section().getByRole('button', { name: 'They show one ground' }).first().click();
		await section().getByText('You said that they show one ground.').first().waitFor();
		expect((await sets()).find(({ photoIds }) => photoIds.includes(first!.photoIds[0]!))?.told).toBe(true);
	});

	it('are parted one by one, and undo puts them back', async () => {
		const { page } = opened;
		const before = await sets();
		const [parted] = before[0]!.photoIds;
		await section().getByLabel('Photo 1 of this ground').first().check();
		await section().getByRole('button', { name: 'The chosen lie elsewhere' }).click();
		await expect.poll(async () => (await sets()).some(({ photoIds }) => photoIds.includes(parted!))).toBe(false);
		const shown = () => section().locator('.ground-photo').count();
		const count = before.flatMap(({ photoIds }) => photoIds).length;
		await expect.poll(shown).toBeLessThan(count);
		await page.getByRole('button', { name: 'Undo', exact: true }).click();
		await expect.poll(sets).toEqual(before);
		await expect.poll(shown).toBe(count);
	});

	it('no request left the machine, and the browser had nothing to complain of', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
