import { rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, it } from 'vitest';
import { openFile } from '../../src/store/open-file.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

it('a file that is opened, given up and removed at once fails nobody; one that is not there is none', async () => {
	const path = join(temporaryFolder(), 'photo');
	for (let n = 0; n < 50; n++) {
		writeFileSync(path, 'cloth');
		const { sizeBytes, stream } = (await openFile(path))!;
		expect(sizeBytes).toBe(5);
		const closed = new Promise((resolve) => stream.once('close', resolve));
		stream.destroy();
		rmSync(path);
		await closed;
	}
	expect(await openFile(path)).toBeNull();
});
