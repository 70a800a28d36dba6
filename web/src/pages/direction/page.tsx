import { say } from '../../../../src/language/speak.ts';
import { LastYearNotes } from '../../parts/last-year-notes.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { NextStepLink } from '../../shell/next-step-link.tsx';
import type { PageProps } from '../../shell/page-code.ts';
import { purposeOf } from '../../shell/station-words.ts';
import { Board } from './board.tsx';
import { PairingList } from './pairing-list.tsx';
import { PaletteEditor } from './palette-editor.tsx';
import { StyleAxes } from './style-axes.tsx';
import { WearPictures } from './wear-pictures.tsx';
import './direction.css';

/** What the season aims at: the board of pictures, and what is read out of it. */
export default function DirectionPage({ report }: PageProps) {
	// Pictures come first, the palette from them: until there is one, the board stands on top.
	const hasPalette = report.palette.colours.length > 0;
	return (
		<div className="page-body">
			<PageTitle name={say('places.direction')} purpose={purposeOf('direction')} />
			<LastYearNotes report={report} />
			{hasPalette ? <PaletteEditor report={report} /> : null}
			<Board season={report.season} />
			{hasPalette ? null : <PaletteEditor report={report} />}
			<WearPictures report={report} />
			<StyleAxes style={report.style} />
			<PairingList pairings={report.pairings} />
			<NextStepLink report={report} place="direction" />
		</div>
	);
}
