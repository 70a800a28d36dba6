import { existsSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium } from 'playwright-core';

/** Where to find a browser, or why there is none. Plain data, so that a global set-up can hand it to the tests. */
export type BrowserPlace =
	| {
			readonly ok: true;
			readonly executablePath?: string;
			readonly channel?: string;
			readonly args: readonly string[];
			readonly env: Readonly<Record<string, string>>;
	  }
	| { readonly ok: false; readonly message: string };

/** The package's own list is for a host with one process a function, where a page of ours crashes; these are enough elsewhere. */
const PACKED_ARGS = ['--no-sandbox', '--disable-dev-shm-usage', '--disable-gpu'];

const cache = fileURLToPath(new URL('../../node_modules/.cache/dyelot-browser/', import.meta.url));

/** A font configuration that finds the font in the package and the system's: the package's own looks elsewhere, and without any font a select crashes the page. */
async function fontFolder(): Promise<string> {
	const folder = join(cache, 'fontconfig');
	await mkdir(folder, { recursive: true });
	const places = [join(cache, 'fonts'), '/usr/share/fonts'].map((place) => `<dir>${place}</dir>`).join('');
	await writeFile(
		join(folder, 'fonts.conf'),
		`<?xml version="1.0"?><!DOCTYPE fontconfig SYSTEM "fonts.dtd"><fontconfig>${places}<cachedir>${join(folder, 'seen')}</cachedir></fontconfig>`,
	);
	return folder;
}

/**
 * Unpacks the Chromium that comes as a package (Linux x64), libraries included. The package decides on import what to unpack
 * and where, by the environment of a serverless host; that is set for the import only, and handed to the browser alone.
 */
async function unpackedChromium(): Promise<BrowserPlace> {
	await mkdir(cache, { recursive: true });
	const before = { ...process.env };
	process.env.AWS_EXECUTION_ENV = 'AWS_Lambda_nodejs20.x';
	process.env.TMPDIR = cache;
	try {
		const { default: packed } = await import('@sparticuz/chromium');
		const executablePath = await packed.executablePath();
		const env = { LD_LIBRARY_PATH: process.env.LD_LIBRARY_PATH ?? '', FONTCONFIG_PATH: await fontFolder() };
		return { ok: true, executablePath, args: PACKED_ARGS, env };
	} finally {
		for (const name of Object.keys(process.env)) if (!(name in before)) delete process.env[name];
		Object.assign(process.env, before);
	}
}

/** A browser of this machine: an installed Chrome, else the packed Chromium where it runs. */
export async function findBrowser(): Promise<BrowserPlace> {
	const given = process.env.DYELOT_BROWSER;
	if (given) {
		return existsSync(given)
			? { ok: true, executablePath: given, args: [], env: {} }
			: { ok: false, message: `Expected a browser at DYELOT_BROWSER; there is none at ${given}.` };
	}
	if (process.platform === 'linux' && process.arch === 'x64') return unpackedChromium();
	const place: BrowserPlace = { ok: true, channel: 'chrome', args: [], env: {} };
	try {
		await (await launch(place)).close();
		return place;
	} catch {
		return {
			ok: false,
			message:
				'Expected an installed Chrome for the tests in a browser; none was found. They are skipped: install Chrome, or set DYELOT_BROWSER.',
		};
	}
}

/** Starts the browser that {@link findBrowser} found. */
export function launch(place: BrowserPlace): Promise<Browser> {
	if (!place.ok) throw new Error(place.message);
	const { executablePath, channel, args, env } = place;
	return chromium.launch({
		...(executablePath ? { executablePath } : {}),
		...(channel ? { channel } : {}),
		timeout: 180_000,
		args: [...args],
		env: { ...(process.env as Record<string, string>), ...env },
	});
}
