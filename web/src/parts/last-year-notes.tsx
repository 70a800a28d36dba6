import { say } from '../../../src/language/speak.ts';
import type { Report } from '../../../src/wardrobe/season/report.ts';

/** What was written down for this season when it last came round; nothing where nothing was. */
export function LastYearNotes({ report }: { report: Report }) {
	const { lastYearNotes } = report;
	if (!lastYearNotes || (lastYearNotes.notes === '' && lastYearNotes.feltGaps.length === 0)) return null;
	return (
		<aside className="note-from-last-year" aria-label={say('lastYear.label')}>
			<p className="italic">{say('lastYear.from', { season: lastYearNotes.seasonName })}</p>
			{lastYearNotes.notes ? <p>{lastYearNotes.notes}</p> : null}
			{lastYearNotes.feltGaps.length > 0 ? (
				<p>{say('lastYear.missed', { gaps: lastYearNotes.feltGaps.join('; ') })}</p>
			) : null}
		</aside>
	);
}
