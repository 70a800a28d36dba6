import { Link, Redirect, useLocation } from 'wouter';
import type { Season } from '../../../../src/wardrobe/words/season.ts';
import { call } from '../../api/call.ts';
import { useChange } from '../../api/change.ts';
import { useSeasons } from '../../api/wardrobe.ts';
import { Button } from '../../parts/button.tsx';
import { Loading } from '../../parts/loading.tsx';
import { Problem } from '../../parts/problem.tsx';
import { addressOf } from '../../shell/addresses.ts';
import { lastSeason } from '../../shell/last-season.ts';
import { NewSeason } from './new-season.tsx';
import './start.css';

/** The season to open: the one open last, else the newest that is not archived. */
function seasonToOpen(seasons: readonly Season[]): Season | undefined {
	const last = lastSeason();
	const open = seasons.filter(({ archived }) => !archived);
	return open.find(({ id }) => id === last) ?? [...open].sort((a, b) => (a.startsOn < b.startsOn ? 1 : -1))[0];
}

const STEPS = [
	['Look back', 'at what was worn and what was missed.'],
	['Direction', 'comes from your inspiration pictures: their colours become the season’s palette.'],
	['Sort', 'everything you own: keep on the rail, store, or let go.'],
	['Line-up', 'chooses the small set that makes the most outfits.'],
	['Wish list', 'is what the palette asks for and nothing you hold answers.'],
	['Shop', 'checks a piece you found before you buy it.'],
] as const;

/** The first page ever seen; later it leads straight into the season. */
export function Start() {
	const { data: seasons, error } = useSeasons();
	const [, go] = useLocation();
	const demo = useChange(
		() => call('loadDemo', {}),
		(season) => go(addressOf(season.id, 'direction')),
	);
	if (error) return <Problem of={error} />;
	if (!seasons) return <Loading what="your seasons" />;
	const season = seasonToOpen(seasons);
	if (season) return <Redirect to={addressOf(season.id, 'direction')} replace />;
	return (
		<main id="main" tabIndex={-1} className="start">
			<header>
				<p className="start-name">Dyelot</p>
				<h1>Plan one season from a small set of clothes that go together.</h1>
				<p>
					A dye lot is one batch of yarn or cloth dyed together. Give Dyelot photos of your garments and pictures of how
					the season should look; it reads the real colours of both and says, with its reasons, what fits, what is
					missing and what to put in the set. Nothing leaves this machine.
				</p>
			</header>
			<ol className="start-path">
				{STEPS.map(([name, what]) => (
					<li key={name}>
						<strong>{name}</strong> {what}
					</li>
				))}
			</ol>
			<div className="start-doors">
				<section className="sheet stack" aria-labelledby="start-demo">
					<h2 id="start-demo">Look round first</h2>
					<p>
						An invented wardrobe of a beekeeper in a river town, with pictures, garments and a few finds, so that every
						station has something to show. It can be put in the bin later with one click.
					</p>
					<Button look="main" onPress={() => demo.run(undefined)} isPending={demo.busy}>
						{demo.busy ? 'Reading the demo’s photos …' : 'Open the demo'}
					</Button>
					{demo.busy ? (
						<p className="small quiet" role="status">
							This takes about half a minute.
						</p>
					) : null}
					<Problem of={demo.problem} />
				</section>
				<section className="sheet stack" aria-labelledby="start-own">
					<h2 id="start-own">Begin with your own season</h2>
					<NewSeason />
				</section>
			</div>
			{seasons.length > 0 ? (
				<p>
					<Link href="/seasons">Archived seasons</Link>
				</p>
			) : null}
		</main>
	);
}
