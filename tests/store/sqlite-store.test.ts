import { openHome } from '../../src/store/open-home.ts';
import { temporaryFolder } from '../support/temporary-home.ts';
import { describeStore, SUITE_TIME } from './store-suite.ts';

describeStore('SQLite', async () => {
	const path = temporaryFolder();
	return { open: (now = () => new Date(SUITE_TIME)) => openHome(path, { now }) };
});
