/** A model to solve, and the set already found. */
export type ProofTask = {
	/** CPLEX LP text, maximising. */
	readonly model: string;
	/** Columns that are 1 in the set already found; all other columns that count are worked out from them. */
	readonly start: readonly string[];
	/** Columns asked for in the answer. */
	readonly columns: readonly string[];
	readonly seconds: number;
};

/** What the solver came to within its time. */
export type ProofAnswer = {
	/** No solution can be worth more. */
	readonly bound: number;
	/** Columns that are 1 in the best solution found; null where none was found. */
	readonly chosen: readonly string[] | null;
};
