import { mkdtempSync } from 'node:fs';
import { rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { loadDemo } from '../../app/load-demo.ts';
import { loadSeasonInput } from '../../app/load-season.ts';
import { openServices } from '../../server/serve.ts';
import { seasonReport } from '../../wardrobe/season/report.ts';
import { textOfReport } from '../report-text.ts';

/** `dyelot demo`: the demo scenario in a temporary home, and its report. Your own home is not touched. */
export async function demoCommand(words: string[]): Promise<number> {
	const { values } = parseArgs({ args: words, options: { json: { type: 'boolean', default: false } } });
	const homePath = mkdtempSync(join(tmpdir(), 'dyelot-demo-'));
	const services = await openServices({ homePath, share: false, log: console.error });
	try {
		if (!values.json) console.error('Reading the demo pictures ...');
		const season = await loadDemo(services);
		const report = seasonReport(await loadSeasonInput(services, season));
		console.log(values.json ? JSON.stringify(report) : textOfReport(report));
		return 0;
	} finally {
		await services.close();
		await rm(homePath, { recursive: true, force: true });
	}
}
