import { afterAll, describe, expect, it } from 'vitest';
import { generatedBoard, generatedWardrobe } from '../../../bench/generated-wardrobe.ts';
import { createJudgeBeside } from '../../../src/app/beside/judge-beside.ts';
import { JUDGEMENTS, type Judge, type JudgementName, judgeHere } from '../../../src/app/judging.ts';
import { speak } from '../../../src/language/speak.ts';
import { aCandidate, aSeasonInput } from '../../support/build-season.ts';

const garments = generatedWardrobe(30, 'judged beside');
const inspirations = generatedBoard(6, 'judged beside').map((reading, index) => ({
	inspiration: { id: `i${index}`, seasonId: 'spring', photoId: `p${index}`, title: '', group: '', addedAt: '' },
	reading,
}));
const input = aSeasonInput({ garments, inspirations, candidates: [aCandidate()] });
const request = { quotas: input.season.quotas, targetCount: 20, mustKeep: [], neverUse: [] };
const garmentIds = garments.slice(0, 12).map(({ id }) => id);

/** One question for each judgement. */
const QUESTIONS: { readonly [Name in JudgementName]: Parameters<(typeof JUDGEMENTS)[Name]>[1] } = {
	report: null,
	gapIds: null,
	partners: garments[0]!.id,
	candidate: 'candidate',
	swaps: { garmentIds, garmentId: garmentIds[0]! },
	whatIf: { garmentIds, remove: garmentIds.slice(0, 1), add: [garments[20]!.id] },
	lineUp: request,
	proof: { request, garmentIds },
};
const ask = (judge: Judge, name: JudgementName) => judge(name, input, QUESTIONS[name] as never);

describe('a large home', () => {
	const beside = createJudgeBeside({ threads: 2, large: 1 });
	const near = createJudgeBeside({ threads: 1, large: 1000 });
	afterAll(async () => {
		speak('en-GB');
		await beside.close();
		await near.close();
	});

	it.each(Object.keys(JUDGEMENTS) as JudgementName[])('is judged in a thread as it is here: %s', async (name) => {
		expect(await ask(beside.judge, name)).toEqual(await ask(judgeHere, name));
	});

	it('is judged in the language of whoever asks', async () => {
		speak('de');
		const [there, here] = await Promise.all([ask(beside.judge, 'report'), ask(judgeHere, 'report')]).finally(() =>
			speak('en-GB'),
		);
		expect(there).toEqual(here);
		expect(there).not.toEqual(await ask(judgeHere, 'report'));
	});

	it('keeps nothing else waiting, while a small one is judged at once', async () => {
		/** Whether anything else had its turn before the answer. */
		const yields = async (judge: Judge) => {
			let hadTurn = false;
			setImmediate(() => {
				hadTurn = true;
			});
			await ask(judge, 'report');
			return hadTurn;
		};
		expect(await yields(beside.judge)).toBe(true);
		expect(await yields(near.judge)).toBe(false);
	});

	it('is given up in words where it takes too long, and the next is judged', async () => {
		const hurried = createJudgeBeside({ threads: 1, large: 1, longestSeconds: 0.001 });
		await expect(ask(hurried.judge, 'report')).rejects.toMatchObject({
			code: 'too-large',
			message: expect.stringMatching(/^Expected a season that can be judged .+; .+\. /),
		});
		await hurried.close();
		expect(await ask(beside.judge, 'gapIds')).toEqual(await ask(judgeHere, 'gapIds'));
	});

	it('is given up where nobody waits any more', async () => {
		const leaving = new AbortController();
		const judged = beside.judge('lineUp', input, request, leaving.signal);
		leaving.abort();
		await expect(judged).rejects.toThrow(/abort/i);
		expect(await ask(beside.judge, 'lineUp')).toEqual(await ask(judgeHere, 'lineUp'));
	});
});
