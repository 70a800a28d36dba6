import { QueryClientProvider } from '@tanstack/react-query';
import { lazy, Suspense, useEffect } from 'react';
import { Redirect, Route, Switch } from 'wouter';
import { say } from '../../src/language/speak.ts';
import { listenToProgram } from './api/live.ts';
import { usePairingNeed } from './api/pairing-need.ts';
import { queries } from './api/refresh.ts';
import { AllSeasons } from './pages/seasons/all-seasons.tsx';
import { Start } from './pages/seasons/start.tsx';
import { Loading } from './parts/loading.tsx';
import { addressOf, PLACES_IN_SEASON } from './shell/addresses.ts';
import { Guard } from './shell/guard.tsx';
import { PairThisDevice } from './shell/pair-this-device.tsx';
import { SeasonPage } from './shell/season-page.tsx';
import { UploadDock } from './uploads/upload-dock.tsx';

const Devices = lazy(async () => ({ default: (await import('./pages/devices/page.tsx')).Devices }));

/** Which address shows what. */
function Places() {
	return (
		<Switch>
			<Route path="/">
				<Start />
			</Route>
			<Route path="/devices">
				<Guard>
					<Suspense fallback={<Loading what={say('frame.theDevices')} />}>
						<Devices />
					</Suspense>
				</Guard>
			</Route>
			<Route path="/seasons">
				<AllSeasons />
			</Route>
			<Route path="/season/:id/:place">
				{({ id, place }) => {
					const inSeason = PLACES_IN_SEASON.find((one) => one === place);
					return inSeason ? (
						<SeasonPage seasonId={id} place={inSeason} />
					) : (
						<Redirect to={addressOf(id, 'direction')} replace />
					);
				}}
			</Route>
			<Route>
				<Redirect to="/" replace />
			</Route>
		</Switch>
	);
}

/** The whole page; on a device that was not let in, the field for the code alone. */
export function App() {
	useEffect(listenToProgram, []);
	const isStranger = usePairingNeed();
	return (
		<QueryClientProvider client={queries}>
			<div className="selvedge" aria-hidden="true" />
			<div className="page">
				<a className="button skip" href="#main">
					{say('frame.skip')}
				</a>
				{isStranger ? <PairThisDevice /> : <Places />}
			</div>
			{isStranger ? null : <UploadDock />}
		</QueryClientProvider>
	);
}
