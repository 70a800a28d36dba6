import { AxeBuilder } from '@axe-core/playwright';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { freePort } from '../support/free-port.ts';
import { type HostedTest, hostedTestApp, PASSWORD } from '../support/hosted-app.ts';
import { hasBrowser, sharedBrowser } from '../support/open-page.ts';
import { startPostgres } from '../support/postgres.ts';

const postgres = await startPostgres();
if (!postgres.ok) console.warn(`The host in a browser is skipped: ${postgres.reason}.`);
afterAll(() => postgres.ok && postgres.stop());

describe.skipIf(!postgres.ok || !hasBrowser())('a host in a browser', () => {
	if (!postgres.ok) return;
	let test: HostedTest;
	let browser: Browser;
	let ada: { page: Page; context: BrowserContext };
	const contexts: BrowserContext[] = [];
	const complaints: string[] = [];

	/** A device of its own, with an authenticator that makes and shows passkeys as a phone's does (Chrome DevTools protocol, WebAuthn domain). */
	async function device(options: object = {}) {
		const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, locale: 'en-GB', ...options });
		contexts.push(context);
		context.setDefaultTimeout(180_000);
		const page = await context.newPage();
		page.on('pageerror', (error) => complaints.push(String(error)));
		page.on('console', (message) => {
			if (/Content Security Policy|Refused to/.test(message.text())) complaints.push(message.text());
		});
		const devtools = await context.newCDPSession(page);
		await devtools.send('WebAuthn.enable');
		await devtools.send('WebAuthn.addVirtualAuthenticator', {
			options: {
				protocol: 'ctap2',
				transport: 'internal',
				hasResidentKey: true,
				hasUserVerification: true,
				isUserVerified: true,
				automaticPresenceSimulation: true,
			},
		});
		return { page, context };
	}
	async function isSound(page: Page) {
		for (const colorScheme of ['dark', 'light'] as const) {
			await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
			const { violations } = await new AxeBuilder({ page }).exclude('.skip').exclude('[data-live-announcer]').analyze();
			expect(violations.map(({ id, nodes }) => `${colorScheme}: ${id}: ${nodes[0]?.html}`)).toEqual([]);
			const folder = process.env.DYELOT_PICTURES;
			if (folder) await page.screenshot({ path: `${folder}/hosted-${pictures++}-${colorScheme}.png`, fullPage: true });
		}
		const width = await page.evaluate(() => [document.documentElement.scrollWidth, window.innerWidth]);
		expect(width[0]).toBeLessThanOrEqual(width[1]!);
	}
	let pictures = 0;

	beforeAll(async () => {
		const port = await freePort();
		test = await hostedTestApp({
			connectionString: await postgres.newDatabase(),
			address: `http://localhost:${port}`,
			report: () => {},
		});
		await test.app.listen({ port, host: '127.0.0.1' });
		browser = await sharedBrowser();
		ada = await device();
	});
	afterAll(async () => {
		for (const context of contexts) await context.close();
		await test?.close();
	});

	it('lets its keeper in by the first link, with a passkey, by keyboard alone', async () => {
		const { page } = ada;
		await page.goto(await test.link());
		const name = page.getByLabel('Name');
		await name.waitFor();
		await isSound(page);
		await name.focus();
		await page.keyboard.type('Ada');
		await page.keyboard.press('Tab');
		await page.keyboard.press('Enter');
		await page.getByRole('heading', { name: 'Homes' }).waitFor();
		await page.getByRole('link', { name: 'My wardrobe' }).waitFor();
		await isSound(page);
	});

	it('knows the passkey again, after signing out', async () => {
		const { page } = ada;
		await page.goto(`${test.origin.origin}/account`);
		await page.getByRole('button', { name: 'Sign out' }).first().waitFor();
		await isSound(page);
		await page.getByRole('button', { name: 'Sign out' }).first().click();
		await page.getByRole('heading', { name: 'Sign in' }).waitFor();
		await isSound(page);
		await page.getByRole('button', { name: 'Sign in with a passkey' }).click();
		await page.getByRole('heading', { name: 'Homes' }).waitFor();
	});

	it('says that a device has its passkey already', async () => {
		const { page } = ada;
		await page.goto(`${test.origin.origin}/account`);
		await page.getByRole('button', { name: 'Add a passkey' }).click();
		await page.getByText('Expected a passkey that is new here').waitFor();
		await page.goto(test.origin.origin);
	});

	it('opens a home as the page that everybody knows, at an address of its own', async () => {
		const { page } = ada;
		await page.getByRole('link', { name: 'My wardrobe' }).click();
		await page.getByRole('heading', { name: /Plan one season/ }).waitFor();
		expect(new URL(page.url()).pathname).toMatch(/^\/homes\/[\w-]+\//);
		await isSound(page);
		await page.getByRole('link', { name: 'Homes' }).click();
		await page.getByRole('heading', { name: 'Homes' }).waitFor();
	});

	it('lets somebody else in by a link, with a password, on a phone in German', async () => {
		const { page } = ada;
		await page.getByRole('link', { name: 'People' }).click();
		await page.getByRole('button', { name: 'A link to let somebody in' }).click();
		const link = await page.getByLabel('Link', { exact: true }).inputValue();
		await isSound(page);
		const phone = await device({ viewport: { width: 360, height: 740 } });
		await phone.context.addInitScript(() => localStorage.setItem('dyelot-language', 'de'));
		await phone.page.goto(link);
		await phone.page.getByLabel('Name').fill('Bo');
		await phone.page.getByLabel('Passwort').fill(PASSWORD);
		await isSound(phone.page);
		await phone.page.getByRole('button', { name: 'Mit diesem Passwort hereinkommen' }).click();
		await phone.page
			.getByRole('link', { name: 'Meine Garderobe' })
			.or(phone.page.getByRole('link', { name: 'My wardrobe' }))
			.waitFor();
		await isSound(phone.page);
		await phone.page.getByRole('link', { name: 'Du', exact: true }).click();
		await phone.page.getByRole('heading', { name: 'Wo du angemeldet bist' }).waitFor();
		await isSound(phone.page);
		await phone.context.close();
	});

	it('lets a guest look at a home, says so, and keeps nothing of what the guest tries', async () => {
		const { page } = ada;
		await page.getByRole('link', { name: 'Homes' }).click();
		await page.getByRole('button', { name: 'Who may come into My wardrobe' }).click();
		await page.getByRole('button', { name: 'A link to let somebody look' }).click();
		const link = await page.getByLabel('Link', { exact: true }).inputValue();
		await isSound(page);
		const guest = await device();
		await guest.page.goto(link);
		await guest.page.getByText('You are let into “My wardrobe” to look at it.').waitFor();
		await guest.page.getByLabel('Name').fill('Cleo');
		await guest.page.getByRole('button', { name: 'Come in with a passkey' }).click();
		await guest.page.getByRole('link', { name: 'My wardrobe' }).click();
		await guest.page.getByText('You may look at “My wardrobe”').waitFor();
		await isSound(guest.page);
		await guest.context.close();
	});

	it('complains of nothing, and runs no code from elsewhere', () => {
		expect(complaints).toEqual([]);
	});
});
