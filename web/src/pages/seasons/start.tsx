import { Link, Redirect, useLocation } from 'wouter';
import { say } from '../../../../src/language/speak.ts';
import { STATIONS } from '../../../../src/wardrobe/season/stations.ts';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { useSeasons } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Loading } from '../../parts/loading.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf, placeName } from '../../shell/addresses.ts';
import { lastSeason } from '../../shell/last-season.ts';
import { NewSeason } from './new-season.tsx';
import './start.css';

/** The season to open: the one open last, else the newest that is not archived. */
function seasonToOpen(seasons: readonly Season[]): Season | undefined {
	const last = lastSeason();
	const open = seasons.filter(({ archived }) => !archived);
	return open.find(({ id }) => id === last) ?? [...open].sort((a, b) => (a.startsOn < b.startsOn ? 1 : -1))[0];
}

/** The six stations in a row, each with what it is for. */
function WayOfASeason() {
	return (
		<section aria-labelledby="start-way">
			<h2 id="start-way" className="hidden-visually">
				{say('start.path')}
			</h2>
			<ol className="start-path">
				{STATIONS.map((station) => (
					<li key={station}>
						<strong>{placeName(station)}</strong> {say(`start.${station}`)}
					</li>
				))}
			</ol>
		</section>
	);
}

/** The demo, for whoever wants to look round first. */
function OpenDemo() {
	const [, go] = useLocation();
	const demo = useChange(
		() => call('loadDemo', {}),
		(season) => go(addressOf(season.id, 'direction')),
	);
	return (
		<section className="sheet stack" aria-labelledby="start-demo">
			<h2 id="start-demo">{say('start.demoTitle')}</h2>
			<p>{say('start.demoWhat')}</p>
			<Button onPress={() => demo.run(undefined)} isPending={demo.busy}>
				{say(demo.busy ? 'start.demoBusy' : 'start.demo')}
			</Button>
			{demo.busy ? (
				<p className="small quiet" role="status">
					{say('start.demoTime')}
				</p>
			) : null}
			<Problem of={demo.problem} />
		</section>
	);
}

/** The first page ever seen, on one screen; later it leads straight into the season. */
export function Start() {
	const { data: seasons, error } = useSeasons();
	if (error) return <Problem of={error} />;
	if (!seasons) return <Loading what={say('start.loading')} />;
	const season = seasonToOpen(seasons);
	if (season) return <Redirect to={addressOf(season.id, 'direction')} replace />;
	return (
		<main id="main" tabIndex={-1} className="start">
			<header>
				<p className="start-name">Dyelot</p>
				<h1>{say('start.title')}</h1>
				<p>{say('start.what')}</p>
			</header>
			<div className="start-doors">
				<section className="sheet stack" aria-labelledby="start-own">
					<h2 id="start-own">{say('start.begin')}</h2>
					<NewSeason />
				</section>
				<OpenDemo />
			</div>
			<WayOfASeason />
			<p>
				<Link href="/seasons">{say(seasons.length > 0 ? 'start.archived' : 'start.beside')}</Link>
			</p>
		</main>
	);
}
