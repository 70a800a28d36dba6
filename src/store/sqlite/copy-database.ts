import { backup, DatabaseSync } from '@photostructure/sqlite';

/** Copies a database as it is at one moment into one file, page by page in a thread, while others go on writing to it. */
export async function copyDatabase(from: string, to: string): Promise<void> {
	// A reader of its own: over the program's own connection the copy could begin in the middle of a decision.
	const reader = new DatabaseSync(from, { readOnly: true });
	try {
		await backup(reader, to, { rate: -1 });
	} finally {
		reader.close();
	}
	const copy = new DatabaseSync(to);
	try {
		// One file, no write-ahead log beside it.
		copy.exec('PRAGMA journal_mode = DELETE');
	} finally {
		copy.close();
	}
}
