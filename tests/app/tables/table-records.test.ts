import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { encodingOf } from '../../../src/app/tables/table-encoding.ts';
import { BrokenTableError, piecesOf, recordsOf, type Separator } from '../../../src/app/tables/table-records.ts';

async function recordsIn(pieces: Iterable<string>, separator: Separator) {
	const found: { line: number; cells: readonly string[] }[] = [];
	for await (const record of recordsOf(pieces, separator)) found.push(record);
	return found;
}
const cellsIn = async (text: string) => (await recordsIn([text], ',')).map(({ cells }) => cells);

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
	])('follow rule %i of RFC 4180', async (_rule, text, cells) => {
		expect(await cellsIn(text)).toEqual(cells);
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

	it.each(files)('of $file, written by Python, come out as they went in', async ({ file, name, separator }) => {
		const bytes = readFileSync(`fixtures/tables/${file}`);
		const encoding = encodingOf(bytes);
		expect(encoding.name).toBe(name);
		expect((await recordsIn(piecesOf(bytes, encoding), separator)).map(({ cells }) => cells)).toEqual(rows);
	});

	it('come out the same however the bytes are cut into pieces', async () => {
		const text = readFileSync('fixtures/tables/utf-8-comma.csv', 'utf8');
		for (const size of [1, 2, 7]) {
			const pieces = Array.from({ length: Math.ceil(text.length / size) }, (_, at) =>
				text.slice(at * size, (at + 1) * size),
			);
			expect((await recordsIn(pieces, ',')).map(({ cells }) => cells)).toEqual(rows);
		}
	});

	it.each([
		['LF', '\n'],
		['CR LF', '\r\n'],
	])('know the line on which they begin, with %s', async (_name, end) => {
		const text = ['a,b', `1,"x${end}y"`, '', `2,"${end}${end}"`, 'z,z'].join(end);
		expect((await recordsIn([text], ',')).map(({ line }) => line)).toEqual([1, 2, 5, 8]);
	});

	it('end with the line of a quotation mark that is never closed', async () => {
		const broken = await recordsIn(['a,b\n1,2\n3,"open\n4,5\n'], ',').catch((error: unknown) => error);
		expect(broken).toBeInstanceOf(BrokenTableError);
		expect((broken as BrokenTableError).line).toBe(3);
	});

	it('let other work have its turn', async () => {
		let turns = 0;
		let reading = true;
		const count = () => {
			turns++;
			if (reading) setImmediate(count);
		};
		setImmediate(count);
		await recordsIn(
			Array.from({ length: 5000 }, () => 'oat shirt,shirt,25\n'),
			',',
		);
		reading = false;
		expect(turns).toBeGreaterThan(20);
	});
});
