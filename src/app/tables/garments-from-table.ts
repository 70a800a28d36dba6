import { fieldWord } from '../../language/field-word.ts';
import { say } from '../../language/speak.ts';
import { GARMENT_CELLS, type GarmentColumn } from '../../store/export/garments-csv.ts';
import type { GarmentDetails } from '../../wardrobe/words/garment.ts';
import { CELL_MEANINGS, EMPTY_CELLS } from './garment-cells.ts';
import { GARMENT_WORDS } from './heading-words.ts';
import { readTable, type TableForm, type TableRow } from './read-table.ts';
import { LineError, type Problems, takeRows } from './take-rows.ts';

/** What a line of the table brings; fields that are not in it keep their usual value. */
export type ImportedGarment = Pick<GarmentDetails, 'name' | 'kind'> & Partial<GarmentDetails>;

/** A garment that is there already, and what the table says otherwise. */
export type ChangedGarment = {
	readonly garment: GarmentDetails;
	readonly changes: Partial<GarmentDetails>;
	readonly columns: readonly GarmentColumn[];
};

/** What an import would do. */
export type GarmentImport = {
	readonly form: TableForm;
	readonly added: readonly ImportedGarment[];
	/** Of the added ones: how many have the name and kind of a garment that is there already. */
	readonly likeOthers: number;
	readonly changed: readonly ChangedGarment[];
	/** Lines of garments that are there already just so. */
	readonly unchanged: number;
	readonly problems: Problems;
};

type Row = TableRow<GarmentColumn>;

const expected = (what: string, column: string, received: string): LineError =>
	new LineError(say('tables.expected', { what, column: fieldWord(column), received: received.slice(0, 60) }));

const entriesOf = ({ cells }: Row) => Object.entries(cells) as [GarmentColumn, string][];

/** What the cell says. Throws a {@link LineError} that says what was expected. */
function meaningOf(column: GarmentColumn, text: string): Partial<GarmentDetails> {
	const said = CELL_MEANINGS[column](text);
	if (typeof said === 'string') throw expected(said, column, text);
	return said;
}

function addedFrom(row: Row): ImportedGarment {
	const { name = '', kind = '' } = row.cells;
	if (name === '') throw expected(say('tableCells.name'), 'name', '');
	if (kind === '') throw expected(say('tableCells.kind'), 'kind', '');
	const told: Partial<GarmentDetails> = {};
	for (const [column, text] of entriesOf(row)) if (text !== '') Object.assign(told, meaningOf(column, text));
	return told as ImportedGarment;
}

/** Fields of `said` that are not so already. */
function differing(garment: GarmentDetails, said: Partial<GarmentDetails>): Partial<GarmentDetails> {
	const fields = Object.entries(said).filter(
		([field, value]) => JSON.stringify(garment[field as keyof GarmentDetails]) !== JSON.stringify(value),
	);
	return Object.fromEntries(fields);
}

/** What the row says otherwise of this garment. A cell that an export would write just so is no change, whatever it holds. */
function changedBy(row: Row, garment: GarmentDetails): ChangedGarment {
	let changes: Partial<GarmentDetails> = {};
	const columns: GarmentColumn[] = [];
	for (const [column, text] of entriesOf(row)) {
		if (text === String(GARMENT_CELLS[column](garment) ?? '').trim()) continue;
		const said = text === '' ? (EMPTY_CELLS[column] ?? {}) : meaningOf(column, text);
		// A kind that is so already stays as sure as it was.
		const change = said.kind === garment.kind ? {} : differing(garment, said);
		if (Object.keys(change).length === 0) continue;
		changes = { ...changes, ...change };
		columns.push(column);
	}
	return { garment, changes, columns };
}

const likeness = ({ name, kind }: Pick<GarmentDetails, 'name' | 'kind'>) => `${kind} ${name.toLowerCase()}`;

/** Takes rows one by one; `garments` = those that are there already. */
function garmentTaker(garments: readonly GarmentDetails[]) {
	const byId = new Map(garments.map((garment) => [garment.id, garment]));
	const lineOf = new Map<string, number>();
	const added: ImportedGarment[] = [];
	const changed: ChangedGarment[] = [];
	const likenesses = new Set(garments.map(likeness));
	let unchanged = 0;
	let likeOthers = 0;
	return {
		take(row: Row): void {
			const { id = '' } = row.cells;
			const before = lineOf.get(id);
			if (id !== '' && before !== undefined) throw expected(say('tableCells.once', { line: before }), 'id', id);
			const garment = byId.get(id);
			if (garment) {
				const change = changedBy(row, garment);
				if (change.columns.length > 0) changed.push(change);
				else unchanged++;
			} else {
				const one = addedFrom(row);
				if (likenesses.has(likeness(one))) likeOthers++;
				added.push(one);
			}
			lineOf.set(id, row.line);
		},
		all: () => ({ added, changed, unchanged, likeOthers }),
	};
}

/**
 * What a table of garments (CSV) would bring: new ones, and changes to those whose `id` it names, so that our own export comes back as what was
 * changed in it. A new garment needs a name and a kind; an id that names none here is kept (a table from another home). Nothing is stored.
 */
export async function garmentsFromTable(
	bytes: Uint8Array,
	garments: readonly GarmentDetails[],
): Promise<GarmentImport> {
	const table = readTable(bytes, GARMENT_WORDS, (columns) => (columns.includes('id') ? [] : ['name', 'kind']));
	const taker = garmentTaker(garments);
	const problems = await takeRows(table, taker.take);
	return { form: table.form, ...taker.all(), problems };
}
