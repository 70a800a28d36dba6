import { describe, expect, it } from 'vitest';
import { fileTitle } from '../../src/app/file-title.ts';
import { wasNamedByProgram } from '../../src/app/named-by-program.ts';

describe('the title of a file', () => {
	it('is the file without folder and ending', () => {
		expect(fileTitle('C:\\clothes\\Rust coat.jpeg')).toBe('Rust coat');
		expect(fileTitle('shelf/two.grey/socks.v2.png')).toBe('socks.v2');
	});
});

describe('a name in a home of before', () => {
	// The systematic names are those of Kelly and Judd (1976), NBS Special Publication 440.
	it.each([
		['IMG_4711', 'IMG_4711.jpg'],
		['Rust coat', 'Rust coat.jpeg'],
		['Rust coat, other', 'Rust coat.jpeg'],
		['Reddish black 3', 'IMG_4711.jpg'],
		['Dark olive', 'DSC_0001.JPG'],
		['Light grayish olive', undefined],
	] as const)('%s was given by the program', (name, file) => expect(wasNamedByProgram(name, file)).toBe(true));

	it.each([
		['Aunt Ida’s coat', 'IMG_4711.jpg'],
		['Rust coat', 'IMG_4711.jpg'],
		['jean 501', undefined],
	] as const)('%s was typed by somebody', (name, file) => expect(wasNamedByProgram(name, file)).toBe(false));
});
