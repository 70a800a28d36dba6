import { type ChildProcess, spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import type { APIRequestContext } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, launch } from '../support/launch-browser.ts';
import { bareSystem } from './bare-system.ts';
import { stagedFolder, targetsMade } from './staged.ts';

/** Garments whose colours were read from a photo. */
async function garmentsRead(request: APIRequestContext, address: string): Promise<number> {
	const garments = (await (await request.get(`${address}api/garments`)).json()) as { swatches: unknown[] }[];
	return garments.filter(({ swatches }) => swatches.length > 0).length;
}

const here = targetsMade().find(({ platform, arch }) => platform === process.platform && arch === process.arch);
/** Making a folder the root of a process is the administrator's right. */
const canChangeRoot = process.platform === 'linux' && process.getuid?.() === 0;

describe.skipIf(!here || !canChangeRoot)('the download on a bare system', () => {
	let root: string;
	let program: ChildProcess;
	let address: string;
	let said = '';

	beforeAll(async () => {
		root = bareSystem(stagedFolder(here!));
		program = spawn('/usr/sbin/chroot', [root, '/bin/sh', '/dyelot/dyelot.sh', '--port', '0', '--home', '/root/home'], {
			env: { HOME: '/root', PATH: '/bin:/usr/bin' },
			stdio: ['ignore', 'pipe', 'pipe'],
		});
		address = await new Promise<string>((resolve, reject) => {
			const hear = (chunk: Buffer) => {
				said += chunk.toString();
				const [found] = said.match(/http:\/\/localhost:\d+\//) ?? [];
				if (found) resolve(found);
			};
			program.stdout!.on('data', hear);
			program.stderr!.on('data', hear);
			program.once('error', reject);
			program.once('exit', (code) => reject(new Error(`The program ended with ${code}:\n${said}`)));
		});
	}, 300_000);

	afterAll(() => {
		program?.removeAllListeners('exit');
		program?.kill('SIGKILL');
		if (root) rmSync(root, { recursive: true, force: true });
	}, 120_000);

	it('starts by its start file alone and reads photos in a real browser', async () => {
		const browser = await launch(await findBrowser());
		try {
			const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
			await page.goto(address);
			await page.getByRole('button', { name: 'Open the demo' }).click();
			await expect
				.poll(() => garmentsRead(page.request, address), { timeout: 280_000, interval: 1_000 })
				.toBeGreaterThan(30);
			await page.getByRole('link', { name: 'Garments' }).first().click();
			await page.getByRole('img').first().waitFor();
		} finally {
			await browser.close();
		}
	}, 300_000);

	it('says where to go where no browser can be opened', () => {
		expect(said).toContain('open http://localhost:');
	});
});
