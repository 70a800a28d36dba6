import { Link } from 'wouter';
import { dayText } from '../../../../src/language/numbers.ts';
import { say } from '../../../../src/language/speak.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { useChange } from '../../api/change.ts';
import { changeThing, removeThing } from '../../api/change-thing.ts';
import { ActingTable } from '../../parts/acting-table.tsx';
import { Button } from '../../parts/button.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';

type RowProps = { season: Season; onCopy: () => void; onBinned: () => void };

function SeasonRow({ season, onCopy, onBinned }: RowProps) {
	const archive = useChange(() => changeThing('changeSeason', season.id, season, { archived: !season.archived }));
	const remove = useChange(() => removeThing('removeSeason', season.id, season), onBinned);
	const { name } = season;
	return (
		<tr>
			<th scope="row">
				<Link href={addressOf(season.id, 'direction')}>{name}</Link>{' '}
				{season.archived ? <span className="quiet italic">{say('seasonsPage.archived')}</span> : null}
				<Problem of={archive.problem ?? remove.problem} />
			</th>
			<td>{say('seasonsPage.dates', { start: dayText(season.startsOn), end: dayText(season.endsOn) })}</td>
			<td>
				<span className="row">
					<Button small onPress={onCopy} aria-label={say('seasonsPage.startFrom', { name })}>
						{say('seasonsPage.startAnother')}
					</Button>
					<Button
						small
						onPress={() => archive.run(undefined)}
						aria-label={say(season.archived ? 'seasonsPage.takeBackOne' : 'seasonsPage.archiveOne', { name })}
					>
						{say(season.archived ? 'seasonsPage.takeBack' : 'seasonsPage.archive')}
					</Button>
					<Button
						small
						look="bare"
						onPress={() => remove.run(undefined)}
						aria-label={say('seasonsPage.binOne', { name })}
					>
						{say('frame.toBin')}
					</Button>
				</span>
			</td>
		</tr>
	);
}

/** Every season with its dates, those in use first. */
export function SeasonTable({
	seasons,
	onCopy,
	onBinned,
}: {
	seasons: readonly Season[];
	onCopy: (season: Season) => void;
	onBinned: (season: Season) => void;
}) {
	const ordered = [...seasons].sort(
		(a, b) => Number(a.archived) - Number(b.archived) || (a.startsOn < b.startsOn ? 1 : -1),
	);
	return (
		<ActingTable headings={[say('places.season'), say('seasonsPage.fromTo')]}>
			{ordered.map((season) => (
				<SeasonRow key={season.id} season={season} onCopy={() => onCopy(season)} onBinned={() => onBinned(season)} />
			))}
		</ActingTable>
	);
}
