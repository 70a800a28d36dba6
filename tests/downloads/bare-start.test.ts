import { type ChildProcess, spawn } from 'node:child_process';
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import sharp from 'sharp';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { findBrowser, launch } from '../support/launch-browser.ts';
import { bareSystem } from './bare-system.ts';
import { stagedFolder, targetsMade } from './staged.ts';

/** Garments whose colours were read from a photo. Asked from here: the program answers a browser only on behalf of its own page. */
async function garmentsRead(address: string): Promise<number> {
	const answer = await fetch(`${address}api/garments`);
	expect(answer.status).toBe(200);
	const garments = (await answer.json()) as { swatches: unknown[] }[];
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
	});

	afterAll(() => {
		program?.removeAllListeners('exit');
		program?.kill('SIGKILL');
		if (root) rmSync(root, { recursive: true, force: true });
	});

	it('starts by its start file alone and reads photos in a real browser', async () => {
		const browser = await launch(await findBrowser());
		try {
			const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
			await page.goto(address);
			await page.getByRole('button', { name: 'Open the demo' }).click();
			await expect.poll(() => garmentsRead(address)).toBeGreaterThan(30);
			await page.getByRole('link', { name: 'Garments' }).first().click();
			await page.getByRole('img').first().waitFor();
			// The demo comes with its readings: a photo that it does not have is read by the networks of this download.
			const before = await garmentsRead(address);
			const buffer = await sharp(fileURLToPath(new URL('../../demo-images/g01-cream-linen-shirt.jpg', import.meta.url)))
				.flop()
				.jpeg()
				.toBuffer();
			const input = page.getByLabel('Add garments', { exact: true }).locator('input[type=file]').first();
			await input.setInputFiles([{ name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer }]);
			await expect.poll(() => garmentsRead(address)).toBe(before + 1);
		} finally {
			await browser.close();
		}
	});

	it('says where to go where no browser can be opened', () => {
		expect(said).toContain('open http://localhost:');
	});
});
