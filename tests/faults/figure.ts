/** One measured figure of the faults suite, beside what it must be. */
export type Figure = {
	readonly what: string;
	readonly found: string;
	readonly asked: string;
	readonly met: boolean;
};

/** A section's figures, or why it cannot be run on this machine. */
export type Figures = { readonly figures: readonly Figure[] } | { readonly skipped: string };

/** A figure that counts faults: none may be there. The first few are told. */
export const noneOf = (what: string, faults: readonly string[]): Figure => ({
	what,
	found: faults.length === 0 ? '0' : `${faults.length}: ${faults.slice(0, 3).join(' | ')}`,
	asked: '0',
	met: faults.length === 0,
});

/** A figure that shows the section did what it was there for: at least `least`. */
export const atLeast = (what: string, found: number, least: number): Figure => ({
	what,
	found: String(found),
	asked: `${least} or more`,
	met: found >= least,
});
