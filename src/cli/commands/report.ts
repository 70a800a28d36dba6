import { loadSeasonInput } from '../../app/load-season.ts';
import { spoken, spokenJson } from '../../language/kept-sentence.ts';
import { say } from '../../language/speak.ts';
import { requireHome } from '../../store/home-folder.ts';
import { DATABASE_FILE, openHome } from '../../store/open-home.ts';
import { defaultHomePath } from '../../store/paths.ts';
import { seasonReport } from '../../wardrobe/season/report.ts';
import { parsedWords } from '../parsed-words.ts';
import { textOfReport } from '../report-text.ts';

/** `dyelot report`: the newest season that is not archived, or the one named. */
export async function reportCommand(words: readonly string[]): Promise<number> {
	const { values } = parsedWords('report', words);
	const now = () => new Date();
	const homePath = values.home ?? defaultHomePath();
	await requireHome(homePath, DATABASE_FILE);
	const home = await openHome(homePath, { now });
	try {
		const seasons = (await home.store.seasons.list()).sort((a, b) => b.startsOn.localeCompare(a.startsOn));
		const season = values.season
			? seasons.find(({ name, id }) => name === values.season || id === values.season)
			: seasons.find(({ archived }) => !archived);
		if (!season) {
			const names = seasons.map(({ name }) => `"${name}"`).join(', ') || say('cli.none');
			throw new Error(
				values.season
					? say('cli.noSeasonNamed', { name: values.season, known: names })
					: say('cli.noSeason', { known: names }),
			);
		}
		const input = await loadSeasonInput({ store: home.store, now }, season);
		const report = seasonReport(input);
		console.log(values.json ? spokenJson(JSON.stringify(report)) : spoken(textOfReport(report, input.wishes)));
		return 0;
	} finally {
		await home.close();
	}
}
