import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { COMMAND_NAMES, COMMANDS } from '../../src/cli/command-words.ts';
import { parsedWords } from '../../src/cli/parsed-words.ts';
import { runCli } from '../../src/cli/run-cli.ts';
import { PortError } from '../../src/server/listen.ts';
import { serve } from '../../src/server/serve.ts';
import { openHome } from '../../src/store/open-home.ts';
import { temporaryFolder } from '../support/temporary-home.ts';

let out: string[];
let err: string[];
beforeEach(() => {
	out = [];
	err = [];
	vi.spyOn(console, 'log').mockImplementation((text) => void out.push(String(text)));
	vi.spyOn(console, 'error').mockImplementation((text) => void err.push(String(text)));
});
afterEach(() => vi.restoreAllMocks());

/** A folder with a file, a folder, and a link that leads nowhere. */
function places() {
	const folder = temporaryFolder();
	const at = (name: string) => join(folder, name);
	writeFileSync(at('file'), 'milk, eggs');
	mkdirSync(at('folder'));
	symlinkSync(at('nowhere'), at('link'));
	return {
		file: at('file'),
		folder: at('folder'),
		link: at('link'),
		below: join(at('file'), 'home'),
		none: at('none'),
	};
}

/** Codes of POSIX.1-2017 errno.h, and a line of a JavaScript stack. */
const SYSTEM_TALK = /\bE(ACCES|ADDRINUSE|EXIST|ISDIR|NOENT|NOTDIR|PERM|ROFS)\b|^\s+at .+:\d+:\d+/m;

describe('help', () => {
	it('tells the version that the package has', async () => {
		const { version } = JSON.parse(readFileSync('package.json', 'utf8')) as { version: string };
		expect(await runCli(['--version'])).toBe(0);
		expect(out).toEqual([`dyelot ${version}`]);
	});

	it.each(COMMAND_NAMES)('of %s tells each option, and an example that its own parser takes', async (name) => {
		expect(await runCli([name, '--help'])).toBe(0);
		for (const option of Object.keys(COMMANDS[name].options)) expect(out[0]).toContain(`--${option}`);
		const { example } = COMMANDS[name];
		expect(out[0]).toContain(`Example:\n  ${example}`);
		const [program, command, ...words] = example.replace(/ >.*/, '').match(/"[^"]*"|\S+/g)!;
		expect([program, command]).toEqual(['dyelot', name]);
		expect(() => parsedWords(name, words)).not.toThrow();
	});

	it('of the whole names every command, and no line is wider than a narrow terminal', async () => {
		expect(await runCli(['--help'])).toBe(0);
		for (const name of COMMAND_NAMES) expect(out[0]).toContain(`dyelot ${name}`);
		const prose = out[0]!.split('\n').filter((line) => !line.includes('[--'));
		for (const line of prose) expect(line.length).toBeLessThanOrEqual(80);
	});
});

describe('a wrong call', () => {
	it.each([
		[['read'], 'Expected one or more of PHOTO for "read"; received none.'],
		[['read', 'x.jpg', '--shades', 'many'], 'Expected a whole number from 1 to 64 for --shades; received "many".'],
		[['read', 'x.jpg', '--shades', '0x10'], 'received "0x10"'],
		[['read', 'x.jpg', '--at', '5'], 'Expected 2 numbers'],
		[['read', 'x.jpg', '--colour'], 'received "--colour"'],
		[['report', '--home'], 'Expected FOLDER after --home; it is missing.'],
		[['report', '--home='], 'Expected FOLDER after --home; it is missing.'],
		[['report', '--json=yes'], 'Expected --json alone'],
		[['report', 'spring'], 'received "spring"'],
		[['serve', '--port', '0x10'], 'received "0x10"'],
		[['serve', '--port', '70000'], 'received "70000"'],
		[['check', 'x.jpg'], 'Expected --palette FILE'],
		[['backup', 'a', 'b'], 'received "a", "b"'],
		[['restore', 'a'], 'Expected --home FOLDER'],
	])('%j ends with 2, a sentence and how to call it', async (words, sentence) => {
		expect(await runCli(words)).toBe(2);
		expect(err[0]).toContain(sentence);
		expect(err[0]).toContain(`dyelot ${words[0]} `);
		expect(err[0]).not.toMatch(SYSTEM_TALK);
	});

	it.each([[['weave']], [[]]])('%j ends with 2 and names all commands', async (words) => {
		expect(await runCli(words)).toBe(2);
		expect([...out, ...err].join('\n')).toContain('dyelot read PHOTO...');
	});
});

describe('what the disk refuses', () => {
	it.each([
		['a home that is not there', ({ none }) => ['report', '--home', none], 'there is none'],
		[
			'a backup of a home that is not there',
			({ none, folder }) => ['backup', join(folder, 'x'), '--home', none],
			'there is none',
		],
		['a home that is a file', ({ file }) => ['demo', '--home', file], 'there is a file of that name'],
		['a home below a file', ({ below }) => ['demo', '--home', below], 'a part of its path is a file'],
		['a home at a link that leads nowhere', ({ link }) => ['demo', '--home', link], 'a link that leads nowhere'],
		['an archive that is missing', ({ none, folder }) => ['restore', none, '--home', folder], 'there is no such file'],
		['an archive that is a folder', ({ folder, none }) => ['restore', folder, '--home', none], 'it is a folder'],
		['an archive into a file', ({ file }) => ['restore', file, '--home', file], 'there is a file of that name'],
		['a palette that is missing', ({ file, none }) => ['check', file, '--palette', none], 'there is no such file'],
		['a palette that is a folder', ({ file, folder }) => ['check', file, '--palette', folder], 'it is a folder'],
	] satisfies [string, (at: ReturnType<typeof places>) => string[], string][])(
		'%s is told in a sentence',
		async (_what, wordsOf, sentence) => {
			const at = places();
			expect(await runCli(wordsOf(at))).toBe(1);
			expect(err.join('\n')).toMatch(/^Expected .+; .+\.$/m);
			expect(err.join('\n')).toContain(sentence);
			expect(err.join('\n')).not.toMatch(SYSTEM_TALK);
		},
	);

	it('photos that are missing or folders are told each in its line', async () => {
		const { none, folder } = places();
		expect(await runCli(['read', none, folder])).toBe(1);
		expect(out[0]).toContain('there is no such file');
		expect(out[1]).toContain('it is a folder');
		expect(out.join('\n')).not.toMatch(SYSTEM_TALK);
	});

	it('a backup is never written over what is there, nor into a folder that is not', async () => {
		const { file, folder, none } = places();
		await (await openHome(folder, { now: () => new Date() })).close();
		for (const [to, sentence] of [
			[file, 'it is there already'],
			[join(none, 'x'), 'there is no such file or folder'],
		] as const) {
			expect(await runCli(['backup', to, '--home', folder])).toBe(1);
			expect(err.at(-1)).toContain(sentence);
		}
		expect(readFileSync(file, 'utf8')).toBe('milk, eggs');
	});

	// Where Linux lets nobody make a folder, not even the superuser: proc(5), sysfs(5).
	it.skipIf(process.platform !== 'linux').each(['/proc/dyelot', '/sys/dyelot'])(
		'a home in %s, which cannot be written, is told in a sentence',
		async (home) => {
			expect(await runCli(['demo', '--home', home])).toBe(1);
			expect(err.at(-1)).toMatch(/^Expected a folder for your wardrobe in .+\.$/);
			expect(err.at(-1)).not.toMatch(SYSTEM_TALK);
		},
	);
});

describe('a port that is taken', () => {
	it('is told with one that is free, and the home is given back', async () => {
		const other = createServer();
		await new Promise<void>((resolve) => other.listen({ port: 0, host: '127.0.0.1' }, resolve));
		const { port } = other.address() as { port: number };
		const homePath = temporaryFolder();
		const failed = await serve({ homePath, port, share: false, log: () => {} }).catch((error: unknown) => error);
		await new Promise((resolve) => other.close(resolve));
		expect(failed).toBeInstanceOf(PortError);
		expect((failed as Error).message).toMatch(
			/another program uses it\. Port \d+ is free: start again with --port \d+\.$/,
		);
		await (await openHome(homePath, { now: () => new Date() })).close();
	});
});
