import { readFileSync } from 'node:fs';
import { CsvError, parse } from 'csv-parse/sync';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { encodingOf } from '../../../src/app/tables/table-encoding.ts';
import { BrokenTableError, piecesOf, recordsOf, type Separator } from '../../../src/app/tables/table-records.ts';

const recordsIn = (pieces: Iterable<string>, separator: Separator) => [...recordsOf(pieces, separator)];
const cellsIn = (text: string) => recordsIn([text], ',').map(({ cells }) => cells);

describe('records of a table', () => {
	// RFC 4180, section 2, the examples of its rules 1 to 7 (a line's end is CR LF there).
	it.each([
		[
			1,
			'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
			[
				['aaa', 'bbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		],
		[
			2,
			'aaa,bbb,ccc\r\nzzz,yyy,xxx',
			[
				['aaa', 'bbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		],
		[
			3,
			'field_name,field_name,field_name\r\naaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
			[
				['field_name', 'field_name', 'field_name'],
				['aaa', 'bbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		],
		[4, 'aaa,bbb,ccc', [['aaa', 'bbb', 'ccc']]],
		[
			5,
			'"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
			[
				['aaa', 'bbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		],
		[
			6,
			'"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
			[
				['aaa', 'b\r\nbb', 'ccc'],
				['zzz', 'yyy', 'xxx'],
			],
		],
		[7, '"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
	])('follow rule %i of RFC 4180', (_rule, text, cells) => {
		expect(cellsIn(text)).toEqual(cells);
	});

	const rows = JSON.parse(readFileSync('fixtures/tables/rows.json', 'utf8')) as string[][];
	const encodings = {
		'utf-8': 'UTF-8',
		'utf-8-mark': 'UTF-8',
		'utf-16le-mark': 'UTF-16',
		'utf-16be-mark': 'UTF-16',
		'utf-16le': 'UTF-16',
		'windows-1252': 'Windows-1252',
	};
	const separators = { comma: ',', semicolon: ';', tab: '\t' } as const;
	const files = Object.entries(encodings).flatMap(([file, name]) =>
		Object.entries(separators).map(([word, separator]) => ({ file: `${file}-${word}.csv`, name, separator })),
	);

	it.each(files)('of $file, written by Python, come out as they went in', ({ file, name, separator }) => {
		const bytes = readFileSync(`fixtures/tables/${file}`);
		const encoding = encodingOf(bytes);
		expect(encoding.name).toBe(name);
		expect(recordsIn(piecesOf(bytes, encoding), separator).map(({ cells }) => cells)).toEqual(rows);
	});

	it('come out the same however the bytes are cut into pieces', () => {
		const text = readFileSync('fixtures/tables/utf-8-comma.csv', 'utf8');
		for (const size of [1, 2, 7]) {
			const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, at) =>
				text.slice(at * size, (at + 1) * size),
			);
			expect(recordsIn(pieces, ',').map(({ cells }) => cells)).toEqual(rows);
		}
	});

	it.each([
		['LF', '\n'],
		['CR LF', '\r\n'],
	])('know the line on which they begin, with %s', (_name, end) => {
		const text = ['a,b', `1,"x${end}y"`, '', `2,"${end}${end}"`, 'z,z'].join(end);
		expect(recordsIn([text], ',').map(({ line }) => line)).toEqual([1, 2, 5, 8]);
	});

	it('end with the line of a quotation mark that is never closed', () => {
		let broken: unknown = null;
		try {
			recordsIn(['a,b\n1,2\n3,"open\n4,5\n'], ',');
		} catch (error) {
			broken = error;
		}
		expect(broken).toBeInstanceOf(BrokenTableError);
		expect((broken as BrokenTableError).line).toBe(3);
	});

	it('end where one grows larger than any of ours', () => {
		const open = `a,b\n1,2\n3,"${'x'.repeat(100_001)}`;
		expect(() => recordsIn([open, 'y'.repeat(1000)], ',')).toThrow(BrokenTableError);
		expect(() => recordsIn([`a\n${'x'.repeat(100_001)}\n`], ',')).toThrow(BrokenTableError);
	});

	// csv-parse (from the npm registry) reads the same texts; where a quotation mark is left open both refuse.
	it('are those that csv-parse reads, whatever the signs and however they come', () => {
		const sign = fc.constantFrom('a', 'ä', ' ', '"', '""', ',', ';', '\n', '"\n', ',"', '",');
		fc.assert(
			fc.property(
				fc.array(sign, { maxLength: 40 }),
				fc.integer({ min: 1, max: 9 }),
				fc.boolean(),
				(signs, size, crLf) => {
					const text = signs.join('').replaceAll('\n', crLf ? '\r\n' : '\n');
					const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, at) =>
						text.slice(at * size, (at + 1) * size),
					);
					expect(cellsOrBroken(() => recordsIn(pieces, ',').map(({ cells }) => cells), BrokenTableError)).toEqual(
						cellsOrBroken(
							() =>
								parse(text, {
									delimiter: ',',
									record_delimiter: crLf ? '\r\n' : '\n',
									relax_column_count: true,
									relax_quotes: true,
									skip_empty_lines: true,
								}),
							CsvError,
						),
					);
				},
			),
			{ numRuns: 3000, seed: 5 },
		);
	});
});

/** The cells, or `broken` where the text is refused so. */
function cellsOrBroken(read: () => unknown, refusal: new (...words: never[]) => Error): unknown {
	try {
		return read();
	} catch (error) {
		if (error instanceof refusal) return 'broken';
		throw error;
	}
}
