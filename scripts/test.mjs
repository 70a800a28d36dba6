// The whole check; `npm test` and CI run exactly this. What fails fastest comes first; then two rows side by side, since neither alone
// keeps two cores at work.
import { LINT, runRows, TYPES } from './steps.mjs';

const tests = (name, project) => [name, 'vitest/vitest.mjs', 'run', '--project', project];

await runRows([LINT]);
await runRows(
	[...TYPES, ['dead code', 'knip/bin/knip.js'], tests('unit, standards, layers', 'unit')],
	[tests('browser', 'browser')],
);
