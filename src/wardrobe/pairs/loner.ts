/** How alone a coloured garment outside the palette stands. */
export type Loner = {
	readonly garmentId: string;
	/** 1 = the most alone. */
	readonly rank: number;
	/** True for at most three, the most alone of those for which it holds in 70 % of re-reads. */
	readonly flagged: boolean;
	/** How alone, see `alonenessOf`. */
	readonly aloneness: number;
	/** CIEDE2000 to the nearest main colour of a possible partner. */
	readonly nearestDistance: number;
	/** The possible partner that could carry it. */
	readonly carrierId: string;
	readonly possiblePartners: number;
	/** Share of re-reads within the photos' trust in which it holds, 0..1; 0 where it does not hold even as read. */
	readonly held: number;
	/** `surer` where it holds in nearly all re-reads. */
	readonly sureness: 'surer' | 'unsure';
	/** A question, never a verdict. */
	readonly sentence: string;
};
