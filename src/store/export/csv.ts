/**
 * A spreadsheet takes a cell that starts like this for a formula; an apostrophe before it keeps it text (OWASP, CSV injection). A text that has
 * apostrophes there already gets one more, so that taking one off always gives the text back.
 */
const FORMULA_START = /^'*[=+\-@\t\r]/;

/** The text that a cell stands for: `csvOf` taken back. */
export const textOfCell = (text: string): string =>
	text.startsWith("'") && FORMULA_START.test(text) ? text.slice(1) : text;

function cell(value: string | number | boolean | null): string {
	if (typeof value === 'number') return String(value);
	const text = value === null ? '' : String(value);
	const safe = FORMULA_START.test(text) ? `'${text}` : text;
	return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** Rows as CSV (RFC 4180), with a heading. */
export const csvOf = (
	heading: readonly string[],
	rows: readonly (readonly (string | number | boolean | null)[])[],
): string =>
	[heading, ...rows]
		.map((row) => row.map(cell).join(','))
		.join('\r\n')
		.concat('\r\n');
