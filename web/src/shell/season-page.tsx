import { type ComponentType, type LazyExoticComponent, lazy, Suspense, useEffect } from 'react';
import { Link } from 'wouter';
import type { Report } from '../../../src/wardrobe/report.ts';
import { useGarments, useReport } from '../api/wardrobe.ts';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { addressOf, PLACE_NAMES, type PlaceInSeason } from './addresses.ts';
import { rememberSeason } from './last-season.ts';
import { StationPath } from './station-path.tsx';
import { UndoBar } from './undo-bar.tsx';

/** What each page within a season gets. */
export type PageProps = { readonly report: Report };

type Page = ComponentType<PageProps>;

/** Each station is its own piece of code, fetched when it is first entered. */
const CODE: Readonly<Record<PlaceInSeason, () => Promise<{ default: Page }>>> = {
	'look-back': () => import('../pages/look-back/page.tsx'),
	direction: () => import('../pages/direction/page.tsx'),
	sort: () => import('../pages/sort/page.tsx'),
	'line-up': () => import('../pages/line-up/page.tsx'),
	'wish-list': () => import('../pages/wish-list/page.tsx'),
	shop: () => import('../pages/shop/page.tsx'),
	garments: () => import('../pages/garments/page.tsx'),
	season: () => import('../pages/seasons/season-settings.tsx'),
	sheet: () => import('../pages/sheet/page.tsx'),
};
const PAGES = Object.fromEntries(Object.entries(CODE).map(([place, load]) => [place, lazy(load)])) as Readonly<
	Record<PlaceInSeason, LazyExoticComponent<Page>>
>;

/** The frame around every page of a season: its name, the path of stations, and the page itself. */
export function SeasonPage({ seasonId, place }: { seasonId: string; place: PlaceInSeason }) {
	const { data: report, error } = useReport(seasonId);
	// Asked for at once, and the station's code too, so that all three come side by side: nearly every station shows garments.
	useGarments();
	useEffect(() => {
		CODE[place]().catch(() => {
			// The station asks again as it is drawn, and says what failed.
		});
	}, [place]);
	const Page = PAGES[place];
	const name = report?.season.name ?? '';
	useEffect(() => {
		document.title = name ? `${PLACE_NAMES[place]} · ${name} · Dyelot` : 'Dyelot';
	}, [name, place]);
	useEffect(() => {
		if (name) rememberSeason(seasonId);
	}, [name, seasonId]);
	const link = (to: PlaceInSeason) => (
		<Link href={addressOf(seasonId, to)} aria-current={to === place ? 'page' : undefined}>
			{PLACE_NAMES[to]}
		</Link>
	);
	return (
		<>
			<header className="head">
				<Link href="/" className="wordmark">
					Dyelot
				</Link>
				<span className="lot">{name}</span>
				<nav aria-label="Beside the stations">
					{link('garments')}
					{link('season')}
					{link('sheet')}
					<Link href="/seasons">All seasons</Link>
					<UndoBar />
				</nav>
			</header>
			{report ? <StationPath seasonId={seasonId} stations={report.stations} current={place} /> : null}
			<main id="main" tabIndex={-1}>
				{error ? <Problem of={error} /> : null}
				{report ? (
					<Suspense fallback={<Loading what={PLACE_NAMES[place]} />}>
						<Page report={report} />
					</Suspense>
				) : error ? null : (
					<Loading what="the season" />
				)}
			</main>
			{report ? <footer className="foot">{report.caution} Everything here stays on this machine.</footer> : null}
		</>
	);
}
