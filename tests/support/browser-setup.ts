import type { TestProject } from 'vitest/node';
import { type BrowserPlace, findBrowser } from './launch-browser.ts';

declare module 'vitest' {
	interface ProvidedContext {
		browserPlace: BrowserPlace;
	}
}

/** Finds a browser once for all test files: unpacking it takes seconds and must not run twice at a time. */
export default async function setup(project: TestProject): Promise<void> {
	const place = await findBrowser();
	if (!place.ok) console.warn(place.message);
	project.provide('browserPlace', place);
}
