import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { loadDemo } from '../../app/load-demo.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { openServices } from '../../app/open-services.ts';
import { spoken, spokenJson } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import { UNASKED } from '../../store/store.ts';
import { seasonReport } from '../../wardrobe/season/report.ts';
import { parsedWords } from '../parsed-words.ts';
import { textOfReport } from '../report-text.ts';

/** `dyelot demo`: the demo scenario and its report, in a temporary home or one that is named. Your own home is not touched. */
export async function demoCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('demo', words);
	const homePath = values.home ?? mkdtempSync(join(tmpdir(), 'dyelot-demo-'));
	try {
		const services = await openServices({ homePath, share: false, log: console.error });
		try {
			if (!values.json) console.error(say('cli.readingDemo'));
			const season = await loadDemo(services, UNASKED);
			const input = await loadSeasonInput(services, season);
			const report = seasonReport(input);
			console.log(values.json ? spokenJson(JSON.stringify(report)) : spoken(textOfReport(report, input.wishes)));
			return 0;
		} finally {
			await services.close();
		}
	} finally {
		if (values.home === undefined) await rm(homePath, { recursive: true, force: true });
	}
}
