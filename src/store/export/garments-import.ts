import { parse } from 'csv-parse/sync';
import { CONDITIONS, type GarmentDetails, PLACES, YEAR_PARTS } from '../../wardrobe/words/garment.ts';
import { KIND_NAMES } from '../../wardrobe/words/kind.ts';
import { textOfCell } from './csv.ts';
import type { GARMENT_COLUMNS } from './garments-csv.ts';

/** What a line of the table brings; fields that are not in it keep their usual value. */
export type ImportedGarment = Pick<GarmentDetails, 'name' | 'kind'> & Partial<GarmentDetails>;

/** What an import would do: garments to add, and each line that cannot be taken, with the reason. */
export type GarmentImport = {
	readonly garments: readonly ImportedGarment[];
	readonly problems: readonly { readonly line: number; readonly message: string }[];
};

type Line = Partial<Record<(typeof GARMENT_COLUMNS)[number], string>>;

const expected = (what: string, column: string, received: string): Error =>
	new Error(`Expected ${what} for "${column}"; received "${received.slice(0, 60)}".`);

function oneOfWords<T extends string>(words: readonly T[], column: string, text: string): T {
	const found = words.find((word) => word === text.trim().toLowerCase());
	if (!found) throw expected(`one of ${words.join(', ')}`, column, text);
	return found;
}

function numberIn(column: string, text: string, least: number, most: number): number {
	const value = Number(text.replace(',', '.'));
	if (!Number.isFinite(value) || value < least || value > most)
		throw expected(`a number from ${least} to ${most}`, column, text);
	return value;
}

function garmentOf(line: Line): ImportedGarment {
	const name = line.name?.trim() ?? '';
	if (!name) throw expected('a name', 'name', '');
	if (!line.kind) throw expected(`one of ${KIND_NAMES.join(', ')}`, 'kind', '');
	if (line.boughtOn && !/^\d{4}-\d{2}-\d{2}$/.test(line.boughtOn))
		throw expected('a day like 2026-03-14', 'boughtOn', line.boughtOn);
	return {
		name: name.slice(0, 200),
		kind: oneOfWords(KIND_NAMES, 'kind', line.kind),
		kindFrom: 'user',
		...(line.place ? { place: oneOfWords(PLACES, 'place', line.place) } : {}),
		...(line.price ? { price: numberIn('price', line.price, 0, 1e9) } : {}),
		...(line.boughtOn ? { boughtOn: line.boughtOn } : {}),
		...(line.yearParts
			? {
					yearParts: line.yearParts
						.split(/[\s;]+/)
						.filter(Boolean)
						.map((part) => oneOfWords(YEAR_PARTS, 'yearParts', part)),
				}
			: {}),
		...(line.basic ? { basic: oneOfWords(['yes', 'no'], 'basic', line.basic) === 'yes' } : {}),
		...(line.loved ? { loved: Math.round(numberIn('loved', line.loved, 0, 3)) as 0 | 1 | 2 | 3 } : {}),
		...(line.condition ? { condition: oneOfWords(CONDITIONS, 'condition', line.condition) } : {}),
		...(line.notes ? { notes: line.notes } : {}),
		...(line.care ? { care: line.care } : {}),
	};
}

/** Reads a table of garments (CSV with a heading; `name` and `kind` are needed). Nothing is stored: this is the preview too. */
export function garmentsFromCsv(text: string): GarmentImport {
	let lines: Line[];
	try {
		lines = parse(text, {
			columns: (heading: string[]) => heading.map((word) => word.trim()),
			bom: true,
			skip_empty_lines: true,
			relax_column_count: true,
			cast: (text: string) => textOfCell(text),
		});
	} catch (error) {
		return {
			garments: [],
			problems: [
				{ line: 1, message: `Expected a CSV table with a heading; it cannot be read (${(error as Error).message}).` },
			],
		};
	}
	const garments: ImportedGarment[] = [];
	const problems: { line: number; message: string }[] = [];
	for (const [index, line] of lines.entries()) {
		try {
			garments.push(garmentOf(line));
		} catch (error) {
			problems.push({ line: index + 2, message: (error as Error).message });
		}
	}
	return { garments, problems };
}
