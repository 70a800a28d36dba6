import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const made: string[] = [];

/** An empty folder that is gone after the tests of the file. */
export function temporaryFolder(): string {
	const folder = mkdtempSync(join(tmpdir(), 'dyelot-test-'));
	made.push(folder);
	return folder;
}

/** For after all tests of a file: an application may be shared by them, and its database must still be there when it is closed. */
export function removeTemporaryFolders(): void {
	for (const folder of made.splice(0)) rmSync(folder, { recursive: true, force: true });
}
