import { QueryClientProvider } from '@tanstack/react-query';
import { useEffect } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { listenToProgram } from './api/live.ts';
import { queries } from './api/refresh.ts';
import { AllSeasons } from './pages/seasons/all-seasons.tsx';
import { Start } from './pages/seasons/start.tsx';
import { addressOf, PLACES_IN_SEASON } from './shell/addresses.ts';
import { SeasonPage } from './shell/season-page.tsx';
import { UploadDock } from './uploads/upload-dock.tsx';

/** The whole page: which address shows what. */
export function App() {
	useEffect(listenToProgram, []);
	return (
		<QueryClientProvider client={queries}>
			<div className="selvedge" aria-hidden="true" />
			<div className="page">
				<a className="button skip" href="#main">
					To the content
				</a>
				<Switch>
					<Route path="/">
						<Start />
					</Route>
					<Route path="/seasons">
						<AllSeasons />
					</Route>
					<Route path="/season/:id/:place">
						{({ id, place }) => {
							const known = PLACES_IN_SEASON.find((one) => one === place);
							return known ? (
								<SeasonPage seasonId={id} place={known} />
							) : (
								<Redirect to={addressOf(id, 'direction')} replace />
							);
						}}
					</Route>
					<Route>
						<Redirect to="/" replace />
					</Route>
				</Switch>
			</div>
			<UploadDock />
		</QueryClientProvider>
	);
}
