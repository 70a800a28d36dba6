import { LastYearNotes } from '../../parts/last-year-notes.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import type { PageProps } from '../../shell/season-page.tsx';
import { Board } from './board.tsx';
import { PairingList } from './pairing-list.tsx';
import { PaletteEditor } from './palette-editor.tsx';
import { StyleAxes } from './style-axes.tsx';
import './direction.css';

/** What the season aims at: the board of pictures, and what is read out of it. */
export default function DirectionPage({ report }: PageProps) {
	return (
		<div className="page-body">
			<PageTitle
				name="Direction"
				purpose="Collect pictures of how the season should look. Their clothes, not their backgrounds, give the palette; every picture weighs the same."
			/>
			<LastYearNotes report={report} />
			<PaletteEditor report={report} />
			<Board season={report.season} />
			<StyleAxes style={report.style} />
			<PairingList pairings={report.pairings} />
		</div>
	);
}
