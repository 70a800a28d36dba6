import { readdirSync, readlinkSync } from 'node:fs';

/** Files below a folder that this process holds open (Linux). */
export function openFilesBelow(folder: string): string[] {
	return readdirSync('/proc/self/fd').flatMap((handle) => {
		try {
			const path = readlinkSync(`/proc/self/fd/${handle}`);
			return path.startsWith(`${folder}/`) ? [path] : [];
		} catch {
			// Closed between listing and looking.
			return [];
		}
	});
}
