import { useSyncExternalStore } from 'react';
import { RequestProblem } from './request.ts';

let needed = false;
const listeners = new Set<() => void>();

/** Notes from a failed request that the program does not know this device. */
export function noteProblem(problem: unknown): void {
	if (needed || !(problem instanceof RequestProblem) || problem.code !== 'not-paired') return;
	needed = true;
	for (const listener of listeners) listener();
}

/** Whether this device must give the code before anything of the wardrobe can be shown. */
export const usePairingNeed = (): boolean =>
	useSyncExternalStore(
		(listener) => {
			listeners.add(listener);
			return () => void listeners.delete(listener);
		},
		() => needed,
	);
