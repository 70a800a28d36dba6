import { lazy, StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { speak } from '../../src/language/speak.ts';
import { homeAddress, isHosted } from './api/home-address.ts';
import { App } from './app.tsx';
import { pageLanguage } from './language/page-language.ts';
import { placeAt } from './shell/addresses.ts';
import { askForPage } from './shell/ask-for-page.ts';
import { fetchCode } from './shell/page-code.ts';
import './style/tokens.css';
import './style/base.css';
import './style/controls.css';
import './style/parts.css';
import './style/uploads.css';
import './style/shell.css';

/** Loaded only where the program keeps many homes. */
const HostedPage = lazy(async () => ({ default: (await import('./hosted/hosted-page.tsx')).HostedPage }));

speak(pageLanguage());
document.documentElement.lang = pageLanguage();

// Everything is on its way before the first line is drawn.
const opened = isHosted() && homeAddress() === '' ? null : placeAt(location.pathname.slice(homeAddress().length));
if (opened) {
	fetchCode(opened.place).catch(() => {
		// The page asks again as it is drawn, and says what failed.
	});
	askForPage(opened.seasonId, opened.place);
}

const root = document.getElementById('root');
if (!root) throw new TypeError('expected an element with id "root" in index.html');
createRoot(root).render(
	<StrictMode>
		{isHosted() ? (
			<Suspense>
				<HostedPage />
			</Suspense>
		) : (
			<App />
		)}
	</StrictMode>,
);
