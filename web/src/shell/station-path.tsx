import { Link } from 'wouter';
import type { Station } from '../../../src/wardrobe/stations.ts';
import { addressOf, PLACE_NAMES, type PlaceInSeason } from './addresses.ts';

const STATE_WORDS: Readonly<Record<Station['state'], string>> = { empty: 'not begun', open: 'open', done: 'done' };

/** The season as a stitched path: each station with what is done there, in any order. */
export function StationPath({
	seasonId,
	stations,
	current,
}: {
	seasonId: string;
	stations: readonly Station[];
	current: PlaceInSeason;
}) {
	return (
		<nav aria-label="Stations of the season">
			<ol className="path">
				{stations.map(({ station, state, sentence }) => (
					<li key={station}>
						<Link
							href={addressOf(seasonId, station)}
							className="station"
							data-state={state}
							aria-current={station === current ? 'page' : undefined}
						>
							<span className="station-name">{PLACE_NAMES[station]}</span>
							<span className="hidden-visually">, {STATE_WORDS[state]}: </span>
							<span className="station-note">{sentence}</span>
						</Link>
					</li>
				))}
			</ol>
		</nav>
	);
}
