import { type ComponentType, type LazyExoticComponent, lazy, Suspense, useEffect } from 'react';
import { Link } from 'wouter';
import type { Report } from '../../../src/wardrobe/report.ts';
import { useReport } from '../api/wardrobe.ts';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { addressOf, PLACE_NAMES, type PlaceInSeason } from './addresses.ts';
import { rememberSeason } from './last-season.ts';
import { StationPath } from './station-path.tsx';
import { UndoBar } from './undo-bar.tsx';

/** What each page within a season gets. */
export type PageProps = { readonly report: Report };

type Page = LazyExoticComponent<ComponentType<PageProps>>;

/** Each station is its own piece of code, fetched when it is first entered. */
const PAGES: Readonly<Record<PlaceInSeason, Page>> = {
	'look-back': lazy(() => import('../pages/look-back/page.tsx')),
	direction: lazy(() => import('../pages/direction/page.tsx')),
	sort: lazy(() => import('../pages/sort/page.tsx')),
	'line-up': lazy(() => import('../pages/line-up/page.tsx')),
	'wish-list': lazy(() => import('../pages/wish-list/page.tsx')),
	shop: lazy(() => import('../pages/shop/page.tsx')),
	garments: lazy(() => import('../pages/garments/page.tsx')),
	season: lazy(() => import('../pages/seasons/season-settings.tsx')),
	sheet: lazy(() => import('../pages/sheet/page.tsx')),
};

/** The frame around every page of a season: its name, the path of stations, and the page itself. */
export function SeasonPage({ seasonId, place }: { seasonId: string; place: PlaceInSeason }) {
	const { data: report, error } = useReport(seasonId);
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
