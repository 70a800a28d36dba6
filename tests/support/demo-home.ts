import { cpSync, existsSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { serve } from '../../src/server/serve.ts';

/**
 * Puts a copy of a home with the demo loaded into `to`. Reading the demo's fifty photos takes half a minute, so the first who asks
 * loads it into `from`, a folder that all test files of one run share, and the others get copies.
 */
export async function copyDemoHome(from: string, to: string): Promise<void> {
	const loaded = join(from, 'loaded');
	const home = join(from, 'home');
	if (!existsSync(loaded)) {
		const server = await serve({ homePath: home, port: 0, share: false, log: () => {} });
		const answer = await fetch(new URL('/api/demo', server.address), { method: 'POST' });
		if (!answer.ok) throw new Error(`Expected the demo to load; came ${answer.status} ${await answer.text()}`);
		await server.services.jobs.settled();
		await server.close();
		writeFileSync(loaded, '');
	}
	cpSync(home, to, { recursive: true });
}
