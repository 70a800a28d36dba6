/** One day a garment was worn. */
export type Wear = {
	readonly garmentId: string;
	/** ISO date. */
	readonly on: string;
};

/** What the user said of two garments together; wins over every computed support. */
export type PairWord = {
	readonly garmentA: string;
	readonly garmentB: string;
	readonly word: 'approved' | 'refused';
};
