import type { Kysely } from 'kysely';
import { checkPhotoFiles } from './check-photo-files.ts';
import { setUnreadableAside } from './check-rows.ts';
import type { Tables } from './schema.ts';

/**
 * What start-up looks for: rows that cannot be read, photo files without a row, rows without their file. It repairs what it can and
 * deletes nothing that a user gave us. One sentence for each finding; empty when all is well.
 */
export async function checkHome(homePath: string, db: Kysely<Tables>, now: () => Date): Promise<string[]> {
	return [...(await setUnreadableAside(db, now)), ...(await checkPhotoFiles(homePath, db))];
}
