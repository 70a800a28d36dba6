// The program as bin/dyelot.mjs starts it, from its sources.
import { runCli } from '../../src/cli/run-cli.ts';

process.exitCode = await runCli(process.argv.slice(2));
