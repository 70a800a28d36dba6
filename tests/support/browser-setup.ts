import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';
import { type BrowserPlace, findBrowser } from './launch-browser.ts';

declare module 'vitest' {
	interface ProvidedContext {
		browserPlace: BrowserPlace;
		/** Empty folder of this run, where the demo is loaded once for all files. */
		demoFolder: string;
	}
}

/** Finds a browser once for all test files: unpacking it takes seconds and must not run twice at a time. */
export default async function setup(project: TestProject): Promise<() => void> {
	const place = await findBrowser();
	if (!place.ok) console.warn(place.message);
	project.provide('browserPlace', place);
	const demoFolder = mkdtempSync(join(tmpdir(), 'dyelot-demo-'));
	project.provide('demoFolder', demoFolder);
	return () => rmSync(demoFolder, { recursive: true, force: true });
}
