#!/usr/bin/env node
// Installed, compiled and built first where that is not yet done or no longer true.
import '../scripts/setup.mjs';

const { runCli } = await import('../dist/cli/run-cli.js');
process.exitCode = await runCli(process.argv.slice(2));
