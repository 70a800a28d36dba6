import { Piscina } from 'piscina';
import { spokenLanguage } from '../../language/speak.ts';
import { programBeside } from '../../process/program-beside.ts';
import { UserError } from '../errors.ts';
import type { EventHub } from '../events.ts';
import type { LargeOutcome, LargeTask, LargeWork } from './large-work.ts';

/**
 * Does large work on the home in a thread of its own, one after the other; the thread is started for it and stopped after. What it tells is told
 * here: events to the open pages, photos to `enqueue`, refusals as the `UserError` that they were.
 */
export function workBeside(
	homePath: string,
	{ events, enqueue }: { readonly events: EventHub; readonly enqueue: (photoId: string) => Promise<void> },
): (work: LargeWork) => Promise<unknown> {
	let before: Promise<unknown> = Promise.resolve();
	async function carryOut(task: LargeTask): Promise<unknown> {
		const program = programBeside(import.meta.url, 'worker');
		const thread = new Piscina<LargeTask, LargeOutcome>({
			filename: program.path,
			execArgv: [...program.execArgv],
			maxThreads: 1,
		});
		try {
			const outcome = await thread.run(task);
			for (const event of outcome.events) events.send(event);
			for (const id of outcome.toRead) await enqueue(id);
			if (outcome.ok) return outcome.answer;
			throw new UserError(outcome.code, outcome.message, { details: outcome.details });
		} finally {
			await thread.destroy();
		}
	}
	return (work) => {
		const task: LargeTask = { homePath, language: spokenLanguage(), work };
		const done = before.then(() => carryOut(task));
		before = done.catch(() => {});
		return done;
	};
}
