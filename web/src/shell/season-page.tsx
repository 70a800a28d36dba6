import { useEffect } from 'react';
import { Link } from 'wouter';
import { say } from '../../../src/language/speak.ts';
import type { Report } from '../../../src/wardrobe/season/report.ts';
import { useReport, useSeasons } from '../api/wardrobe.ts';
import { Loading } from '../parts/loading.tsx';
import { PageHead } from '../parts/page-head.tsx';
import { PageTitle } from '../parts/page-title.tsx';
import { Problem } from '../parts/problem.tsx';
import { addressOf, type PlaceInSeason, placeName } from './addresses.ts';
import { Guard } from './guard.tsx';
import { rememberSeason } from './last-season.ts';
import { type EarlyPlace, type JudgedPlace, usePageCode } from './page-code.ts';
import { StationPath } from './station-path.tsx';
import { purposeOf } from './station-words.ts';
import { UndoBar } from './undo-bar.tsx';

/** A page whose content is on its way: what it is and what it is for. */
function Coming({ place }: { place: PlaceInSeason }) {
	const loading = <Loading what={placeName(place)} />;
	if (place === 'season' || place === 'sheet') return loading;
	return (
		<div className="page-body">
			<PageTitle name={placeName(place)} purpose={purposeOf(place)} />
			{loading}
		</div>
	);
}

type Shown<Place> = { readonly place: Place; readonly seasonId: string; readonly report: Report | null };

function JudgedPage({ place, seasonId, report }: Shown<JudgedPlace>) {
	const Page = usePageCode(place);
	return Page && report ? <Page seasonId={seasonId} report={report} /> : <Coming place={place} />;
}

function EarlyPage({ place, seasonId, report }: Shown<EarlyPlace>) {
	const Page = usePageCode(place);
	return Page ? <Page seasonId={seasonId} report={report} /> : <Coming place={place} />;
}

/** The frame around every page of a season: its name, the path of stations, and the page itself. */
export function SeasonPage({ seasonId, place }: { seasonId: string; place: PlaceInSeason }) {
	const { data: report, error } = useReport(seasonId);
	const { data: seasons } = useSeasons();
	const name = report?.season.name ?? seasons?.find(({ id }) => id === seasonId)?.name ?? '';
	useEffect(() => {
		document.title = name ? `${placeName(place)} · ${name} · Dyelot` : 'Dyelot';
	}, [name, place]);
	useEffect(() => {
		if (name) rememberSeason(seasonId);
	}, [name, seasonId]);
	const link = (to: PlaceInSeason) => (
		<Link href={addressOf(seasonId, to)} aria-current={to === place ? 'page' : undefined}>
			{placeName(to)}
		</Link>
	);
	return (
		<>
			<PageHead label={say('frame.beside')} of={<span className="lot">{name}</span>}>
				{link('garments')}
				{link('season')}
				{link('sheet')}
				<Link href="/seasons">{say('frame.allSeasons')}</Link>
				<UndoBar />
			</PageHead>
			<StationPath seasonId={seasonId} stations={report?.stations ?? null} current={place} />
			<main id="main" tabIndex={-1}>
				{error ? <Problem of={error} /> : null}
				{error && !report ? null : (
					<Guard key={place}>
						{place === 'garments' ? (
							<EarlyPage place={place} seasonId={seasonId} report={report ?? null} />
						) : (
							<JudgedPage place={place} seasonId={seasonId} report={report ?? null} />
						)}
					</Guard>
				)}
			</main>
			{report ? (
				<footer className="foot">
					{report.caution} {say('frame.stays')}
				</footer>
			) : null}
		</>
	);
}
