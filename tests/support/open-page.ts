import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Browser, BrowserContext, BrowserContextOptions, Page } from 'playwright-core';
import { inject } from 'vitest';
import { say } from '../../src/language/speak.ts';
import { type RunningServer, serve } from '../../src/server/serve.ts';
import { copyDemoHome } from './demo-home.ts';
import { launch } from './launch-browser.ts';
import { sharedReaders } from './shared-readers.ts';

/** Whether this machine has a browser; tests in one are skipped without. */
export const hasBrowser = (): boolean => inject('browserPlace').ok;

export type OpenedPage = {
	readonly page: Page;
	/** Requests that went to any other host: none may. */
	readonly foreign: readonly string[];
	/** What the page complained of: errors, refused scripts and styles, answers of 400 and more. */
	readonly complaints: readonly string[];
};

export type Site = {
	readonly address: string;
	readonly services: RunningServer['services'];
	/** A fresh page, as on a device of its own; `from` is the address that it will use, this computer's own unless said. */
	open(options?: BrowserContextOptions, from?: string): Promise<OpenedPage>;
	close(): Promise<void>;
};

/** Whether the program tells of a fault of its own. */
const isFault = (sentence: string): boolean =>
	(['refusals.faultOfPhoto', 'refusals.faultOfDevice'] as const).some((key) =>
		sentence.startsWith(say(key, { error: '' })),
	);

let browser: Promise<Browser> | null = null;

/** The browser of all files of a worker, which ends with the worker: starting one takes seconds. Each page has cookies and storage of its own. */
export function sharedBrowser(): Promise<Browser> {
	browser ??= launch(inject('browserPlace'));
	return browser;
}

/** The program over a new home, empty or with the demo, listening on a free port, and a browser to look at it. */
export async function openSite({ demo = false, share = false } = {}): Promise<Site> {
	const said: string[] = [];
	// Lives as long as the site, over several tests.
	const homePath = mkdtempSync(join(tmpdir(), 'dyelot-site-'));
	if (demo) await copyDemoHome(inject('demoFolder'), homePath);
	const server = await serve({
		homePath,
		port: 0,
		share,
		log: (sentence) => said.push(sentence),
		pool: sharedReaders(),
	});
	const browser = await sharedBrowser();
	const contexts: BrowserContext[] = [];
	return {
		address: server.address.replace(/\/$/, ''),
		services: server.services,
		async open(options = {}, from = server.address) {
			const own = new URL(from).host;
			const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, locale: 'en-GB', ...options });
			contexts.push(context);
			// Two seconds of a free machine can be a minute of a busy one: that is no fault of the page.
			context.setDefaultTimeout(180_000);
			const page = await context.newPage();
			const foreign: string[] = [];
			const complaints: string[] = [];
			page.on('request', (request) => {
				const url = new URL(request.url());
				if (url.host !== own && url.protocol !== 'blob:' && url.protocol !== 'data:') foreign.push(request.url());
			});
			page.on(
				'console',
				(message) => message.type() === 'error' && complaints.push(`${message.text()} ${message.location().url}`),
			);
			page.on('pageerror', (error) => complaints.push(String(error)));
			return { page, foreign, complaints };
		},
		async close() {
			for (const context of contexts) await context.close();
			await server.close();
			rmSync(homePath, { recursive: true, force: true });
			const faults = said.filter(isFault);
			if (faults.length > 0) throw new Error(faults.join('\n'));
		},
	};
}
