import { QueryClientProvider, useQuery } from '@tanstack/react-query';
import { type ReactNode, useEffect } from 'react';
import { Redirect, Route, Router, Switch } from 'wouter';
import { say } from '../../../src/language/speak.ts';
import { homeAddress } from '../api/home-address.ts';
import { queries } from '../api/refresh.ts';
import { App } from '../app.tsx';
import { LanguageChoice } from '../language/language-choice.tsx';
import { Loading } from '../parts/loading.tsx';
import { Problem } from '../parts/problem.tsx';
import { AccountPage } from './account-page.tsx';
import { HomesPage } from './homes-page.tsx';
import { accountQuery, homesQuery } from './host-calls.ts';
import { Join } from './join.tsx';
import { PeoplePage } from './people-page.tsx';
import { SignIn } from './sign-in.tsx';
import './hosted.css';

/** Whoever is signed in sees what stands inside; all others sign in first. */
function SignedIn({ children }: { children: ReactNode }) {
	const { data: account, error } = useQuery(accountQuery);
	if (account) return children;
	if (!error) return <Loading what={say('doorway.homes')} />;
	return (error as { code?: string }).code === 'not-signed-in' ? <SignIn /> : <Problem of={error} />;
}

/** Above a home: which it is, the way to all homes, and whether one may only look. */
function HomeLine() {
	const { data: homes } = useQuery(homesQuery);
	const home = homes?.find(({ id }) => homeAddress() === `/homes/${id}`);
	return (
		<nav className="home-line" aria-label={say('doorway.where')}>
			<a href="/">{say('doorway.homes')}</a>
			<span aria-current="page">{home?.name}</span>
			{home?.role === 'look' ? <strong>{say('doorway.lookingOnly', { home: home.name })}</strong> : null}
		</nav>
	);
}

/** A home: the page as where one home is kept, below its address. */
const HomePage = () => (
	<SignedIn>
		<HomeLine />
		<Router base={homeAddress()}>
			<App />
		</Router>
	</SignedIn>
);

/** The page of a host: signing in, homes, people; or one home. */
export function HostedPage() {
	useEffect(() => {
		document.title = 'Dyelot';
	}, []);
	if (homeAddress() !== '')
		return (
			<QueryClientProvider client={queries}>
				<HomePage />
			</QueryClientProvider>
		);
	return (
		<QueryClientProvider client={queries}>
			<div className="selvedge" aria-hidden="true" />
			<div className="page">
				<Switch>
					<Route path="/join">
						<Join />
					</Route>
					<Route path="/people">
						<SignedIn>
							<PeoplePage />
						</SignedIn>
					</Route>
					<Route path="/account">
						<SignedIn>
							<AccountPage />
						</SignedIn>
					</Route>
					<Route path="/">
						<SignedIn>
							<HomesPage />
						</SignedIn>
					</Route>
					<Route>
						<Redirect to="/" replace />
					</Route>
				</Switch>
				<footer className="foot">
					<LanguageChoice />
				</footer>
			</div>
		</QueryClientProvider>
	);
}
