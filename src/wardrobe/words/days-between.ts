const DAY_MS = 24 * 60 * 60 * 1000;

/** Whole days from one ISO date to another; negative when the second is earlier. */
export const daysBetween = (from: string, to: string): number =>
	Math.round((Date.parse(to) - Date.parse(from)) / DAY_MS);
