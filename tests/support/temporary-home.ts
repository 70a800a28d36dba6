import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach } from 'vitest';

const made: string[] = [];

afterEach(() => {
	for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** An empty folder that is gone after the test. */
export function temporaryFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-test-'));
	made.push(folder);
	return folder;
}
