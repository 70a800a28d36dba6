import { readFileSync } from 'node:fs';
import { AxeBuilder } from '@axe-core/playwright';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasBrowser, type OpenedPage, openSite, type Site } from '../support/open-page.ts';

describe.skipIf(!hasBrowser())('backup and restore in the page', () => {
	let site: Site;
	let opened: OpenedPage;
	let archive: Buffer;
	const namesOf = async () =>
		((await (await fetch(`${site.address}/api/seasons`)).json()) as { name: string }[]).map(({ name }) => name);

	beforeAll(async () => {
		site = await openSite({ demo: true });
		opened = await site.open();
		await opened.page.goto(`${site.address}/seasons`);
	});
	afterAll(() => site?.close());

	it('everything is saved as one archive', async () => {
		const { page } = opened;
		const download = page.waitForEvent('download');
		await page.getByRole('link', { name: 'Save everything as one archive' }).click();
		archive = readFileSync(await (await download).path());
		expect(archive.length).toBeGreaterThan(100_000);
	});

	it('a file that is no archive is refused with a reason, and nothing is changed', async () => {
		const { page } = opened;
		await page.getByText('Restore an archive').click();
		const input = page.getByLabel('An archive saved here before (.tar)');
		await input.setInputFiles({ name: 'notes.tar', mimeType: 'application/x-tar', buffer: Buffer.from('no archive') });
		await page.getByRole('button', { name: 'Restore it' }).click();
		await page.getByText(/Expected a whole archive/).waitFor();
		expect(await namesOf()).toHaveLength(1);
	});

	it('the archive is asked about once more, checked, and stands in the place of what was changed since', async () => {
		const { page } = opened;
		const before = await namesOf();
		await fetch(`${site.address}/api/seasons`, {
			method: 'POST',
			headers: { 'content-type': 'application/json' },
			body: JSON.stringify({ name: 'Made after the backup', startsOn: '2026-06-01', endsOn: '2026-08-31' }),
		});
		expect(await namesOf()).toContain('Made after the backup');
		const input = page.getByLabel('An archive saved here before (.tar)');
		await input.setInputFiles({ name: 'home.tar', mimeType: 'application/x-tar', buffer: archive });
		await page.getByText(/^home\.tar is checked first/).waitFor();
		const { violations } = await new AxeBuilder({ page }).analyze();
		expect(violations.map(({ id }) => id)).toEqual([]);
		await page.getByRole('button', { name: 'Restore it' }).click();
		await page.getByText(/files were checked and are whole/).waitFor();
		await page.getByRole('button', { name: 'Show what was restored' }).click();
		await page.getByRole('heading', { name: 'All seasons' }).waitFor();
		await page.getByRole('link', { name: before[0]! }).waitFor();
		expect(await namesOf()).toEqual(before);
	});
});
