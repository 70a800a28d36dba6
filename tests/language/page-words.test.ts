import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { outsideIn, wordsOutside } from './words-outside.ts';

/** What is no sentence for the people at the page, and why. */
const NOT_SPOKEN: readonly (readonly [RegExp, string])[] = [
	[/^src\/language\//, 'the catalogue itself'],
	[/^src\/colour\/words\//, 'colour words, each language by its own survey'],
	[/^src\/colour\/(iscc-nbs|name)\.ts$/, 'the systematic names of ISCC-NBS, which are English by definition'],
	[/^src\/app\/tables\/heading-words\.ts$/, 'what tables from elsewhere may call their columns'],
	[/^src\/server\/(operations|schemas)\/|^src\/server\/openapi\.ts$/, 'the contract, read by those who write programs'],
];

/** Texts that look like words and are none: codes, seeds of random numbers, names of folders. */
const CODES = new Set([
	'has it',
	'near it',
	'palette {} board {}',
	'reread {} {}',
	'Application Support',
	'a page stopped listening',
	'colour {}',
	'slot {}',
	'imagined {}',
	'imagined {} {}',
	'low shoes',
	'is not',
	// Each language by its own name, so that whoever reads it finds it.
	'English (UK)',
	'English (US)',
	'nothing came any more',
	'expected a 2d drawing context from the browser',
	'expected the browser to make a PNG of the outline',
	'expected the browser to crop the picture',
	'long-sleeved top',
	'time limit',
	'exit status {}',
	'{} days',
	'worth: {}',
	'Subject To',
	'set {} to {}',
	// The program's own name beside words of the catalogue.
	'{} · Dyelot',
	'{} · {} · Dyelot',
	'dyelot {}',
]);

const sources = ['src', 'web']
	.flatMap((folder) => readdirSync(folder, { recursive: true, encoding: 'utf8' }).map((name) => join(folder, name)))
	.filter((path) => /\.tsx?$/.test(path) && !/(^|\/)(dist|node_modules)\//.test(path))
	.map((path) => path.replaceAll('\\', '/'))
	.filter((path) => !NOT_SPOKEN.some(([pattern]) => pattern.test(path)))
	.toSorted();
const outside = (path: string) => wordsOutside(path).filter((text) => !CODES.has(text));

describe('words outside the catalogue', () => {
	it('sees the whole program', () => expect(sources.length).toBeGreaterThan(350));

	it('has none in any file of src and web', () => {
		expect(sources.flatMap((path) => outside(path).map((text) => [path, text]))).toEqual([]);
	});

	// Where no script runs nothing can choose a language: that line stands in each.
	it('has none in the markup of the page and the pocket page, but for the program’s own name', () => {
		for (const path of ['web/index.html', 'web/pocket/pocket.html']) {
			const text = readFileSync(path, 'utf8').replaceAll(/<!--[\s\S]*?-->|<noscript>[\s\S]*?<\/noscript>/g, '');
			const shown = [
				...text.matchAll(/>([^<]+)</g),
				...text.matchAll(/(?:aria-label|title|alt|placeholder)="([^"]*)"/g),
			];
			const words = shown
				.map(([, one]) => one!.replaceAll(/\{[\w.]+\}/g, '').trim())
				.filter((one) => /\p{L}/u.test(one));
			expect(words.filter((one) => one !== 'Dyelot')).toEqual([]);
		}
	});

	it.each([
		['<p>Look round first</p>', 'Look round first'],
		["<Field label='Name' />", 'Name'],
		["<Field label={open ? 'Open' : closed} />", 'Open'],
		["<p>{open && 'Open'}</p>", 'Open'],
		["<img alt='Coat' />", 'Coat'],
		// biome-ignore lint/suspicious/noTemplateCurlyInString: a source that holds a template
		['<a aria-label={`Open ${name}`} />', 'Open {}'],
		["element('button', { 'aria-label': 'Open' });", 'Open'],
		["status.textContent = 'Open';", 'Open'],
		["console.log('ready');", 'ready'],
		["throw new UserError('conflict', 'Expected one; received two.');", 'Expected one; received two.'],
		// biome-ignore lint/suspicious/noTemplateCurlyInString: a source that holds a template
		['throw new UserError("conflict", `Expected ${one}; received none.`);', 'Expected {}; received none.'],
	])('finds them in %s', (code, words) => {
		const source = ts.createSourceFile('a.tsx', code, ts.ScriptTarget.Latest, true);
		expect(outsideIn(source).map(({ text }) => text)).toEqual([words]);
	});

	it.each([
		"import { a } from './some file.ts';",
		"<p className='one two'>{say('a.b')}</p>",
		"throw new RangeError('expected one colour or more');",
		"type Answer = 'has it' | 'near it';",
		"const query = 'SELECT name FROM table';",
	])('finds none in %s', (code) => {
		expect(outsideIn(ts.createSourceFile('a.tsx', code, ts.ScriptTarget.Latest, true))).toEqual([]);
	});
});
