import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import type { StartOptions } from '../../bench/server-process.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

/** How a server is started so that its stalls are seen, and how they are asked for. */
export type StallWatch = {
	readonly start: Required<Pick<StartOptions, 'nodeWords' | 'env'>>;
	/** The longest stretch since it was last asked for in which the server did one thing alone. */
	longestStallMs(pid: number): Promise<number>;
};

export function stallWatch(): StallWatch {
	const file = join(temporaryFolder(), 'stall');
	return {
		start: {
			nodeWords: ['--import', new URL('./loop-delay-preload.mjs', import.meta.url).href],
			env: { DYELOT_LOOP_FILE: file },
		},
		async longestStallMs(pid) {
			rmSync(file, { force: true });
			process.kill(pid, 'SIGUSR2');
			while (!existsSync(file) || readFileSync(file, 'utf8') === '') await pause(20);
			return Number(readFileSync(file, 'utf8'));
		},
	};
}
