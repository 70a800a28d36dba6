import { homedir } from 'node:os';
import { join } from 'node:path';

/** Where the home lies unless the user says otherwise: the platform's folder for a program's data. */
export function defaultHomePath(
	env: NodeJS.ProcessEnv = process.env,
	platform: NodeJS.Platform = process.platform,
): string {
	if (platform === 'win32') return join(env.LOCALAPPDATA ?? join(homedir(), 'AppData', 'Local'), 'Dyelot');
	if (platform === 'darwin') return join(homedir(), 'Library', 'Application Support', 'Dyelot');
	// XDG Base Directory Specification 0.8
	return join(env.XDG_DATA_HOME || join(homedir(), '.local', 'share'), 'dyelot');
}
