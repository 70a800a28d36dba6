import iconv from 'iconv-lite';
import { say } from '../../language/speak.ts';
import { recordAt, scanned } from './record-scanner.ts';
import type { Encoding } from './table-encoding.ts';

/** One record of a table, and the line of the file on which it begins (1 = the first). */
export type TableRecord = { readonly line: number; readonly cells: readonly string[] };

export type Separator = ',' | ';' | '\t';

/** The table breaks off: a quotation mark in the record that begins on `line` is never closed. */
export class BrokenTableError extends Error {
	readonly line: number;

	constructor(line: number) {
		super(say('tables.openQuote'));
		this.line = line;
	}
}

/** Decoded at once: a few milliseconds of work. */
const PIECE_BYTES = 32 * 1024;
/** No record of ours comes near; a quote that is never closed would else take in the whole table. */
const MAX_RECORD_CHARACTERS = 100_000;

/** The text of the bytes in pieces, without the mark before it. */
export function* piecesOf(bytes: Uint8Array, encoding: Encoding): Generator<string> {
	const decoder = iconv.getDecoder(encoding.decoder);
	for (let at = encoding.markBytes; at < bytes.length; at += PIECE_BYTES)
		yield decoder.write(Buffer.from(bytes.subarray(at, at + PIECE_BYTES)));
	yield decoder.end() ?? '';
}

/** Ends of lines in a record: LF, CR LF or CR. Only a quotation mark lets it have more than one. */
const linesIn = (raw: string): number => (raw.includes('"') ? (raw.match(/\r\n|\r|\n/g)?.length ?? 0) : 1);

/** A line without any sign. */
const isBlank = (raw: string): boolean => raw === '\n' || raw === '\r\n' || raw === '\r';

/**
 * Records of a text in pieces (RFC 4180; any line ends; a quote within an unquoted cell stands for itself), blank lines passed over. Throws
 * {@link BrokenTableError} where a quote is not closed.
 */
export function* recordsOf(pieces: Iterable<string>, separator: Separator): Generator<TableRecord> {
	let text = '';
	let line = 1;
	const left = pieces[Symbol.iterator]();
	for (let isWhole = false; !isWhole; ) {
		const piece = left.next();
		isWhole = piece.done === true;
		if (!piece.done) text += piece.value;
		const source = scanned(text, separator, isWhole);
		let at = 0;
		for (let record = recordAt(source, at); record; record = recordAt(source, at)) {
			const raw = text.slice(at, record.next);
			if (raw.length > MAX_RECORD_CHARACTERS) throw new BrokenTableError(line);
			if (!isBlank(raw)) yield { line, cells: record.cells };
			line += linesIn(raw);
			at = record.next;
		}
		text = text.slice(at);
		if (text.length > MAX_RECORD_CHARACTERS || (isWhole && text !== '')) throw new BrokenTableError(line);
	}
}
