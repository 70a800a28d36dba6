import type { Report } from '../wardrobe/season/report.ts';
import { textOfPalette } from './commands/palette.ts';

const heading = (text: string) => `\n${text}\n${'-'.repeat(text.length)}`;

/** The season's report for a terminal: the same numbers and sentences as the page. */
export function textOfReport(report: Report): string {
	const { season, palette, held, garments, loners, gaps, wishes, lookBack } = report;
	const fits = garments.map(({ name, fit, partnerCount, sorting }) => {
		const range = `${Math.round(fit.low)} to ${Math.round(fit.high)}`;
		return `  ${String(Math.round(fit.percent)).padStart(3)}  ${fit.verdict.padEnd(6)} ${name}  (${range}; ${partnerCount} partners; ${sorting.suggestion})\n       ${fit.sentence}`;
	});
	const flagged = loners.filter((loner) => loner.flagged);
	const lines = [
		`${season.name}, ${season.startsOn} to ${season.endsOn}`,
		report.stations.map(({ station, sentence }) => `${station}: ${sentence}`).join(' | '),
		heading('Palette'),
		palette.colours.length > 0 ? textOfPalette(palette) : '  none yet: add inspiration pictures',
		heading('What is held'),
		`  ${held.sentence}`,
		heading('Garments by fit'),
		...(fits.length > 0 ? fits : ['  none yet']),
		...(report.surerLight.sentence ? [`  ${report.surerLight.sentence}`] : []),
		heading('Perhaps alone'),
		...(flagged.length > 0 ? flagged.map(({ sentence }) => `  ${sentence}`) : ['  none stands out']),
		heading('Gaps'),
		...(gaps.length > 0 ? gaps.map(({ sentence }) => `  ${sentence}`) : ['  none']),
		heading('Wishes'),
		...(wishes.length > 0
			? wishes.map(({ sentence, priority }) => `  ${String(priority).padStart(3)}  ${sentence}`)
			: ['  none']),
		heading('Looking back'),
		`  ${lookBack.sentence}`,
		'',
		report.caution,
	];
	return lines.join('\n');
}
