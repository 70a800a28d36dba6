import { useState } from 'react';
import { Link } from 'wouter';
import { dayText } from '../../../../src/language/numbers.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { addressOfCall } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { useSeasons } from '../../api/wardrobe.ts';
import { LanguageChoice } from '../../language/language-choice.tsx';
import { Button } from '../../parts/button.tsx';
import { Dialog } from '../../parts/dialog.tsx';
import { Loading } from '../../parts/loading.tsx';
import { PageTitle } from '../../parts/page-title.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { Bin } from './bin.tsx';
import { NewSeason } from './new-season.tsx';

function SeasonRow({ season, onCopy }: { season: Season; onCopy: () => void }) {
	const archive = useChange(() => changeThing('changeSeason', season.id, season, { archived: !season.archived }));
	const remove = useChange(() => removeThing('removeSeason', season.id, season));
	return (
		<tr>
			<th scope="row">
				<Link href={addressOf(season.id, 'direction')}>{season.name}</Link>
				{season.archived ? <span className="quiet italic"> archived</span> : null}
				<Problem of={archive.problem ?? remove.problem} />
			</th>
			<td>
				{dayText(season.startsOn)} – {dayText(season.endsOn)}
			</td>
			<td>
				<span className="row">
					<Button small onPress={onCopy} aria-label={`Start a season from ${season.name}`}>
						Start another from it
					</Button>
					<Button
						small
						onPress={() => archive.run(undefined)}
						aria-label={`${season.archived ? 'Take back' : 'Archive'} ${season.name}`}
					>
						{season.archived ? 'Take back' : 'Archive'}
					</Button>
					<Button small look="bare" onPress={() => remove.run(undefined)} aria-label={`Put ${season.name} in the bin`}>
						To the bin
					</Button>
				</span>
			</td>
		</tr>
	);
}

/** Every season, archived ones too; a new one, or one begun from another; the bin and what can be taken away. */
export function AllSeasons() {
	const { data: seasons, error } = useSeasons();
	const [from, setFrom] = useState<Season | null>(null);
	return (
		<>
			<header className="head">
				<Link href="/" className="wordmark">
					Dyelot
				</Link>
				<nav aria-label="Beside this page">
					<Link href="/devices">Devices</Link>
				</nav>
			</header>
			<main id="main" tabIndex={-1} className="page-body">
				<PageTitle
					name="All seasons"
					purpose="Each season keeps its own board, palette, line-up and wishes; the garments are the same for all."
				/>
				<Problem of={error} />
				{seasons ? (
					<div className="table-scroll">
						<table>
							<thead>
								<tr>
									<th scope="col">Season</th>
									<th scope="col">From – to</th>
									<th scope="col">
										<span className="hidden-visually">Actions</span>
									</th>
								</tr>
							</thead>
							<tbody>
								{[...seasons]
									.sort((a, b) => Number(a.archived) - Number(b.archived) || (a.startsOn < b.startsOn ? 1 : -1))
									.map((season) => (
										<SeasonRow key={season.id} season={season} onCopy={() => setFrom(season)} />
									))}
							</tbody>
						</table>
					</div>
				) : (
					<Loading what="your seasons" />
				)}
				<section className="section" aria-labelledby="new-season">
					<h2 id="new-season">A new season</h2>
					<NewSeason />
				</section>
				<section className="section" aria-labelledby="take-away">
					<h2 id="take-away">Take it along</h2>
					<p className="quiet">Open formats, for any other program, and one archive that restores everything.</p>
					<p className="row">
						<a href={addressOfCall('getBackup')} download>
							Everything as one archive
						</a>
						<a href={addressOfCall('getEverything')} download>
							Everything as JSON
						</a>
						<a href={addressOfCall('exportGarments')} download>
							Garments as a table (CSV)
						</a>
					</p>
				</section>
				<Bin />
				<LanguageChoice />
			</main>
			{from ? (
				<Dialog title={`A season from ${from.name}`} narrow onClose={() => setFrom(null)}>
					<NewSeason from={from} />
				</Dialog>
			) : null}
		</>
	);
}
