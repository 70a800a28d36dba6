import { useState } from 'react';
import { Link } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { useSeasons } from '../../api/wardrobe.ts';
import { LanguageChoice } from '../../language/language-choice.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageHead } from '../../parts/page-head.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { UndoBar } from '../../shell/undo-bar.tsx';
import { Bin } from './bin.tsx';
import { FoundAtStart } from './found-at-start.tsx';
import { NewSeason } from './new-season.tsx';
import { SeasonTable } from './season-table.tsx';
import { TakeAlong } from './take-along.tsx';

function Head() {
	return (
		<PageHead label={say('seasonsPage.beside')}>
			<Link href="/devices">{say('seasonsPage.devices')}</Link>
			<UndoBar />
		</PageHead>
	);
}

/** Every season, archived ones too; a new one, or one begun from another; the bin, the backup and what can be taken away. */
export function AllSeasons() {
	const { data: seasons, error } = useSeasons();
	const [from, setFrom] = useState<Season | null>(null);
	const [told, setTold] = useState('');
	return (
		<>
			<Head />
			<main id="main" tabIndex={-1} className="page-body">
				<PageTitle name={say('frame.allSeasons')} purpose={say('seasonsPage.purpose')} />
				<Problem of={error} />
				<p role="status">{told}</p>
				{seasons ? (
					<SeasonTable
						seasons={seasons}
						onCopy={setFrom}
						onBinned={({ name }) => setTold(say('seasonsPage.binned', { name }))}
					/>
				) : (
					<Loading what={say('seasonsPage.yours')} />
				)}
				<section className="section" aria-labelledby="new-season">
					<h2 id="new-season">{say('seasonsPage.new')}</h2>
					<NewSeason />
				</section>
				<Bin onTakenOut={(name) => setTold(say('seasonsPage.takenOut', { name }))} />
				<FoundAtStart />
				<TakeAlong />
				<LanguageChoice />
			</main>
			{from ? (
				<Dialog title={say('seasonsPage.fromTitle', { name: from.name })} narrow onClose={() => setFrom(null)}>
					<NewSeason from={from} />
				</Dialog>
			) : null}
		</>
	);
}
