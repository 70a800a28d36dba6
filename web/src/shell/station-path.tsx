import { Link } from 'wouter';
import { say } from '../../../src/language/speak.ts';
import { STATIONS, type Station } from '../../../src/wardrobe/season/stations.ts';
import { addressOf, type PlaceInSeason, placeName } from './addresses.ts';

/** The season as a stitched path: each station with what is done there, in any order. Its room is kept until that is known. */
export function StationPath({
	seasonId,
	stations,
	current,
}: {
	seasonId: string;
	/** null while it is still on its way. */
	stations: readonly Station[] | null;
	current: PlaceInSeason;
}) {
	return (
		<nav aria-label={say('frame.stations')}>
			<ol className="path">
				{STATIONS.map((station) => {
					const told = stations?.find((one) => one.station === station);
					return (
						<li key={station}>
							<Link
								href={addressOf(seasonId, station)}
								className="station"
								data-state={told?.state}
								aria-current={station === current ? 'page' : undefined}
							>
								<span className="station-name">{placeName(station)}</span>
								{told ? <span className="hidden-visually">, {say(`frame.${told.state}`)}: </span> : null}
								<span className="station-note">{told?.sentence}</span>
							</Link>
						</li>
					);
				})}
			</ol>
		</nav>
	);
}
