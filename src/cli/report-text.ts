import { dayText } from '../language/numbers.ts';
import { say } from '../language/speak.ts';
import type { Report } from '../wardrobe/season/report.ts';
import type { Wish } from '../wardrobe/words/wish.ts';
import { textOfPalette } from './commands/palette.ts';

const heading = (text: string) => `\n${text}\n${'-'.repeat(text.length)}`;

/** Twins and pieces too close to tell apart that the terminal's report names. */
const TWINS_TOLD = 6;

/** The season's report for a terminal: the same numbers and sentences as the page. `wished`: the season's wishes, which have the names. */
export function textOfReport(report: Report, wished: readonly Pick<Wish, 'id' | 'name'>[]): string {
	const wishNames = new Map(wished.map(({ id, name }) => [id, name]));
	const { season, palette, held, garments, loners, gaps, wishes, lookBack } = report;
	const fits = garments.map(({ name, fit, partnerCount, sorting }) => {
		const range = say('reportText.range', { low: Math.round(fit.low), high: Math.round(fit.high) });
		const partners = say('garments.partners', { count: partnerCount });
		const verdict = say(`verdicts.${fit.verdict}`).padEnd(12);
		const percent = String(Math.round(fit.percent)).padStart(3);
		return `  ${percent}  ${verdict} ${name}  (${range}; ${partners}; ${say(`suggestions.${sorting.suggestion}`)})\n       ${fit.sentence}`;
	});
	const flagged = loners.filter((loner) => loner.flagged);
	const lines = [
		say('reportText.season', {
			name: season.name,
			start: dayText(season.startsOn),
			end: dayText(season.endsOn),
		}),
		report.stations.map(({ station, sentence }) => `${say(`places.${station}`)}: ${sentence}`).join(' | '),
		heading(say('reportText.palette')),
		palette.colours.length > 0 ? textOfPalette(palette) : `  ${say('reportText.noPalette')}`,
		heading(say('reportText.held')),
		`  ${held.sentence}`,
		heading(say('reportText.byFit')),
		...(fits.length > 0 ? fits : [`  ${say('reportText.noneYet')}`]),
		...(report.surerLight.sentence ? [`  ${report.surerLight.sentence}`] : []),
		...[...report.twins, ...report.tooClose].slice(0, TWINS_TOLD).map(({ sentence }) => `  ${sentence}`),
		heading(say('reportText.alone')),
		...(flagged.length > 0 ? flagged.map(({ sentence }) => `  ${sentence}`) : [`  ${say('reportText.noneAlone')}`]),
		heading(say('reportText.gaps')),
		...(gaps.length > 0 ? gaps.map(({ sentence }) => `  ${sentence}`) : [`  ${say('cli.none')}`]),
		heading(say('reportText.wishes')),
		...(wishes.length > 0
			? wishes.map(({ wishId, sentence }) => `  ${wishNames.get(wishId)}: ${sentence}`)
			: [`  ${say('cli.none')}`]),
		heading(say('reportText.lookBack')),
		`  ${lookBack.sentence}`,
		'',
		report.caution,
	];
	return lines.join('\n');
}
