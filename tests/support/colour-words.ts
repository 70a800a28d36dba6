import { readFileSync } from 'node:fs';
import { parse } from 'csv-parse/sync';

/** The rows of a table in fixtures/colour-words, by column name; its first line, a comment, is passed over. */
export const colourWordRows = (name: string): Record<string, string>[] =>
	parse(readFileSync(new URL(`../../fixtures/colour-words/${name}`, import.meta.url)), {
		columns: true,
		from_line: 2,
	});
