/** How alone a coloured garment outside the palette stands. */
export type Loner = {
	readonly garmentId: string;
	/** 1 = the most alone. */
	readonly rank: number;
	/** True for at most three: those for which it holds in 70 % of re-reads. */
	readonly flagged: boolean;
	/** CIEDE2000 to the nearest colour of any possible partner. */
	readonly nearestDistance: number;
	/** The possible partner that has it. */
	readonly nearestGarmentId: string;
	readonly possiblePartners: number;
	/** Share of re-reads within the photos' trust in which it holds, 0..1; 0 where it does not hold even as read. */
	readonly held: number;
	/** `surer` where it also holds at the stricter distance. */
	readonly sureness: 'surer' | 'unsure';
	/** A question, never a verdict. */
	readonly sentence: string;
};
