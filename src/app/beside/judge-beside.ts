import { Piscina } from 'piscina';
import { say, spokenLanguage } from '../../language/speak.ts';
import { createTurns } from '../../photo/readers/turns.ts';
import { programBeside } from '../../process/program-beside.ts';
import type { SeasonInput } from '../../wardrobe/words/season-input.ts';
import { UserError } from '../errors.ts';
import { type Judge, judgeHere } from '../judging.ts';
import type { JudgeTask } from './judge-worker.ts';

/** From so much on a thread judges: about a twentieth of a second of work, see bench/NOTES.md. */
const LARGE = 400;
/** Days worn are cheap beside garments and pictures, which are held against each other. */
const WEARS_A_GARMENT = 50;

/** Much longer than anything of the design size takes (2,000 garments: a second or two). */
const LONGEST_SECONDS = 60;

/** How long an idle thread is kept for the next. */
const WARM_MS = 60_000;

const sizeOf = ({ garments, inspirations, candidates, wears }: SeasonInput): number =>
	garments.length + inspirations.length + candidates.length + wears.length / WEARS_A_GARMENT;

/** Judges in threads what is large, so that nobody else waits for it. */
export type JudgeBeside = {
	readonly judge: Judge;
	close(): Promise<void>;
};

/**
 * `threads` = judgements side by side; they are started when first needed. What takes longer than `longestSeconds` is stopped, with a `UserError`. `large` = from which
 * size on a thread judges.
 */
export function createJudgeBeside(settings: {
	readonly threads: number;
	readonly large?: number;
	readonly longestSeconds?: number;
	readonly warmMs?: number;
}): JudgeBeside {
	const { threads, large = LARGE, longestSeconds = LONGEST_SECONDS, warmMs = WARM_MS } = settings;
	let pool: Piscina<JudgeTask, unknown> | null = null;
	// Here and not in the pool, so that the time measures the work and not the queue.
	const turns = createTurns(threads);

	function start(): Piscina<JudgeTask, unknown> {
		const program = programBeside(import.meta.url, 'judge-worker');
		return new Piscina<JudgeTask, unknown>({
			filename: program.path,
			execArgv: [...program.execArgv],
			minThreads: 0,
			maxThreads: threads,
			idleTimeout: warmMs,
		});
	}
	async function judgeInThread(task: JudgeTask, signal: AbortSignal | null): Promise<unknown> {
		signal?.throwIfAborted();
		pool ??= start();
		const tooLong = AbortSignal.timeout(longestSeconds * 1000);
		try {
			return await pool.run(task, { signal: AbortSignal.any(signal ? [signal, tooLong] : [tooLong]) });
		} catch (error) {
			if (!tooLong.aborted) throw error;
			throw new UserError('too-large', say('refusals.tooLongToJudge', { seconds: longestSeconds }));
		}
	}
	const judge: Judge = (name, input, asked, signal = null) => {
		if (sizeOf(input) < large) return judgeHere(name, input, asked, signal);
		const task: JudgeTask = { language: spokenLanguage(), name, input, asked };
		return turns.take(() => judgeInThread(task, signal)) as ReturnType<typeof judge> as never;
	};
	return { judge, close: async () => void (await pool?.destroy()) };
}
