import type { Locator, Page } from 'playwright-core';

/** Far more stops than any page has: a keyboard trap or something out of reach ends here. */
const MOST_STOPS = 600;

/** Presses Tab until the element has the focus. */
export async function tabTo(page: Page, target: Locator): Promise<void> {
	await target.waitFor({ state: 'attached' });
	for (let stop = 0; stop < MOST_STOPS; stop++) {
		if (await target.evaluate((element) => element === document.activeElement)) return;
		await page.keyboard.press('Tab');
	}
	throw new Error(`Expected to reach ${target} by Tab; ${MOST_STOPS} stops did not.`);
}
