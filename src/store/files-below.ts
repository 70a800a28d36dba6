import { readdir } from 'node:fs/promises';
import { join } from 'node:path';

/** All files below a folder, absolute and in order; none where the folder is not there. */
export async function filesBelow(folder: string): Promise<string[]> {
	try {
		const entries = await readdir(folder, { recursive: true, withFileTypes: true });
		return entries
			.filter((entry) => entry.isFile())
			.map((entry) => join(entry.parentPath, entry.name))
			.sort();
	} catch (error) {
		if ((error as NodeJS.ErrnoException).code === 'ENOENT') return [];
		throw error;
	}
}
