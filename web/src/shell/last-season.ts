const KEY = 'dyelot-season';

/** The season that was open last on this device, or null. */
export function lastSeason(): string | null {
	try {
		return localStorage.getItem(KEY);
	} catch {
		// A browser that keeps nothing opens the newest season instead.
		return null;
	}
}

/** Remembers the season for the next start. */
export function rememberSeason(id: string): void {
	try {
		localStorage.setItem(KEY, id);
	} catch {
		// Nothing depends on it.
	}
}
