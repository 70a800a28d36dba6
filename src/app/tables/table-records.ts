import { Readable } from 'node:stream';
import { setImmediate as letOthersIn } from 'node:timers/promises';
import { CsvError, type Options, parse } from 'csv-parse';
import iconv from 'iconv-lite';
import { say } from '../../language/speak.ts';
import type { Encoding } from './table-encoding.ts';

/** One record of a table, and the line of the file on which it begins (1 = the first). */
export type TableRecord = { readonly line: number; readonly cells: readonly string[] };

export type Separator = ',' | ';' | '\t';

/** The table breaks off: a quotation mark that is opened on `line` or soon after is never closed. */
export class BrokenTableError extends Error {
	readonly line: number;

	constructor(line: number, options: ErrorOptions) {
		super(say('tables.openQuote'), options);
		this.line = line;
	}
}

/** Decoded at once: a few milliseconds of work. */
const PIECE_BYTES = 32 * 1024;
/** No record of ours comes near; a quote that is never closed would else take in the whole table. */
const MAX_RECORD_CHARACTERS = 100_000;
/** Records after which other requests have their turn. */
const RECORDS_A_TURN = 200;

/** The text of the bytes in pieces, without the mark before it. */
export function* piecesOf(bytes: Uint8Array, encoding: Encoding): Generator<string> {
	const decoder = iconv.getDecoder(encoding.decoder);
	for (let at = encoding.markBytes; at < bytes.length; at += PIECE_BYTES)
		yield decoder.write(Buffer.from(bytes.subarray(at, at + PIECE_BYTES)));
	yield decoder.end() ?? '';
}

/** Times that `pattern`, a global one, is found in a record's cells. */
const countIn = (cells: readonly string[], pattern: RegExp): number =>
	cells.reduce((count, cell) => count + (cell.match(pattern)?.length ?? 0), 0);

/** Gives each record the line on which it begins, and knows the line after the last one. */
function lineCounter() {
	// The parser counts CR LF inside quotation marks as two lines.
	let countedTwice = 0;
	let next = 1;
	return {
		next: () => next,
		placed: (cells: string[], { lines }: { readonly lines: number }): TableRecord => {
			const line = lines - countedTwice - countIn(cells, /[\r\n]/g);
			countedTwice += countIn(cells, /\r\n/g);
			next = lines - countedTwice + 1;
			return { line, cells };
		},
	};
}

/**
 * Records of a text in pieces (RFC 4180; any line ends; a quote within an unquoted cell stands for itself), blank lines passed over. Other work
 * has its turn in between. Throws {@link BrokenTableError} where a quote is not closed.
 */
export async function* recordsOf(pieces: Iterable<string>, separator: Separator): AsyncGenerator<TableRecord> {
	const counter = lineCounter();
	const options: Options<TableRecord, string[]> = {
		delimiter: separator,
		max_record_size: MAX_RECORD_CHARACTERS,
		on_record: counter.placed,
		relax_column_count: true,
		relax_quotes: true,
		skip_empty_lines: true,
	};
	// The package's types know other records than lists of words only where it names the columns itself.
	const parser = parse(options as unknown as Options);
	const source = Readable.from(pieces);
	source.on('error', (error) => parser.destroy(error));
	let count = 0;
	try {
		for await (const record of source.pipe(parser) as AsyncIterable<TableRecord>) {
			yield record;
			count++;
			if (count % RECORDS_A_TURN === 0) await letOthersIn();
		}
	} catch (error) {
		if (error instanceof CsvError) throw new BrokenTableError(counter.next(), { cause: error });
		throw error;
	} finally {
		source.destroy();
		parser.destroy();
	}
}
