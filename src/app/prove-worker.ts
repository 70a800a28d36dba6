import highsModule from 'highs';
import type { ProofAnswer, ProofTask } from './proof-task.ts';

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
