/** A text in which records are looked for. */
export type Scanned = {
	readonly text: string;
	readonly separator: string;
	/** Nothing follows the text. */
	readonly isWhole: boolean;
	/** Where the line ends, at or after a place; `Infinity` where it does not in this text. */
	readonly lineEnd: (from: number) => number;
	/** The same for a quotation mark. */
	readonly nextQuote: (from: number) => number;
};

/** Where a sign stands next at or after a place, `Infinity` where it does not. Places must not go back: the text is looked through once. */
function nextOf(text: string, sign: string): (from: number) => number {
	let next = -1;
	return (from) => {
		if (next < from) next = text.indexOf(sign, from);
		if (next < 0) next = Number.POSITIVE_INFINITY;
		return next;
	};
}

/** A text as it is scanned from its beginning on. */
export function scanned(text: string, separator: string, isWhole: boolean): Scanned {
	const [nextLf, nextCr] = [nextOf(text, '\n'), nextOf(text, '\r')];
	const lineEnd = (from: number) => Math.min(nextLf(from), nextCr(from));
	return { text, separator, isWhole, lineEnd, nextQuote: nextOf(text, '"') };
}

/** What a cell says, and the place after it; null where the text ends before it does. */
type Cell = { readonly said: string; readonly next: number } | null;

function plainCell({ text, separator, isWhole, lineEnd }: Scanned, from: number, before = ''): Cell {
	const separated = text.indexOf(separator, from);
	const end = Math.min(separated < 0 ? text.length : separated, lineEnd(from), text.length);
	if (end === text.length && !isWhole) return null;
	return { said: before + text.slice(from, end), next: end };
}

/** A cell that begins with a quotation mark; where other signs follow its last mark, all of them stand for themselves. */
function quotedCell(source: Scanned, from: number): Cell {
	const { text, separator, isWhole } = source;
	let said = '';
	for (let at = from + 1; ; ) {
		const mark = text.indexOf('"', at);
		if (mark < 0 || (mark + 1 === text.length && !isWhole)) return null;
		said += text.slice(at, mark);
		const after = text[mark + 1];
		if (after === undefined || after === separator || after === '\r' || after === '\n') return { said, next: mark + 1 };
		if (after !== '"') return plainCell(source, mark + 1, `"${said}"`);
		said += '"';
		at = mark + 2;
	}
}

/** Cells of a record with quotation marks, and the place after the last one; null where the text ends before. */
function quotedRecord(
	source: Scanned,
	from: number,
): { readonly cells: readonly string[]; readonly end: number } | null {
	const cells: string[] = [];
	for (let at = from; ; at++) {
		const cell = source.text[at] === '"' ? quotedCell(source, at) : plainCell(source, at);
		if (!cell) return null;
		cells.push(cell.said);
		at = cell.next;
		if (source.text[at] !== source.separator) return { cells, end: at };
	}
}

/** The place after the end of a line (LF, CR LF or CR); null where more text must come before that is known. */
function afterLineEnd({ text, isWhole }: Scanned, at: number): number | null {
	if (at === text.length) return at;
	if (text[at] !== '\r') return at + 1;
	if (at + 1 === text.length && !isWhole) return null;
	return text[at + 1] === '\n' ? at + 2 : at + 1;
}

/** The record that begins at a place, and the place after it; null where more text must come first, or where nothing more is. */
export function recordAt(
	source: Scanned,
	from: number,
): { readonly cells: readonly string[]; readonly next: number } | null {
	const { text, separator, isWhole } = source;
	if (from >= text.length) return null;
	const end = Math.min(source.lineEnd(from), text.length);
	if (end === text.length && !isWhole) return null;
	// Most lines hold no quotation mark.
	const isPlain = source.nextQuote(from) > end;
	const record = isPlain ? { cells: text.slice(from, end).split(separator), end } : quotedRecord(source, from);
	const next = record && afterLineEnd(source, record.end);
	return record && next !== null ? { cells: record.cells, next } : null;
}
