import highsModule from 'highs';

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

// The package's types describe its CommonJS build, where the loader is the property `default`; Node imports the ES module.
const loadHighs = highsModule as unknown as typeof highsModule.default;

/** Solves the model. Blocks its thread until done or out of time, so it runs in a worker thread; see `prove-line-up.ts`. */
export default async function solve({ model, start, columns, seconds }: ProofTask): Promise<ProofAnswer> {
	const highs = await loadHighs();
	return highs.withModel({ format: 'lp', data: model }, (solver) => {
		// Two sets may differ by very little in fit, so "best" is proven to the last digit rather than to HiGHS's usual 0.01 %.
		solver.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 1e-9 });
		const indices = start.map((column) => solver.getColByName(column));
		solver.setSolution({ indices, values: indices.map(() => 1) });
		solver.run();
		const bound = Number(solver.info.get('mip_dual_bound'));
		const { colValue } = solver.getSolution();
		const chosen = columns.filter((column) => (colValue[solver.getColByName(column)] ?? 0) > 0.5);
		return { bound, chosen: chosen.length > 0 ? chosen : null };
	});
}
