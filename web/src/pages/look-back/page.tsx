import { say } from '../../../../src/language/speak.ts';
import type { Report } from '../../../../src/wardrobe/season/report.ts';
import type { Garment } from '../../../../src/wardrobe/words/garment.ts';
import { colourWord } from '../../../../src/wardrobe/words/palette-colour.ts';
import { useChange } from '../../api/change.ts';
import { changeThing } from '../../api/change-thing.ts';
import { useGarments } from '../../api/wardrobe.ts';
import { SharePairs } from '../../charts/share-pairs.tsx';
import { TextArea } from '../../parts/field.tsx';
import { LastYearNotes } from '../../parts/last-year-notes.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { FeltGaps } from './felt-gaps.tsx';
import { WearImport } from './wear-import.tsx';
import { WearTable } from './wear-table.tsx';
import { WornOutfitWords } from './worn-outfit-words.tsx';
import { WornToday } from './worn-today.tsx';
import './look-back.css';

/** What was worn against what is owned, by sort, by colour and by garment: nothing to say before a wear is noted. */
function WhatWasWorn({ report, garments }: { report: Report; garments: readonly Garment[] }) {
	const { lookBack, palette } = report;
	const byColour = lookBack.byColour.map(({ paletteColourId, owned, worn }) => {
		const colour = palette.colours.find(({ id }) => id === paletteColourId);
		return {
			key: paletteColourId ?? 'none',
			label: colour ? colourWord(colour) : say('lookBackPage.nearNone'),
			...(colour ? { lab: colour.lab } : {}),
			owned,
			worn,
		};
	});
	return (
		<>
			<div className="look-back-columns">
				<section aria-labelledby="by-slot">
					<h2 id="by-slot">{say('lookBackPage.bySlot')}</h2>
					<SharePairs
						rows={lookBack.bySlot.map(({ slot, owned, worn }) => ({
							key: slot,
							label: say(`slots.${slot}`),
							owned,
							worn,
						}))}
					/>
				</section>
				<section aria-labelledby="by-colour">
					<h2 id="by-colour">{say('lookBackPage.byColour')}</h2>
					<SharePairs rows={byColour} />
				</section>
			</div>
			<WornOutfitWords outfits={report.wornOutfits} />
			<WearTable report={report} garments={garments} />
		</>
	);
}

/** What was worn, what was not, and what was missed; notes come back when the same season does. */
export default function LookBackPage({ report }: PageProps) {
	const { season, lookBack } = report;
	const { data: garments = [] } = useGarments();
	const note = useChange((notes: string) => changeThing('changeSeason', season.id, season, { notes }));
	return (
		<div className="page-body">
			<PageTitle name={say('places.look-back')} purpose={purposeOf('look-back')} />
			<LastYearNotes report={report} />
			<WornToday garments={garments} today={report.madeOn} />
			<p className="look-back-sum">{lookBack.sentence}</p>
			{lookBack.wearsThisYear > 0 ? <WhatWasWorn report={report} garments={garments} /> : null}
			<section className="section look-back-columns" aria-label={say('lookBackPage.notes')}>
				<div className="stack">
					<h2>{say('lookBackPage.nextYear')}</h2>
					<TextArea label={say('lookBackPage.nextYearLabel')} value={season.notes} onCommit={note.run} />
					<Problem of={note.problem} />
				</div>
				<FeltGaps season={season} />
			</section>
			<WearImport />
			<NextStepLink report={report} place="look-back" />
		</div>
	);
}
