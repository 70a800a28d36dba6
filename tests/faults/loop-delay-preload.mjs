// Loaded into the server before its own code: writes the longest stretch (in ms) for which its event loop did nothing else into the file that
// DYELOT_LOOP_FILE names, each time it gets SIGUSR2, and begins anew.
import { writeFileSync } from 'node:fs';
import { monitorEventLoopDelay } from 'node:perf_hooks';

const RESOLUTION_MS = 5;
const delays = monitorEventLoopDelay({ resolution: RESOLUTION_MS });
delays.enable();
process.on('SIGUSR2', () => {
	writeFileSync(process.env.DYELOT_LOOP_FILE, String(Math.max(0, delays.max / 1e6 - RESOLUTION_MS)));
	delays.reset();
});
