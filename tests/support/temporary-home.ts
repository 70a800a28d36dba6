import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';

const made: string[] = [];

// After all tests of the file, since an application may be shared by them: its database must still be there when it is closed.
afterAll(() => {
	for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
});

/** An empty folder that is gone after the tests of the file. */
export function temporaryFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-test-'));
	made.push(folder);
	return folder;
}
