import { runCli } from './cli/run-cli.ts';

// `npm start -- [--home FOLDER] [--port N] [--share]` is `dyelot serve`.
process.exitCode = await runCli(['serve', ...process.argv.slice(2)]);
