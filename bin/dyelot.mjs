#!/usr/bin/env node
import { existsSync } from 'node:fs';
import { setFlagsFromString } from 'node:v8';

// In a checkout: installed, compiled and built first where that is not yet done or no longer true. A download has it all and no scripts.
const setup = new URL('../scripts/setup.mjs', import.meta.url);
if (existsSync(setup)) await import(setup.href);

// The part of the heap where new objects live stays at its first megabyte instead of growing to 48 of them: 28 MB less at rest, for no
// processor time that could be measured.
setFlagsFromString('--semi-space-growth-factor=1');

const { runCli } = await import('../dist/cli/run-cli.js');
process.exitCode = await runCli(process.argv.slice(2));
