import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';
import { withSheetAndCard } from '../support/pictures.ts';

/** Where paper and cloth lie in the picture, as shares of its sides. */
const PAPER = { x: 0.1, y: 0.15 };
const CLOTH = { x: 0.45, y: 0.5 };

describe.skipIf(!hasBrowser())('the light of a photo', () => {
	let site: Site;
	let opened: OpenedPage;
	let photoId: string;
	const correction = async () => (await site.services.store.photos.get(photoId))!.correction;

	beforeAll(async () => {
		site = await openSite({ demo: true });
		const [season] = await site.services.store.seasons.list();
		const form = new FormData();
		form.set('purpose', 'inspiration');
		form.set('seasonId', season!.id);
		form.set('file', new Blob([new Uint8Array(await withSheetAndCard())], { type: 'image/png' }), 'Sheet and card.png');
		const answer = await fetch(`${site.address}/api/photos`, { method: 'POST', body: form });
		photoId = ((await answer.json()) as { items: { photoId: string }[] }).items[0]!.photoId;
		await site.services.jobs.settled();
		opened = await site.open();
		const { page } = opened;
		await page.goto(`${site.address}/season/${season!.id}/direction`);
		// Pictures are called by what they show.
		const board = await (await fetch(`${site.address}/api/seasons/${season!.id}/inspirations`)).json();
		const { title } = (board as { photoId: string; title: string }[]).find((one) => one.photoId === photoId)!;
		await page.getByRole('button', { name: title, exact: true }).click();
		await page.getByRole('button', { name: 'Light', exact: true }).click();
	});
	afterAll(() => site?.close());

	async function tap({ x, y }: { x: number; y: number }): Promise<void> {
		const picture = opened.page.locator('.pointer-picture');
		await picture.waitFor();
		const box = (await picture.boundingBox())!;
		await picture.click({ position: { x: x * box.width, y: y * box.height } });
	}

	it('a tap on the cloth is refused with the reason and a picture of what it would have done; nothing is kept', async () => {
		const { page } = opened;
		await tap(CLOTH);
		await page
			.getByText(/It was not used/)
			.first()
			.waitFor();

		await page.getByRole('img', { name: 'with it as neutral: not used' }).waitFor();
		expect(await page.getByRole('button', { name: 'Keep it' }).count()).toBe(0);
		await page.getByRole('button', { name: 'Point at something else' }).click();
		expect(await correction()).toEqual({});
	});

	it('a tap on the paper is shown before and after, and kept when the user says so', async () => {
		const { page } = opened;
		await tap(PAPER);
		await page
			.getByText(/Taken for white paper/)
			.first()
			.waitFor();
		await page.getByRole('img', { name: 'before' }).waitFor();
		expect(await correction()).toEqual({});
		const { violations } = await new AxeBuilder({ page })
			.withTags(['wcag2a', 'wcag2aa', 'wcag21aa', 'wcag22aa'])
			.analyze();
		expect(violations.map(({ id }) => id)).toEqual([]);
		await page.getByRole('button', { name: 'Keep it' }).click();
		await expect.poll(async () => (await correction()).neutrals?.length).toBe(1);
		await site.services.jobs.settled();
		await page
			.getByText(/Corrected by the white you pointed at/)
			.first()
			.waitFor();
	});

	it('asks nothing of any other host, and complains of nothing', () => {
		expect(opened.foreign).toEqual([]);
		expect(opened.complaints).toEqual([]);
	});
});
