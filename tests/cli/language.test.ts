import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { runCli } from '../../src/cli/run-cli.ts';
import { speak } from '../../src/language/speak.ts';

let out: string[];
beforeEach(() => {
	out = [];
	vi.spyOn(console, 'log').mockImplementation((text) => void out.push(String(text)));
	vi.spyOn(console, 'error').mockImplementation((text) => void out.push(String(text)));
	for (const name of ['LC_ALL', 'LC_MESSAGES', 'LANG']) vi.stubEnv(name, undefined);
});
afterEach(() => {
	vi.restoreAllMocks();
	vi.unstubAllEnvs();
	speak('en-GB');
});

const GERMAN = 'Nichts verlässt diesen Rechner.';
const ENGLISH = 'Nothing leaves this machine.';

describe('the language of the command line', () => {
	// POSIX.1-2017, section 8.2: LC_ALL before LC_MESSAGES before LANG.
	it.each([
		[{}, [], ENGLISH],
		[{ LANG: 'de_DE.UTF-8' }, [], GERMAN],
		[{ LANG: 'de_AT.UTF-8', LC_MESSAGES: 'en_GB.UTF-8' }, [], ENGLISH],
		[{ LANG: 'en_US.UTF-8', LC_ALL: 'de_CH' }, [], GERMAN],
		[{ LANG: 'fr_FR.UTF-8' }, [], ENGLISH],
		[{ LANG: 'C' }, [], ENGLISH],
		[{ LANG: 'de_DE.UTF-8' }, ['--language', 'en-GB'], ENGLISH],
		[{}, ['--language=de'], GERMAN],
		[{}, ['--language', 'de_AT.UTF-8'], GERMAN],
	])('is with %j and %j as asked', async (environment, words, expected) => {
		for (const [name, value] of Object.entries(environment)) vi.stubEnv(name, value);
		expect(await runCli(['--help', ...words])).toBe(0);
		expect(out.join('\n')).toContain(expected);
	});

	it('is taken before or after the command, and refusals come in it', async () => {
		expect(await runCli(['--language', 'de', 'read'])).toBe(2);
		expect(out.join('\n')).toContain('Erwartet wurde einmal oder mehrmals FOTO für „read“');
		expect(out.join('\n')).toContain('dyelot read FOTO... [--shades N]');
		expect(await runCli(['check', '--language', 'de'])).toBe(2);
	});

	it.each([['fr'], [''], ['x']])('is refused where %j is asked for', async (received) => {
		expect(await runCli(['read', '--language', received])).toBe(2);
		expect(out[0]).toContain(`Expected a language (en-GB, en-US, de) after --language; received "${received}".`);
	});
});
