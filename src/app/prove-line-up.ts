import { Piscina } from 'piscina';
import { programBeside } from '../process/program-beside.ts';
import { type LineUpResult, provenResult, standingSet } from '../wardrobe/line-up/line-up.ts';
import type { LineUpRequest } from '../wardrobe/line-up/line-up-choices.ts';
import { columnOf, lineUpModel } from '../wardrobe/line-up/line-up-model.ts';
import { bestSet } from '../wardrobe/line-up/line-up-search.ts';
import { lineUpSetup } from '../wardrobe/line-up/line-up-setup.ts';
import type { SeasonInput } from '../wardrobe/words/season-input.ts';
import type { ProofAnswer, ProofTask } from './proof-task.ts';

/** Long enough for nearly all wardrobes of 60 garments (4 to 11 s measured); larger ones get a bound. */
const PROOF_SECONDS = 15;

/**
 * How good a set is, and a better one where there is one, by HiGHS within `seconds`: the set `garmentIds` as it stands, or the one that `buildLineUp` finds where none is given. The solver runs in
 * a thread of its own, started for the purpose and stopped when done or when `signal` says so.
 */
export async function proveLineUp(
	input: SeasonInput,
	request: LineUpRequest,
	{
		seconds = PROOF_SECONDS,
		signal = null,
		garmentIds = [],
	}: {
		readonly seconds?: number;
		readonly signal?: AbortSignal | null;
		readonly garmentIds?: readonly string[];
	} = {},
): Promise<LineUpResult> {
	const setup = lineUpSetup(input, request);
	const { problem } = setup;
	const found = bestSet(problem);
	const standing = garmentIds.length > 0 ? standingSet(setup, garmentIds) : found;
	if (problem.slots.length === 0 || found.objective >= problem.bound) return provenResult(setup, standing, found, null);
	const task: ProofTask = {
		model: lineUpModel(problem),
		start: found.members.map(columnOf),
		columns: problem.slots.map((_, member) => columnOf(member)),
		seconds,
	};
	const program = programBeside(import.meta.url, 'prove-worker');
	const pool = new Piscina<ProofTask, ProofAnswer>({
		filename: program.path,
		execArgv: [...program.execArgv],
		maxThreads: 1,
	});
	try {
		return provenResult(setup, standing, found, await pool.run(task, { signal }));
	} finally {
		await pool.destroy();
	}
}
