// Loaded before the program: every sync of a file takes as long as on a worn-out card.
import fs from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import { setTimeout as wait } from 'node:timers/promises';

const SYNC_MS = 400;
const { open } = fs.promises;
fs.promises.open = async (...words) => {
	const handle = await open(...words);
	const { sync } = handle;
	handle.sync = async () => {
		await wait(SYNC_MS);
		await sync.call(handle);
	};
	return handle;
};
syncBuiltinESMExports();
