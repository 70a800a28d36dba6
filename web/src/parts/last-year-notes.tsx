import type { Report } from '../../../src/wardrobe/season/report.ts';

/** What was written down for this season when it last came round; nothing where nothing was. */
export function LastYearNotes({ report }: { report: Report }) {
	const { lastYearNotes } = report;
	if (!lastYearNotes || (lastYearNotes.notes === '' && lastYearNotes.feltGaps.length === 0)) return null;
	return (
		<aside className="note-from-last-year" aria-label="From last year">
			<p className="italic">From {lastYearNotes.seasonName}</p>
			{lastYearNotes.notes ? <p>{lastYearNotes.notes}</p> : null}
			{lastYearNotes.feltGaps.length > 0 ? <p>Missed while wearing: {lastYearNotes.feltGaps.join('; ')}.</p> : null}
		</aside>
	);
}
